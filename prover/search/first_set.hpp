// A light set of candidates that gives the goal, at once: candidates enter an elimination with certificates in the
// order of what they cost with all they rest on (Dijkstra's order, premises summed), so that the goal's certificate is
// cheap; then members that are not needed are left out. Minimal, rarely the lightest.
#pragma once
#include <vector>

#include "prover/search/search_problem.hpp"

namespace prover {

// In an order in which premises come first. Empty when the goal does not follow (or needs nothing).
std::vector<int> first_set(const SearchProblem& problem);

}  // namespace prover
