// The way of the pupil: the lightest proof when what she has shown costs nothing. It follows her idea as far as it goes,
// and says what is still missing.
#pragma once
#include "prover/marking/argument.hpp"

namespace prover {

// Sets `way`, and of each line the steps of it that the line states or passes through.
void add_pupils_way(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, const std::vector<LineClaim>& claims,
                    Judgement& judgement);

}  // namespace prover
