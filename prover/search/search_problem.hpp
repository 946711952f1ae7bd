// The search as it sees a problem: no rules, no figure, only weighted candidates with premises and conclusions.
// A proof set is a set of candidates whose derivation (`derivation.hpp`) reaches the goal; wanted are the lightest.
#pragma once
#include <cstdint>
#include <vector>

#include "prover/fact/form.hpp"

namespace prover {

// A rule at given places, as forms and a weight; each form is read as "= 0".
struct Candidate {
  std::vector<Form> premises, conclusions;
  std::int64_t weight = 0;  // what it costs a reader; never negative
};

struct SearchProblem {
  std::vector<Candidate> candidates;  // in an order in which premises come first
  std::vector<Form> goal;             // all must follow; empty: the contradiction 0 = 1
};

}  // namespace prover
