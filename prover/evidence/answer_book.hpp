// The answer book checked (`answer: 64`): does the answer that it gives agree with what is proved, is it one case of
// several, could it be right at all, and what would have to be given for it to be right?
#pragma once
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// `given`: the texts behind `answer:`, one for each goal in order ("64", "64°", "x = 12", "37/2", "yes"). Uses what `answer`
// says, its sets of settling givens included, so it comes last.
std::vector<AnswerBookEntry> check_answer_book(const std::vector<std::string>& given,
                                               const std::vector<Statement>& statements, const AttemptOptions& options,
                                               const Budget& budget, const Answer& answer);

}  // namespace prover
