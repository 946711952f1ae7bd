// Is this the only root? A sum of cosines vanishes at x, exactly; no other number of an open interval may. Near x, and
// near both ends (where a figure degenerates and the sum often vanishes too), the first derivative that is not zero
// there – found exactly – keeps its sign, so there is no further root (Rolle); everywhere else the sum itself keeps
// away from zero, by interval arithmetic (Arb) and bisection. A proof, not a measurement.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/base/rational.hpp"

namespace prover {

struct Wave {  // factor · cos(slope · x + shift), degrees
  Rational factor, slope, shift;
};

enum class RootCount {
  only_this,
  several,      // the sum changes its sign elsewhere
  not_decided,  // x is no root, or the work was not done within its limits
};

// `x` strictly between `low` and `high`.
RootCount count_roots(const std::vector<Wave>& sum, const Rational& x, const Rational& low, const Rational& high,
                      const Budget& budget);

}  // namespace prover
