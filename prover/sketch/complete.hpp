// A figure carried on: further points put into a figure that stays as it is. This is how an auxiliary line is tried
// out: a construction that exists in general can be carried out in every figure of the givens, and one that asks too
// much fails in most of them.
#pragma once
#include <optional>
#include <vector>

#include "prover/sketch/sketch.hpp"

namespace prover {

// `base` holds the points that stay, by PointId; `stays[p]` says which of all points they are (the others of `base` are
// not read). `givens`: all phrases, old and new. Nothing when no way was found from so many starts.
std::optional<Sketch> complete(const Sketch& base, const std::vector<bool>& stays, const std::vector<Phrase>& givens,
                               const Budget& budget, int starts = 40);

// Do the equations of `added` restrict only the points that do not stay? True when, near this figure, every small move
// of the staying points can be followed by the others: the derivatives by the new points have the same rank as all
// derivatives (implicit function theorem).
bool restricts_only_new_points(const Sketch& figure, const std::vector<bool>& stays, const std::vector<Phrase>& added,
                               const std::vector<Phrase>& givens);

}  // namespace prover
