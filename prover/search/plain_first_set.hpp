// A first proof among plain equations, at once, however long it is. Equations between two unknowns with factors ±1 tie
// unknowns into classes (union by rank with signs; their tree edges are a forest), so that only the longer equations,
// written in one unknown for each class, have to be eliminated. What the goal needs of those is read off their labels;
// what it needs of the forest is what flows along each edge when every unknown's share is passed up to the root.
// The forest and the independent longer equations have unique multipliers, and none that is used is zero: the set is
// minimal. (Disjoint sets: Tarjan, "Efficiency of a good but not linear set union algorithm", J. ACM 1975; from memory.)
#pragma once
#include <vector>

#include "prover/search/flat_problem.hpp"

namespace prover {

// For problems without premises, one conclusion for each candidate, and one goal. Empty when the goal does not follow.
std::vector<int> plain_first_set(const FlatProblem& problem);
bool is_plain(const FlatProblem& problem);

}  // namespace prover
