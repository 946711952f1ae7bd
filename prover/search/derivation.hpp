// What a set of rule instances gives: the least fixpoint in which an instance fires once its premises follow by
// linear algebra from conclusions so far. Everything about proofs – is this set one, is this member needed – is
// asked of this one function.
#pragma once
#include <vector>

#include "prover/search/search_problem.hpp"

namespace prover {

// Members (indices into candidates) in the order in which they fired; `reached` when the goal follows. Stops as
// soon as it is reached.
struct Derivation {
  bool reached = false;
  std::vector<int> fired;
};
Derivation derive(const SearchProblem& problem, const std::vector<int>& members);

}  // namespace prover
