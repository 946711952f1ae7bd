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

// Do the sentences that `all` has beyond `old` restrict only the points that do not stay? True when, near this figure,
// every small move of the staying points that `old` allows can be followed by the others. In ranks of derivatives:
// that of `all` is that of `old` and that of `all` by the new points alone, together (implicit function theorem). What
// an added sentence repeats or implies of the old ones ("a tangent at L" says that L is on the circle) does no harm.
bool restricts_only_new_points(const Sketch& figure, const std::vector<bool>& stays, const std::vector<Phrase>& old,
                               const std::vector<Phrase>& all);

}  // namespace prover
