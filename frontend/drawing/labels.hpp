// Where labels go so that they touch nothing: every label has places to choose from, each with a cost of its own; a
// choice is improved one label at a time until no change helps (iterated conditional modes; Besag, 1986). What remains
// is counted.
#pragma once
#include <vector>

#include "frontend/drawing/strokes.hpp"

namespace frontend {

struct Label {
  Text text;                     // its middle is decided here
  struct Place {
    Spot middle;
    double cost = 0;             // of being there, beside what it touches
  };
  std::vector<Place> places;     // at least one; in the order of preference
};

// Puts the labels into the drawing and counts what still touches.
void place_labels(std::vector<Label> labels, Drawing& drawing);

}  // namespace frontend
