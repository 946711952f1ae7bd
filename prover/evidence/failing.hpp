// How far a claim fails in a figure, in words that can be checked with a ruler and a protractor: "KP = 3.1, KQ = 5.2".
#pragma once
#include <string>

#include "prover/sketch/sketch.hpp"

namespace prover {

std::string how_it_fails(const Phrase& claim, const Sketch& figure, const Names& names);

}  // namespace prover
