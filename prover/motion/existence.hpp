// That a figure really exists near a sketch. A sketch meets the givens to rounding, which could be a near miss. The
// interval Newton test of Krawczyk (R. Krawczyk, "Newton-Algorithmen zur Bestimmung von Nullstellen mit Fehlerschranken",
// Computing 4, 1969; R. E. Moore, "A test for existence of solutions to nonlinear systems", SIAM J. Numer. Anal. 14, 1977)
// tells: when the Newton image of a small box lies inside the box, an exact solution does too. As many variables as there
// are equations take part, chosen by pivoting; the others keep the sketch's value.
//
// Equations that depend on each other (over-determined givens) are beyond the test: then nothing is said.
#pragma once
#include <optional>
#include <vector>

#include "prover/motion/enclosure.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover::motion {

class Existence {
 public:
  // None when the test does not succeed. Otherwise an exact figure of all givens, positions too, lies in a box this
  // wide round the sketch.
  static std::optional<Existence> of(const std::vector<Phrase>& givens, const Sketch& figure);

  double within() const { return within_; }  // by the size of the figure

  // Between which bounds the exact figure has the quantity; none when the box does not tell.
  struct Bounds {
    double least, most;
  };
  std::optional<Bounds> bounds(const Expression& quantity) const;
  bool breaks(const Phrase& claim) const;  // the claim certainly fails in the exact figure

 private:
  sketching::Layout layout_;
  Box box_;
  double within_ = 0;
};

}  // namespace prover::motion
