// Drawings as one SVG document, side by side with their captions below; sizes in millimetres. Black on white, nothing
// told by colour; a title and a description for screen readers (SVG 2, W3C).
#pragma once
#include <string>
#include <vector>

#include "frontend/drawing/strokes.hpp"

namespace frontend {

std::string svg_of(const std::vector<Drawing>& drawings);

}  // namespace frontend
