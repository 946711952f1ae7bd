// What has to be confirmed about a proof, as data, so that the solver and the SMT-LIB text ask the very same
// questions. Only the algebra is here: that each premise follows from the conclusions it cites, and the goal
// from all of them. Whether a rule may say what it says is the checker's business.
#pragma once
#include <string>
#include <vector>

#include "prover/proof/proof.hpp"

namespace prover {

// The equations `from` and the denial of `claims` together must be unsatisfiable.
struct Obligation {
  std::string name;                 // "step 3, premise 1"
  std::vector<const Form*> from;    // each "= 0"
  std::vector<const Form*> claims;  // denied: at least one of them is not 0
  std::vector<const Form*> positive;  // denied too: one of them is not more than 0
  bool whole = false;               // with 0 < angle < 180 and 0 < length
  bool denies = true;               // false: `from` alone is impossible (a contradiction proof)
};

struct Obligations {
  std::vector<Obligation> list;  // points into the proof
  std::string malformed;         // why the proof cannot be read at all; else empty
};

Obligations obligations_of(const Proof& proof, const UnknownTable& unknowns);

}  // namespace prover
