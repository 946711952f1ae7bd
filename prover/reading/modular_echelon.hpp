// Linear forms modulo a prime, fully reduced: thousands of prefixes of a proof are compared (`order.cpp`), and exact
// numbers would be ten times slower. What comes out is checked exactly before it is used, so a number that is zero by
// accident can do no harm.
#pragma once
#include <cstdint>
#include <vector>

#include "prover/base/rational.hpp"

namespace prover {

class ModularEchelon {
 public:
  using Row = std::vector<std::uint32_t>;  // coefficients, the constant last; all rows of one length

  static std::uint32_t modulo(const Rational& number);

  void add(Row row);  // "= 0"
  bool entails(Row row) const;
  // What a line leaves open: unknowns beyond one, and one more when it is not just that two things are equal. An equation
  // as it stands may be shorter than with everything put in; the shorter one counts.
  int left_open(Row row) const;

 private:
  void reduce(Row& row) const;

  std::vector<Row> rows_;  // each 1 at its pivot, which is its first unknown and stands in no other row
  std::vector<std::size_t> pivots_;
};

}  // namespace prover
