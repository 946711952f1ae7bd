#include "prover/search/flat_problem.hpp"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace prover {

namespace {

constexpr std::int32_t kConstantForNow = -1;  // until the number of columns is known

std::int64_t small_denominator(const Rational& value) {
  if (value.is_integer()) return 1;
  // p/q in lowest terms: q is the least multiplier that makes it whole.
  const std::string text = value.to_string();
  const auto q = Rational::parse(text.substr(text.find('/') + 1));
  const auto denominator = q ? q->to_int64() : std::nullopt;
  if (!denominator) throw RowOverflow();
  return *denominator;
}

std::int64_t whole(const Rational& value) {
  const auto n = value.to_int64();
  if (!n || *n == INT64_MIN) throw RowOverflow();
  return *n;
}

}  // namespace

std::int32_t FlatProblem::column_of(UnknownId unknown) {
  const std::size_t u = unknown.index();
  if (u >= column_of_.size()) column_of_.resize(u + 1, -1);
  if (column_of_[u] < 0) {
    column_of_[u] = static_cast<std::int32_t>(unknowns_.size());
    unknowns_.push_back(unknown);
  }
  return column_of_[u];
}

void FlatProblem::append(const Form& form) {
  const std::size_t begin = entries_.size();
  bool sorted = true;
  auto append_times = [&](std::int64_t scale) {  // false at the first factor that is not whole
    entries_.resize(begin);
    sorted = true;
    for (const auto& [unknown, c] : form.terms) {
      const auto factor = scale == 1 ? c.to_int64() : (c * Rational(scale)).to_int64();
      if (!factor || *factor == INT64_MIN) return false;
      const std::int32_t column = column_of(unknown);
      sorted = sorted && (entries_.size() == begin || entries_.back().column < column);
      entries_.push_back({column, *factor});
    }
    return true;
  };
  std::int64_t scale = form.constant.is_integer() ? 1 : small_denominator(form.constant);
  if (scale != 1 || !append_times(1)) {
    for (const auto& [unknown, c] : form.terms) scale = std::lcm(scale, small_denominator(c));
    if (!append_times(scale)) throw RowOverflow();
  }
  if (!sorted)
    std::sort(entries_.begin() + static_cast<std::ptrdiff_t>(begin), entries_.end(),
              [](const RowEntry& a, const RowEntry& b) { return a.column < b.column; });
  if (!form.constant.is_zero()) entries_.push_back({kConstantForNow, whole(form.constant * Rational(scale))});
  row_begin_.push_back(entries_.size());
}

FlatProblem::FlatProblem(const SearchProblem& problem) {
  const std::size_t n = problem.candidates.size();
  weights_.reserve(n);
  first_row_.reserve(n + 1);
  first_conclusion_.reserve(n);
  entries_.reserve(n * 4);
  row_begin_.reserve(n + 1);
  owner_.reserve(n);
  for (const Candidate& candidate : problem.candidates) {
    assert(candidate.weight >= 0 && "weights are never negative");
    const int index = static_cast<int>(weights_.size());
    first_row_.push_back(static_cast<int>(row_count()));
    for (const Form& form : candidate.premises) append(form);
    first_conclusion_.push_back(static_cast<int>(row_count()));
    for (const Form& form : candidate.conclusions) append(form);
    any_premises_ |= !candidate.premises.empty();
    owner_.resize(row_count(), index);
    weights_.push_back(candidate.weight);
  }
  first_row_.push_back(static_cast<int>(row_count()));
  wants_contradiction_ = problem.goal.empty();
  const std::size_t rows = row_count();
  for (const Form& form : problem.goal) append(form);
  constant_ = static_cast<std::int32_t>(unknowns_.size());
  for (RowEntry& entry : entries_)
    if (entry.column == kConstantForNow) entry.column = constant_;
  for (std::size_t r = rows; r < row_count(); ++r) {
    const auto goal = row(static_cast<int>(r));
    goal_.emplace_back(goal.begin(), goal.end());
  }
  entries_.resize(row_begin_[rows]);
  row_begin_.resize(rows + 1);
  if (wants_contradiction_) goal_.push_back({{constant_, 1}});

  // Where each column occurs among the conclusions, by counting.
  occurrence_begin_.assign(static_cast<std::size_t>(constant_) + 2, 0);
  auto each = [&](auto&& act) {
    for (int i = 0; i < size(); ++i)
      for (int r = first_conclusion(i); r < first_row(i + 1); ++r)
        for (const RowEntry& entry : row(r))
          if (entry.column != constant_) act(r, entry);
  };
  each([&](int, const RowEntry& entry) { ++occurrence_begin_[static_cast<std::size_t>(entry.column) + 1]; });
  std::partial_sum(occurrence_begin_.begin(), occurrence_begin_.end(), occurrence_begin_.begin());
  occurrences_.resize(occurrence_begin_.back());
  std::vector<std::size_t> next(occurrence_begin_.begin(), occurrence_begin_.end() - 1);
  each([&](int r, const RowEntry& entry) {
    occurrences_[next[static_cast<std::size_t>(entry.column)]++] = {r, entry.factor};
  });
}

Form FlatProblem::form(std::span<const RowEntry> row) const {
  Form form;
  for (const RowEntry& entry : row) {
    if (entry.column == constant_)
      form.constant = Rational(entry.factor);
    else
      form.add(Form::of(unknown(entry.column), Rational(entry.factor)));
  }
  return form;
}

}  // namespace prover
