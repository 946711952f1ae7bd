// Newton's method with the pseudo-inverse (Eigen's complete orthogonal decomposition): from near a figure of the givens
// to that figure, by the shortest way. Unlike the damped normal equations of solve.cpp it bears equations that depend
// on each other, or nearly do; it is what everything that starts from a figure uses.
#pragma once
#include <Eigen/Core>
#include <vector>

#include "prover/sketch/solve.hpp"

namespace prover::sketching {

// The equations of the branches chosen last, at a point: their values and a row of derivatives each.
struct Linearised {
  Eigen::MatrixXd slopes;
  Eigen::VectorXd values;
};
Linearised linearised(const System& system, const double* x);

struct Settled {
  bool arrived = false;
  // How far an exact figure is at most, as estimated: the step that remains, and the rounding of the equations
  // times the norm of the inverse of their slopes.
  double off = 0;
};

inline constexpr double near_enough = 1e-10;  // `off` of a figure, whose size is about 2

// Takes `x` to the nearest figure of the equations chosen; positions are not looked at.
Settled settle(const System& system, std::vector<double>& x, int steps = 14);

}  // namespace prover::sketching
