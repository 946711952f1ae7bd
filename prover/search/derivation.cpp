#include "prover/search/derivation.hpp"

#include <algorithm>

#include "prover/algebra/linear_system.hpp"

namespace prover {

Derivation derive(const SearchProblem& problem, const std::vector<int>& members) {
  Derivation result;
  LinearSystem system;
  auto reached = [&] {
    if (problem.goal.empty()) return system.contradictory();
    return std::all_of(problem.goal.begin(), problem.goal.end(), [&](const Form& g) { return system.entails(g); });
  };
  std::vector<int> open = members;
  for (bool changed = true; changed && !open.empty();) {
    changed = false;
    std::vector<int> still;
    for (const int i : open) {
      const Candidate& c = problem.candidates[static_cast<std::size_t>(i)];
      if (std::all_of(c.premises.begin(), c.premises.end(), [&](const Form& p) { return system.entails(p); })) {
        for (const Form& f : c.conclusions) system.add(f);
        result.fired.push_back(i);
        changed = true;
        if (problem.goal.empty() && system.contradictory()) {
          result.reached = true;
          return result;
        }
      } else {
        still.push_back(i);
      }
    }
    open = std::move(still);
    if (changed && reached()) {
      result.reached = true;
      return result;
    }
  }
  result.reached = reached();
  return result;
}

}  // namespace prover
