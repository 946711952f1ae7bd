// The sentence that selects one of several arrangements: added to the problem, it leaves this arrangement and its answer
// and no other. It is a sentence of the problem language, ready to be pasted, and it is given only after the problem was
// solved with it: proved, with the value of its case.
#pragma once
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// Sentences that say the position, the most usual wording first: "P lies on LM produced", "line: L, M, P in this order".
std::vector<std::string> sentences_for(const Position& position, const Names& names);

// Fills `selects` of the answer's cases. Does nothing to an answer without several cases.
void select_cases(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
                  const Budget& budget, Answer& answer);

}  // namespace prover
