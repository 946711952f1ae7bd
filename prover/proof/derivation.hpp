// What a set of rule instances gives: the least fixpoint in which an instance fires once its premises follow by
// linear algebra from conclusions so far. Everything about proofs – is this set one, is this member needed – is
// asked of this one function.
#pragma once
#include <vector>

#include "prover/algebra/linear_system.hpp"
#include "prover/fact/form.hpp"

namespace prover {

// Instances as the search sees them: forms and a weight.
struct Candidate {
  std::vector<Form> premises, conclusions;
  std::int64_t weight = 0;
};

struct SearchProblem {
  std::vector<Candidate> candidates;  // in an order in which premises come first
  std::vector<Form> goal;             // all must follow; empty: the contradiction 0 = 1
};

// Members (indices into candidates) in the order in which they fired; `reached` when the goal follows. Stops as
// soon as it is reached.
struct Derivation {
  bool reached = false;
  std::vector<int> fired;
};
Derivation derive(const SearchProblem& problem, const std::vector<int>& members);

}  // namespace prover
