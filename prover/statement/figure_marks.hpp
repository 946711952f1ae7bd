// What a drawing of a problem shows: which segments, lines and circles are drawn, and the marks of the trade for what is
// given – sizes, equal angles, equal lengths, parallels, right angles – and what is asked. From the sentences alone;
// coordinates come from a sketch. Points are named, so that whoever draws needs nothing else of the prover.
#pragma once
#include <array>
#include <string>
#include <vector>

#include "prover/statement/statement.hpp"

namespace prover {

struct FigureMarks {
  struct Line {
    std::vector<std::string> points;  // on one line: drawn from the first of them to the last
    bool added = false;               // an auxiliary line
    bool beyond = false;              // a tangent: drawn a little beyond its points
  };
  struct Circle {
    std::string centre;                // empty: the circle through the points
    std::vector<std::string> through;  // one with a centre, else three
  };
  struct Angle {
    std::string arm1, vertex, arm2;
    bool reflex = false;
    bool right = false;
    bool asked = false;
    int group = 0;      // angles of one group are equal; 0: equal to no other by what is given
    std::string size;   // "40°", "3x + 10°"; empty when no size is given
  };
  struct Length {
    std::string a, b;
    bool asked = false;
    int group = 0;
    std::string size;   // "5"
  };
  struct Parallel {
    std::array<std::string, 2> line;
    int group = 0;      // from 1
  };
  std::vector<std::string> points;  // all that are drawn
  std::vector<Line> lines;
  std::vector<Circle> circles;
  std::vector<std::string> contacts;  // where a tangent touches
  std::vector<Angle> angles;
  std::vector<Length> lengths;
  std::vector<Parallel> parallels;
  std::string asked;        // of the first goal: "∠KLM", "x"; empty for a claim
  bool in_degrees = false;  // what is asked is a sum of angles
};

// Only what is given (and asked of the first goal): a claim is no mark.
FigureMarks figure_marks(const Statement& statement);

}  // namespace prover
