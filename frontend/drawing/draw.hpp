// From a picture to a drawing: scaled to the paper, marks put where they are read, labels where they touch nothing.
#pragma once
#include "frontend/drawing/picture.hpp"
#include "frontend/drawing/strokes.hpp"

namespace frontend {

struct Paper {
  double width = 86, height = 76;  // millimetres, for the figure with its labels
};

// True to size: both axes have one scale. A figure without extent becomes a drawing of one point.
Drawing draw(const Picture& picture, const Paper& paper = {});

}  // namespace frontend
