// What would bring a goal within reach that is not: rules that the class has not been taught, fewest first; the chapter of
// the course after which it can be done; lines to be drawn (helping_lines.hpp). Everything named was tried: the problem was
// solved with it, and the proof passed both checks.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// For an answer that is beyond the rules or unknown. Adds to `unlock` and `unlocked_by`. `in_full`: looks for lines longer.
void add_unlock(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
                bool in_full, const Budget& budget, Answer& answer);

}  // namespace prover
