// From a set that gives the goal to a minimal one inside it, and the question whether a set is minimal.
#pragma once
#include "prover/search/closure.hpp"

namespace prover {

// What the goal rests on when the members enter in the given order, then without what is not needed (the last first).
// Empty when the members do not give the goal, or when nothing is needed.
std::vector<int> minimal_subset(const FlatProblem& problem, const std::vector<int>& members);
bool is_minimal(const FlatProblem& problem, const std::vector<int>& members);
// Members in the order in which they fire.
std::vector<int> firing_order(const FlatProblem& problem, const std::vector<int>& members);

}  // namespace prover
