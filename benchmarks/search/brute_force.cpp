#include "benchmarks/search/brute_force.hpp"

#include <algorithm>
#include <bit>
#include <stdexcept>

namespace prover {

namespace {

// Plain elimination: each row has a first unknown that no later row begins with.
class Span {
 public:
  void add(const Form& form) {
    Form rest = remainder(form);
    if (!rest.is_zero()) rows_.push_back(rest.normalised());
  }
  bool contains(const Form& form) const { return remainder(form).is_zero(); }

 private:
  Form remainder(Form form) const {
    for (const Form& row : rows_) {
      if (row.terms.empty()) continue;
      const Rational c = form.coefficient(row.terms[0].first);
      if (!c.is_zero()) form.add(row, -c);
    }
    return form;
  }
  std::vector<Form> rows_;
};

bool contains_all(const Span& span, const std::vector<Form>& forms) {
  return std::all_of(forms.begin(), forms.end(), [&](const Form& form) { return span.contains(form); });
}

bool gives_goal(const SearchProblem& problem, std::uint32_t members) {
  Span span;
  for (bool changed = true; changed;) {
    changed = false;
    for (std::size_t i = 0; i < problem.candidates.size(); ++i) {
      const std::uint32_t bit = 1U << i;
      if ((members & bit) == 0 || !contains_all(span, problem.candidates[i].premises)) continue;
      for (const Form& form : problem.candidates[i].conclusions) span.add(form);
      members &= ~bit;
      changed = true;
    }
  }
  return contains_all(span, problem.goal);
}

}  // namespace

std::vector<MinimalSet> all_minimal_sets(const SearchProblem& problem) {
  const std::size_t count = problem.candidates.size();
  if (count > 20 || problem.goal.empty()) throw std::invalid_argument("too large for brute force, or without a goal");
  std::vector<std::uint32_t> by_size(std::size_t{1} << count);
  for (std::uint32_t set = 0; set < by_size.size(); ++set) by_size[set] = set;
  std::stable_sort(by_size.begin(), by_size.end(),
                   [](std::uint32_t a, std::uint32_t b) { return std::popcount(a) < std::popcount(b); });
  // A set that contains a known one is not minimal, and need not be tried.
  std::vector<std::uint32_t> found;
  for (const std::uint32_t set : by_size)
    if (std::none_of(found.begin(), found.end(), [&](std::uint32_t known) { return (known & ~set) == 0; }) &&
        gives_goal(problem, set))
      found.push_back(set);
  std::vector<MinimalSet> result;
  for (const std::uint32_t set : found) {
    MinimalSet minimal;
    for (std::size_t i = 0; i < count; ++i)
      if ((set >> i & 1U) != 0) {
        minimal.members.push_back(static_cast<int>(i));
        minimal.weight += problem.candidates[i].weight;
      }
    result.push_back(std::move(minimal));
  }
  std::stable_sort(result.begin(), result.end(), [](const auto& a, const auto& b) { return a.weight < b.weight; });
  return result;
}

}  // namespace prover
