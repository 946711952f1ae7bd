// A light set of rule instances that gives the goal. The plain method: instances enter an elimination with
// certificates in the order of what they cost with all they rest on (Dijkstra's order, premises summed), so that
// the goal's certificate is cheap; then members that are not needed are deleted; then each dear member is
// forbidden in turn to see whether a lighter set exists without it. What it finds is minimal, not proved lightest.
#pragma once
#include <optional>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/proof/derivation.hpp"

namespace prover {

struct LightSet {
  std::vector<int> members;      // indices into the problem's candidates, in an order in which premises come first
  std::int64_t weight = 0;
  std::int64_t lower_bound = 0;  // no proof set is lighter than this
  bool proved_lightest = false;
};

// Nothing when the goal does not follow from all candidates.
std::optional<LightSet> shortest_proof(const SearchProblem& problem, const Budget& budget);

}  // namespace prover
