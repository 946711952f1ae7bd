#include "prover/sketch/newton.hpp"

#include <Eigen/QR>
#include <limits>

namespace prover::sketching {
namespace {

constexpr double rounding = 64 * std::numeric_limits<double>::epsilon();
constexpr double rank_threshold = 1e-11;

}  // namespace

Linearised linearised(const System& system, const double* x) {
  const auto rows = static_cast<Eigen::Index>(system.equations().size());
  const auto columns = static_cast<Eigen::Index>(system.layout().variables());
  Linearised result{Eigen::MatrixXd::Zero(rows, columns), Eigen::VectorXd(rows)};
  Gradient gradient(system.layout().variables());
  for (Eigen::Index i = 0; i < rows; ++i) {
    const Constraint& constraint = *system.equations()[static_cast<std::size_t>(i)].constraint;
    result.values[i] = evaluate(constraint, system.layout(), x, &gradient);
    for (const int j : gradient.touched()) result.slopes(i, j) = gradient[j];
  }
  return result;
}

Settled settle(const System& system, std::vector<double>& x, int steps) {
  Settled result;
  if (system.equations().empty()) return {true, 0};
  const auto n = static_cast<Eigen::Index>(x.size());
  Eigen::CompleteOrthogonalDecomposition<Eigen::MatrixXd> inverse(static_cast<Eigen::Index>(system.equations().size()), n);
  inverse.setThreshold(rank_threshold);
  bool still = false;
  for (int round = 0; round < steps && !still; ++round) {
    const Linearised at = linearised(system, x.data());
    if (!at.slopes.allFinite() || !at.values.allFinite()) return result;
    inverse.compute(at.slopes);
    const Eigen::VectorXd step = inverse.solve(at.values);
    result.off = step.norm();
    if (result.off > 4 || (round > 8 && result.off > 1e-3)) return result;
    still = result.off < 1e-13;
    if (!still)
      for (Eigen::Index j = 0; j < n; ++j) x[static_cast<std::size_t>(j)] -= step[j];
  }
  // The equations themselves are only evaluated to rounding, which the inverse magnifies.
  result.off += inverse.pseudoInverse().norm() * rounding;
  result.arrived = result.off <= near_enough;
  return result;
}

}  // namespace prover::sketching
