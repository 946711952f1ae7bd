// A drawing decided to the last detail: strokes and texts on paper, in millimetres, y downwards. What a writer of a
// format needs, and what labels must not touch.
#pragma once
#include <string>
#include <vector>

namespace frontend {

struct Spot {
  double x = 0, y = 0;
};

struct Stroke {
  enum class Weight { line, mark };  // the figure itself; arcs, ticks and arrowheads
  std::vector<Spot> path;            // at least two
  Weight weight = Weight::line;
  bool dashed = false;
  bool closed = false;
};
struct RoundStroke {  // a circle, or the arc from one angle to another (degrees, counterclockwise as seen)
  Spot centre;
  double radius = 0;
  double from = 0, to = 360;
  Stroke::Weight weight = Stroke::Weight::line;
};
struct Dot {
  Spot at;
  double radius = 0;
};
struct Text {
  Spot middle;
  std::string text;
  double size = 0;      // height of the letters' box
  double width = 0;     // as estimated
  bool italic = false;  // letters of points
};

struct Drawing {
  double width = 0, height = 0;
  std::vector<Stroke> strokes;
  std::vector<RoundStroke> rounds;
  std::vector<Dot> dots;
  std::vector<Text> texts;
  std::string caption, description;
  int overlaps = 0;  // pairs of a text and a text, line, arc or dot that touch: the best that was found
};

// A width to reckon with, a little more than fonts in use need.
double text_width(const std::string& text, double size);

// Arcs as paths, for whoever asks what touches what.
std::vector<Spot> path_of(const RoundStroke& round);

}  // namespace frontend
