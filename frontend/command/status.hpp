#pragma once
#include "frontend/command/command.hpp"
#include "prover/verdict/answer.hpp"

namespace frontend {

// The exit status of one answer. Disagreement of our checks is the loudest.
int status_of(const prover::Answer& answer);

}  // namespace frontend
