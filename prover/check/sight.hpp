// What figures show of a position, by plain arithmetic on their coordinates. A figure shows a side only when
// the point is clearly off the line, and an order only when the points are clearly apart.
#pragma once
#include <array>
#include <vector>

#include "prover/figure/position.hpp"

namespace prover::replay {

using Drawing = std::vector<std::array<double, 2>>;  // by PointId

bool shows(const Drawing& drawing, const Position& position);

}  // namespace prover::replay
