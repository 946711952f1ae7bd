#include "prover/search/cut_finder.hpp"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace prover {

namespace {

std::int64_t product(std::span<const RowEntry> row, const Row& dual) {
  std::int64_t sum = 0;
  for (const RowEntry& entry : row) {
    const std::int64_t factor = factor_in(dual, entry.column);
    if (factor != 0) sum = checked_sum(sum, checked_product(entry.factor, factor));
  }
  return sum;
}

}  // namespace

CutFinder::CutFinder(const FlatProblem& problem)
    : problem_(problem), sum_(problem.row_count(), 0), row_stamp_(problem.row_count(), 0),
      crossing_stamp_(static_cast<std::size_t>(problem.size()), 0),
      column_stamp_(static_cast<std::size_t>(problem.columns()), 0) {}

void CutFinder::touch(std::int32_t row, std::int64_t product) {
  const auto r = static_cast<std::size_t>(row);
  if (row_stamp_[r] != pass_) {
    row_stamp_[r] = pass_;
    sum_[r] = 0;
    touched_rows_.push_back(row);
  }
  sum_[r] = checked_sum(sum_[r], product);
}

// The constant stands in many forms and is outside only in contradictions: every conclusion is looked at.
void CutFinder::touch_constants(std::int64_t dual) {
  for (int i = 0; i < problem_.size(); ++i)
    for (int r = problem_.first_conclusion(i); r < problem_.first_row(i + 1); ++r) {
      const std::int64_t c = factor_in(problem_.row(r), problem_.constant());
      if (c != 0) touch(r, checked_product(c, dual));
    }
}

Row CutFinder::dual_of(const Elimination& system, std::int32_t column) {
  Row dual{{column, 1}};
  std::int64_t& scale = dual[0].factor;
  auto each_row = [&](auto&& act) {
    auto visit = [&](std::size_t k) {
      const std::int64_t c = factor_in(system.row(k), column);
      if (c != 0) act(k, c, factor_in(system.row(k), system.pivot(k)));
    };
    if (column == problem_.constant())
      for (std::size_t k = 0; k < system.rank(); ++k) visit(k);
    else
      for (const std::int32_t k : system.rows_with(column)) visit(static_cast<std::size_t>(k));
  };
  each_row([&](std::size_t, std::int64_t c, std::int64_t f) {
    scale = checked_product(scale, f / std::gcd(checked_product(scale % f, c % f), f));
  });
  const std::int64_t at_column = scale;
  each_row([&](std::size_t k, std::int64_t c, std::int64_t f) {
    dual.push_back({system.pivot(k), -checked_product(at_column, c) / f});
  });
  std::sort(dual.begin(), dual.end(), [](const RowEntry& a, const RowEntry& b) { return a.column < b.column; });
  return dual;
}

void CutFinder::take_outside(Row dual, Cut& cut) {
  ++pass_;
  touched_rows_.clear();
  for (const RowEntry& entry : dual) {
    column_stamp_[static_cast<std::size_t>(entry.column)] = round_;
    if (entry.column == problem_.constant())
      touch_constants(entry.factor);
    else
      for (const FlatProblem::Occurrence& at : problem_.occurrences(entry.column))
        touch(at.row, checked_product(at.factor, entry.factor));
  }
  for (const std::int32_t r : touched_rows_) {
    if (sum_[static_cast<std::size_t>(r)] == 0) continue;
    const int candidate = problem_.owner(r);
    if (crossing_stamp_[static_cast<std::size_t>(candidate)] == round_) continue;
    crossing_stamp_[static_cast<std::size_t>(candidate)] = round_;
    crossing_.push_back(candidate);
  }
  cut.duals.push_back(std::move(dual));
}

bool CutFinder::premises_inside(const Cut& cut, int candidate) const {
  for (int r = problem_.first_row(candidate); r < problem_.first_conclusion(candidate); ++r) {
    const auto premise = problem_.row(r);
    const auto touched = std::count_if(premise.begin(), premise.end(), [&](const RowEntry& entry) {
      return column_stamp_[static_cast<std::size_t>(entry.column)] == round_;
    });
    if (touched == 0) continue;
    if (touched == 1) return false;  // nothing that it could cancel with
    for (const Row& dual : cut.duals)
      if (product(premise, dual) != 0) return false;
  }
  return true;
}

// A waiting member has a premise that does not follow: one of the columns left in it goes outside, the one that
// fewest conclusions speak of.
std::int32_t CutFinder::widening_column(const Closure& closure, int waiting) {
  std::int32_t best = -1;
  std::size_t fewest = 0;
  for (int r = problem_.first_row(waiting); r < problem_.first_conclusion(waiting); ++r) {
    const auto premise = problem_.row(r);
    row_.assign(premise.begin(), premise.end());
    closure.system().reduce(row_);
    for (const RowEntry& entry : row_) {
      const bool constant = entry.column == problem_.constant();
      if (constant && best >= 0) continue;
      const std::size_t count = constant ? problem_.row_count() : problem_.occurrences(entry.column).size();
      if (best < 0 || count < fewest) {
        best = entry.column;
        fewest = count;
      }
    }
  }
  assert(best >= 0 && "a waiting member has an open premise");
  return best;
}

void CutFinder::find(const Closure& closure, std::int32_t seed, Cut& cut) {
  cut.members.clear();
  cut.duals.clear();
  crossing_.clear();
  ++round_;
  take_outside(dual_of(closure.system(), seed), cut);
  for (bool widened = true; widened;) {
    widened = false;
    for (const int h : closure.waiting()) {
      if (crossing_stamp_[static_cast<std::size_t>(h)] != round_ || !premises_inside(cut, h)) continue;
      take_outside(dual_of(closure.system(), widening_column(closure, h)), cut);
      widened = true;
    }
  }
  for (const int i : crossing_)
    if (premises_inside(cut, i)) cut.members.push_back(i);
}

}  // namespace prover
