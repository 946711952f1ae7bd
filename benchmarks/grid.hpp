// Points are named and numbered row by row. P parallel lines, cut by T transversals that all meet them in one order: the family of figures in which the number
// of places for rules grows and nothing else changes. Where the transversals are parallel too, the question is about the
// opposite corner of the given angle; otherwise about the other end of its transversal.
#pragma once
#include <string>

namespace prover {

std::string grid_problem(int parallels, int transversals, bool parallel_transversals = true);

}  // namespace prover
