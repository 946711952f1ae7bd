#include "frontend/drawing/strokes.hpp"

#include <algorithm>
#include <cmath>

namespace frontend {

double text_width(const std::string& text, double size) {
  double width = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto c = static_cast<unsigned char>(text[i]);
    if ((c & 0xC0) == 0x80) continue;  // goes on with the sign before
    if (c >= 'A' && c <= 'Z') width += 0.72;
    else if (c == 0xC2) width += 0.42;  // the degree sign
    else if (c == ' ') width += 0.3;
    else width += 0.58;
  }
  return width * size;
}

std::vector<Spot> path_of(const RoundStroke& round) {
  const double span = round.to - round.from;
  const int parts = std::max(4, static_cast<int>(std::ceil(span / 10)));
  std::vector<Spot> path;
  for (int i = 0; i <= parts; ++i) {
    const double angle = (round.from + span * i / parts) * 3.14159265358979323846 / 180;
    path.push_back({round.centre.x + round.radius * std::cos(angle), round.centre.y - round.radius * std::sin(angle)});
  }
  return path;
}

}  // namespace frontend
