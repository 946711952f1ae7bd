// A figure as a mechanism: what the givens leave free in it, and which way it can move. The equations of the givens at
// the figure, linearised, say so: a small move that none of them notices is free. Moving, turning and scaling the
// whole page is not counted.
//
// Ranks of derivatives hold near the figure they are taken at, and for a figure that happens to be special they may
// mislead; so whoever concludes something from them asks a second figure or makes the move.
#pragma once
#include <Eigen/Core>
#include <Eigen/QR>
#include <memory>
#include <optional>
#include <vector>

#include "prover/sketch/newton.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/sketch/variables.hpp"

namespace prover::motion {

class Mechanism {
 public:
  // The figure of `givens` nearest to `near`, polished to rounding (about 1e-13 of its size). None when the givens have no
  // figure there, or only one that breaks a position.
  static std::optional<Mechanism> at(const std::vector<Phrase>& givens, const Sketch& near);

  // On to the figure nearest to `x`; where there is none, false, and the mechanism stays where it was.
  bool move_to(const std::vector<double>& x) { return settle_at(x); }

  Sketch figure() const;
  const sketching::System& system() const { return *system_; }
  const sketching::Units& units() const { return units_; }
  const std::vector<double>& x() const { return x_; }

  int freedom() const { return freedom_; }  // how many numbers are needed to fix its shape (and size, if lengths are given)

  // The part of a gradient that the free moves notice.
  Eigen::VectorXd free_part(const Eigen::VectorXd& gradient) const;
  // Does the quantity change along the free moves? Its free part is compared with the whole.
  bool moves(const Expression& quantity) const;

 private:
  Mechanism(const std::vector<Phrase>& givens, sketching::Units units);
  bool settle_at(std::vector<double> x);

  sketching::Units units_;
  std::unique_ptr<sketching::System> system_;
  std::vector<double> x_;
  Eigen::MatrixXd slopes_;
  Eigen::CompleteOrthogonalDecomposition<Eigen::MatrixXd> inverse_;
  int freedom_ = 0;
};

// The gradient of a quantity by the solver's variables: of angles in radians, of lengths in those of the solver, of
// unknown numbers as they stand.
Eigen::VectorXd gradient_of(const Expression& quantity, const sketching::Layout& layout, const double* x);

// A free part smaller than this, by the whole gradient, is rounding; `sketch` meets the givens to 1e-9, and a Mechanism
// better, so that nearly singular figures alone lie between.
inline constexpr double free_by_whole = 1e-6;

}  // namespace prover::motion
