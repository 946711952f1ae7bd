// One form for each fact, whichever way round it is said: "KL ∥ MN" is "NM ∥ LK", a parallelogram may start at
// any corner, congruent triangles may be listed in any common order.
#pragma once
#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"

namespace prover {

// Parallel and perpendicular: the lines through ab and cd; not a valid id when either is not drawn or both are
// the same line.
UnknownId line_fact(FactKind kind, PointId a, PointId b, PointId c, PointId d, const Arrangement& arrangement,
                    UnknownTable& unknowns);
// Every other kind of fact, by its points.
UnknownId point_fact(FactKind kind, std::vector<PointId> points, UnknownTable& unknowns);

}  // namespace prover
