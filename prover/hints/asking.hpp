// The sentences before a step: those of its rule, or, where a step cites none, what there is to ask about putting lines
// together, a letter for short, a line to be drawn.
#pragma once
#include <string>

#include "prover/hints/ladder.hpp"

namespace prover {

HintSentences asking_about(const Climb& climb, const AnswerStep& step);

// The theorem's name as the register has it, without places: "alternate angles", "alt ∠s"; our title where it has none or
// one with numbers. Empty for what has no name worth telling.
std::string name_of_fact(const Climb& climb, const AnswerStep& step);

bool is_printed(const Climb& climb, const AnswerStep& step);  // an auxiliary line that the question itself gives

}  // namespace prover
