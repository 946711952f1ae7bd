// What the sentences of a statement say of lines and positions: the input of an arrangement.
#pragma once
#include "prover/figure/arrangement.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

// Lines come from the givens only; a segment counts as drawn when a given or a goal names it.
FigureText figure_text(const Statement& statement);

// Pairs of points that a phrase names as sides, segments, lines or arms of angles.
std::vector<std::pair<PointId, PointId>> drawn_pairs(const Phrase& phrase);

}  // namespace prover
