#include "prover/reading/worked_out.hpp"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <limits>

namespace prover {

namespace {

Form sum(const std::vector<Form>& forms, std::uint32_t set, const LinearSystem& given) {
  Form total;
  for (std::size_t i = 0; i < forms.size(); ++i)
    if ((set >> i & 1u) != 0) total.add(forms[i]);
  return given.reduce(total);
}

// How much an intermediate equation asks of a reader: its terms, each step counting as two more. Among equals a plain sum
// is better than one of different multiples, and then one that can be had sooner, from the earlier summands.
int burden(const Form& form, std::uint32_t set) {
  constexpr int more_than_any_place = 64;
  const bool multiples = std::any_of(form.terms.begin(), form.terms.end(), [&](const auto& t) {
    return t.second != form.terms[0].second && t.second != -form.terms[0].second;
  });
  return more_than_any_place * (2 * (static_cast<int>(form.terms.size()) + 2) + (multiples ? 1 : 0)) +
         static_cast<int>(std::bit_width(set));
}

// By set of summands: the least burden of all steps that lead to their sum, and the parts put together last.
class Plans {
 public:
  Plans(const std::vector<Form>& summands, const LinearSystem& given)
      : summands_(summands), plans_(std::size_t{1} << summands.size()), burdens_(plans_.size()) {
    for (std::uint32_t set = 1; set < plans_.size(); ++set)
      if (std::popcount(set) > 1) burdens_[set] = burden(sum(summands, set, given), set);
    for (std::uint32_t set = 1; set < plans_.size(); ++set) plan(set);
  }
  // Steps for `set`, in order; returns the index under which its result is cited.
  int write(std::uint32_t set, const LinearSystem& given, std::vector<WorkedOut>& out) const {
    if (std::popcount(set) == 1) return std::countr_zero(set);
    WorkedOut step;
    for (const std::uint32_t part : plans_[set].parts)
      if (part != 0) step.from.push_back(write(part, given, out));
    step.result = sum(summands_, set, given);
    out.push_back(std::move(step));
    return static_cast<int>(summands_.size() + out.size()) - 1;
  }

 private:
  struct Plan {
    int burden = 0;
    std::uint32_t parts[kAtOnce] = {0, 0, 0};
  };
  void plan(std::uint32_t set) {
    Plan& best = plans_[set];
    if (std::popcount(set) == 1) return;
    best.burden = std::numeric_limits<int>::max();
    const std::uint32_t lowest = set & (~set + 1);
    // The part with the lowest summand first, then the rest in one or two parts.
    for (std::uint32_t a = (set - 1) & set; a != 0; a = (a - 1) & set) {
      if ((a & lowest) == 0) continue;
      const std::uint32_t rest = set & ~a, low_rest = rest & (~rest + 1);
      consider(best, a, rest, 0);
      for (std::uint32_t b = (rest - 1) & rest; b != 0; b = (b - 1) & rest)
        if ((b & low_rest) != 0) consider(best, a, b, rest & ~b);
    }
    best.burden += burdens_[set];
  }
  void consider(Plan& best, std::uint32_t a, std::uint32_t b, std::uint32_t c) const {
    const int total = plans_[a].burden + plans_[b].burden + (c != 0 ? plans_[c].burden : 0);
    if (total < best.burden) best = {total, {a, b, c}};
  }

  const std::vector<Form>& summands_;
  std::vector<Plan> plans_;
  std::vector<int> burdens_;
};

// The two or three whose sum is shortest, until few are left.
std::vector<WorkedOut> bit_by_bit(std::vector<Form> forms, const LinearSystem& given) {
  std::vector<WorkedOut> out;
  std::vector<int> names(forms.size());
  for (std::size_t i = 0; i < forms.size(); ++i) names[i] = static_cast<int>(i);
  const int summands = static_cast<int>(forms.size());
  while (forms.size() > kAtOnce) {
    std::vector<std::size_t> best;
    int least = std::numeric_limits<int>::max();
    const auto consider = [&](const std::vector<std::size_t>& some) {
      Form total;
      int gone = 0;  // terms that a reader need not keep any more
      for (const std::size_t i : some) {
        total.add(forms[i]);
        gone += static_cast<int>(given.reduce(forms[i]).terms.size());
      }
      const int left = static_cast<int>(given.reduce(total).terms.size());
      const int score = 4 * left - gone - static_cast<int>(some.size());
      if (score < least) {
        least = score;
        best = some;
      }
    };
    for (std::size_t i = 0; i < forms.size(); ++i)
      for (std::size_t j = i + 1; j < forms.size(); ++j) {
        consider({i, j});
        for (std::size_t k = j + 1; k < forms.size(); ++k) consider({i, j, k});
      }
    WorkedOut step;
    Form total;
    for (const std::size_t i : best) {
      step.from.push_back(names[i]);
      total.add(forms[i]);
    }
    step.result = given.reduce(total);
    out.push_back(std::move(step));
    for (auto i = best.rbegin(); i != best.rend(); ++i) {
      forms.erase(forms.begin() + static_cast<std::ptrdiff_t>(*i));
      names.erase(names.begin() + static_cast<std::ptrdiff_t>(*i));
    }
    forms.push_back(std::move(total));
    names.push_back(summands + static_cast<int>(out.size()) - 1);
  }
  Form total;
  for (const Form& f : forms) total.add(f);
  if (forms.size() > 1 || out.empty()) out.push_back({names, given.reduce(total)});
  return out;
}

}  // namespace

std::vector<WorkedOut> work_out(const std::vector<Form>& summands, const LinearSystem& given) {
  constexpr std::size_t most_exactly = 9;
  if (summands.size() > most_exactly) return bit_by_bit(summands, given);
  const std::uint32_t all = (1u << summands.size()) - 1;
  std::vector<WorkedOut> out;
  if (summands.size() < 2) return {{{0}, sum(summands, all, given)}};
  Plans(summands, given).write(all, given, out);
  return out;
}

}  // namespace prover
