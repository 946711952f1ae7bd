// What each theorem that a proof cites contributes: is there a proof without it, and what does that one cost?
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// For a proved answer, by rule in the order of citation: theorems and postulates, not definitions and arithmetic. Ends with
// the budget: rules that were not tried any more are left out.
std::vector<AnswerContribution> contributions(const std::vector<Statement>& statements, const AttemptOptions& options,
                                              const Budget& budget, const Answer& answer);

}  // namespace prover
