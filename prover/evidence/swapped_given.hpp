// Another given in the place of one of the problem's, so that it can be done with what is taught: what an untaught theorem
// would have concluded is told, and a given that only served that theorem is dropped. The new problem was solved, with the
// same answer.
#pragma once
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

struct SwappedGiven {
  std::string told;     // a sentence that can be pasted
  std::string dropped;  // the given that it replaces; empty when all stay
};

// `full`: an attempt that reaches every goal with rules beyond those of `options`. At most `most`, plain ones first.
std::vector<SwappedGiven> swapped_givens(const Statement& statement, const Attempt& full, const AttemptOptions& options,
                                         std::size_t most, const Budget& budget);

}  // namespace prover
