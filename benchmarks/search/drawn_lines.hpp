// Lines in general position, no three through one point: where two cross there are four angles, and a class writes
// vertical angles and linear pairs at each crossing, angles on parallels, triangle sums and exterior angles.
#pragma once
#include <array>
#include <utility>
#include <vector>

#include "benchmarks/search/equation_book.hpp"

namespace prover {

class DrawnLines {
 public:
  struct Line {
    double x, y;      // a point on it
    double degrees;   // 0 ≤ degrees < 180; lines are parallel exactly if these are equal
  };
  enum class Pairs { all, neighbours };

  // Enters the lines, parallels included, and the angles at all crossings into the book.
  DrawnLines(EquationBook& book, std::vector<Line> lines);

  void write_crossings();
  void write_parallels(Pairs which = Pairs::all);
  void write_triangles();

  // Along each line one sense is +1 and the other −1. The angle at the crossing of two lines between these senses.
  UnknownId angle(int line, int other, int sense, int other_sense) const;
  // The sense along `line` from its crossing with `from` to its crossing with `to`.
  int sense(int line, int from, int to) const;
  // An angle of the triangle that three lines make, at the crossing of the first two; −1: its vertical angle.
  UnknownId corner(int a, int b, int c, int which = 1) const;

 private:
  using Place = std::array<double, 2>;
  int count() const { return static_cast<int>(lines_.size()); }
  bool parallel(int a, int b) const { return at(a).degrees == at(b).degrees; }
  const Line& at(int line) const { return lines_[static_cast<std::size_t>(line)]; }
  Place along(int line) const;
  Place crossing(int a, int b) const;

  EquationBook& book_;
  std::vector<Line> lines_;
  std::vector<std::vector<UnknownId>> first_angle_;  // by lower and higher line: the first of four
};

}  // namespace prover
