// P parallel lines, cut by T transversals that all meet them in one order: the family of figures in which the number
// of places for rules grows and nothing else changes. The question is about the opposite corner of the given angle.
#pragma once
#include <string>

namespace prover {

std::string grid_problem(int parallels, int transversals);

}  // namespace prover
