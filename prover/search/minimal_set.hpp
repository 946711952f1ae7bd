// From a set that gives the goal to a minimal one inside it, and the question whether a set is minimal.
#pragma once
#include "prover/search/closure.hpp"

namespace prover {

// What the goal rests on when the members enter in the given order, then without what is not needed (the last first).
// Empty when the members do not give the goal, or when nothing is needed.
std::vector<int> minimal_subset(const FlatProblem& problem, const std::vector<int>& members);
// Leaves out what the goal does not need, the last first. With `only_weightless` it ends with false at the first member
// with a weight that could be spared.
bool leave_out_needless(const FlatProblem& problem, std::vector<int>& members, bool only_weightless);
bool is_minimal(const FlatProblem& problem, const std::vector<int>& members);
// Members in the order in which they fire.
std::vector<int> firing_order(const FlatProblem& problem, const std::vector<int>& members);

}  // namespace prover
