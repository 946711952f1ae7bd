// One form for each fact, whichever way round it is said: "KL ∥ MN" is "NM ∥ LK", a parallelogram may start at
// any corner, congruent triangles may be listed in any common order.
#pragma once
#include <initializer_list>
#include <optional>
#include <span>
#include <vector>

#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"

namespace prover {

// Parallel and perpendicular: the lines through ab and cd; not a valid id when either is not drawn or both are
// the same line.
UnknownId line_fact(FactKind kind, PointId a, PointId b, PointId c, PointId d, const Arrangement& arrangement,
                    UnknownTable& unknowns);
// The line through a and the touching point, which touches the circle round a centre (`circle`: that one point) or
// the circle through two more points; not valid when the line is not drawn.
UnknownId tangent_fact(PointId a, PointId touching, std::vector<PointId> circle, const Arrangement& arrangement,
                       UnknownTable& unknowns);
// Every other kind of fact, by its points.
UnknownId point_fact(FactKind kind, std::span<const PointId> points, UnknownTable& unknowns);
UnknownId point_fact(FactKind kind, std::initializer_list<PointId> points, UnknownTable& unknowns);

// The kind of fact that a phrase says, when it says a fact rather than an equation or a position.
std::optional<FactKind> fact_kind_of(const Phrase& phrase);

// Every order of a fact's points in which it can be read: all starts and senses of a parallelogram, all common
// orders of congruent triangles.
std::vector<std::vector<PointId>> readings(FactKind kind, const std::vector<PointId>& points);

}  // namespace prover
