// Contradictory givens in the answer: which exclude each other, how that is known, and what change would let a figure be
// drawn. May change the verdict: to `contradictory` where figures are evidence enough, from it where the numbers differ
// by no more than their rounding.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

void add_conflict(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                  const AttemptOptions& options, const Budget& budget, Answer& answer);

}  // namespace prover
