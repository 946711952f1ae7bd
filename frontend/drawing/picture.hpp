// What a drawing shows, before anybody has decided where on the paper: points with their letters, lines, circles, and the
// marks of the trade. Coordinates in any unit, y upwards. Knows nothing of the prover.
#pragma once
#include <string>
#include <vector>

namespace frontend {

struct Picture {
  struct Point {
    std::string letter;
    double x = 0, y = 0;
    bool dot = false;      // shown as a dot: a centre, a contact point, a point on no line
  };
  struct Line {            // from one point to another
    int a = 0, b = 0;
    bool dashed = false;   // an auxiliary line
    bool beyond = false;   // goes on a little at both ends
    int arrowheads = 0;    // lines with the same number are parallel
  };
  struct Tick {            // lengths with the same number of ticks are equal
    int a = 0, b = 0;
    int ticks = 0;
    std::string size;      // "5", "?"; may be empty
  };
  struct Circle {
    double x = 0, y = 0, radius = 0;
  };
  struct Angle {
    int arm1 = 0, vertex = 0, arm2 = 0;
    bool reflex = false;
    bool right = false;    // a square
    int arcs = 1;          // angles with the same number of arcs are equal, where it is above 1 or no size stands beside it
    std::string size;      // "40°", "?"; may be empty
  };
  std::string caption;      // printed below; may be empty
  std::string description;  // for those who do not see it: "Triangle KLM with …"
  std::vector<Point> points;
  std::vector<Line> lines;
  std::vector<Tick> ticks;
  std::vector<Circle> circles;
  std::vector<Angle> angles;
};

}  // namespace frontend
