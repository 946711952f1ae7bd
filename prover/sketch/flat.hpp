// Where no figure is found: is there one that is flat? Givens such as KL = 3, LM = 4, KM = 7 have a solution, in which
// three points that should make a triangle stand on one line, or two points fall together. That is another thing than
// givens without any solution, and another thing to tell the reader.
#pragma once
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "prover/sketch/sketch.hpp"

namespace prover {

struct FlatFigure {
  Sketch figure;                                       // meets every equation; positions only just, or not at all
  std::vector<std::pair<PointId, PointId>> together;   // points that fall together
  std::vector<std::array<PointId, 3>> on_a_line;       // three points that the givens call a triangle, and are none
};

// None when such a figure was not found from so many starts.
std::optional<FlatFigure> flat_figure(const std::vector<Phrase>& givens, std::size_t points, const Budget& budget,
                                      int starts = 60);

}  // namespace prover
