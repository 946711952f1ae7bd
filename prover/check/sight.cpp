#include "prover/check/sight.hpp"

#include <algorithm>
#include <cmath>

namespace prover::replay {
namespace {

// Twice the area of the triangle against the square of its longest side: what rounding leaves of a point that
// is on the line is some ten million times smaller.
constexpr double clearly = 1e-6;

int side(const Drawing& d, PointId from, PointId to, PointId p) {
  const auto &a = d[from.index()], &b = d[to.index()], &c = d[p.index()];
  const double cross = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const double longest = std::max({std::hypot(b[0] - a[0], b[1] - a[1]), std::hypot(c[0] - a[0], c[1] - a[1]),
                                   std::hypot(c[0] - b[0], c[1] - b[1])});
  if (!(std::abs(cross) > clearly * longest * longest)) return 0;  // also when a coordinate is not a number
  return cross > 0 ? 1 : -1;
}

// That the three are on one line is not for a figure to show; only their order along it is.
bool in_order(const Drawing& d, PointId first, PointId middle, PointId last) {
  const auto &a = d[first.index()], &b = d[middle.index()], &c = d[last.index()];
  const double dx = c[0] - a[0], dy = c[1] - a[1];
  const double along = ((b[0] - a[0]) * dx + (b[1] - a[1]) * dy) / (dx * dx + dy * dy);
  return along > clearly && along < 1 - clearly;
}

}  // namespace

bool shows(const Drawing& drawing, const Position& p) {
  switch (p.kind) {
    case PositionKind::between:
      return in_order(drawing, p.a, p.b, p.c);
    case PositionKind::not_collinear:
      return side(drawing, p.a, p.b, p.c) != 0;
    case PositionKind::same_side:
      return side(drawing, p.c, p.d, p.a) * side(drawing, p.c, p.d, p.b) > 0;
    case PositionKind::opposite_sides:
      return side(drawing, p.c, p.d, p.a) * side(drawing, p.c, p.d, p.b) < 0;
  }
  return false;
}

}  // namespace prover::replay
