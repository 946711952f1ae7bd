// What stands behind a verdict that is not a proof: why the goal is not reached, what would settle it, which givens
// exclude each other. One file of this room for each kind of evidence; this is where they join the answer.
#pragma once
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// `answer` has its verdict; `solved`: one for each of `statements`. With `in_full`, also what nobody needs who only
// wants to know the verdict: superfluous givens, every smallest set of givens, what each theorem contributes.
// `answer_book`: the texts behind `answer:`, by goal.
void add_evidence(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                  const AttemptOptions& options, bool in_full, const std::vector<std::string>& answer_book,
                  const Budget& budget, Answer& answer);

}  // namespace prover
