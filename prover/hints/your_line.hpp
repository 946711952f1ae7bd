// A line of the pupil's that is not right, or not enough, is met first: with a question about that line, not with what
// should stand there.
#pragma once
#include <string>

#include "prover/marking/judgement.hpp"

namespace prover {

std::string question_about(const JudgedLine& line);  // empty where there is nothing to ask

// The same without the question of a classic mistake, for where that one would say too much.
std::string plain_question_about(const JudgedLine& line);

}  // namespace prover
