// Which points stand on one line, as far as it is known. Two points are always on a line; only lines with
// three or more known points are kept, and lines that share two points are one. Differently named points are
// different points: that is how a class reads a figure, and all of this room relies on it.
//
// The namespace `replay` keeps the checker's own versions of words (lines, positions, naming) apart from
// those of the rooms it checks: two classes of one name in one program would be merged by the linker without
// a word.
#pragma once
#include <vector>

#include "prover/base/ids.hpp"

namespace prover::replay {

using Points = std::vector<PointId>;

class Lines {
 public:
  explicit Lines(std::size_t points) : points_(points), line_of_(points * points, -1) {}

  bool add(Points on_one_line);                // whether anything new was learnt
  Points through(PointId a, PointId b) const;  // all known points of line ab, sorted; a and b at least
  bool collinear(PointId a, PointId b, PointId c) const;
  bool one_line(const Points& points) const;
  PointId common_point(PointId a, PointId b, PointId c,
                       PointId d) const;  // of two different lines; may be none
  const std::vector<Points>& kept() const { return kept_; }
  std::size_t points() const { return points_; }

 private:
  int& line_of(PointId a, PointId b) { return line_of_[a.index() * points_ + b.index()]; }
  int line_of(PointId a, PointId b) const { return line_of_[a.index() * points_ + b.index()]; }

  std::size_t points_;
  std::vector<Points> kept_;  // three points or more
  std::vector<int> line_of_;  // by pair: index into kept_, or -1
};

}  // namespace prover::replay
