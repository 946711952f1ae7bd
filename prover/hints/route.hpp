// The first rungs: what is asked, and what the givens mean that the proof rests on. They ask, and tell nothing that does not
// stand in the question.
#pragma once
#include <string>
#include <vector>

#include "prover/hints/ladder.hpp"

namespace prover {

std::vector<std::string> route_sentences(const Climb& climb);

}  // namespace prover
