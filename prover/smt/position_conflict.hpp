// Whether what sentences say of positions alone can hold in one figure. Every three points turn left, right or not at all;
// between the turns of four and five points there are laws (below), and Z3 looks for turns that meet both. When there are
// none, no figure exists. When there are some, nothing is said: the laws are necessary, for many points not sufficient.
//
//   [xbc][xde] − [xbd][xce] + [xbe][xcd] = 0   Grassmann–Plücker: of these three terms not all that differ from 0 have one sign
//   [abc] − [abd] + [acd] − [bcd] = 0          likewise, of four
//
// A point Ω infinitely far away, in a direction in which no two named points lie, is added: [Ωab] tells which of a and b
// comes first in that direction, so that the order of points on a line is a matter of turns too.
#pragma once
#include <array>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/figure/position.hpp"

namespace prover {

struct PositionClaims {
  std::vector<std::vector<PointId>> lines;       // points that stand on one line
  std::vector<Position> positions;
  std::vector<std::array<PointId, 3>> rays;      // P, A, B: P on the ray from A through B
  std::vector<std::array<PointId, 4>> parallel;  // line ab, line cd
};

enum class PositionsAnswer { exclude_each_other, perhaps, too_many_points };
PositionsAnswer positions_exclude_each_other(const PositionClaims& claims, const Budget& budget);

}  // namespace prover
