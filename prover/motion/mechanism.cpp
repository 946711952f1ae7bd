#include "prover/motion/mechanism.hpp"

#include <cmath>

#include "prover/sketch/plane.hpp"

namespace prover::motion {

using namespace sketching;

namespace {

constexpr double meets = 1e-10;
constexpr double position_margin = 1e-5;
constexpr double rank_threshold = 1e-8;  // of pivots, by the largest

// Moving along x and y, turning, growing: those of the four that the equations do not notice are no freedom of shape.
int motions_of_the_page(const Eigen::MatrixXd& slopes, const std::vector<double>& x, std::size_t points) {
  Eigen::MatrixXd moves = Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(x.size()), 4);
  for (std::size_t p = 0; p < points; ++p) {
    const auto i = static_cast<Eigen::Index>(2 * p);
    moves(i, 0) = moves(i + 1, 1) = 1;
    moves(i, 2) = -x[2 * p + 1];
    moves(i + 1, 2) = x[2 * p];
    moves(i, 3) = x[2 * p];
    moves(i + 1, 3) = x[2 * p + 1];
  }
  int count = 0;
  for (Eigen::Index k = 0; k < 4; ++k)
    if ((slopes * moves.col(k)).norm() < 1e-7 * std::max(1.0, moves.col(k).norm())) ++count;
  return count;
}

}  // namespace

Mechanism::Mechanism(const std::vector<Phrase>& givens, Units units)
    : units_(std::move(units)), system_(std::make_unique<System>(givens, units_.layout)) {}

std::optional<Mechanism> Mechanism::at(const std::vector<Phrase>& givens, const Sketch& near) {
  Mechanism mechanism(givens, units_of(givens, near.points.size()));
  if (!mechanism.system_->has_branches() || !mechanism.settle_at(variables_of(near, mechanism.units_))) return std::nullopt;
  return mechanism;
}

bool Mechanism::settle_at(std::vector<double> x) {
  system_->choose(x.data());
  if (!settle(*system_, x).arrived || !system_->holds(x.data(), meets, position_margin)) return false;
  x_ = std::move(x);
  slopes_ = linearised(*system_, x_.data()).slopes;
  if (slopes_.rows() == 0) slopes_ = Eigen::MatrixXd::Zero(1, static_cast<Eigen::Index>(x_.size()));
  inverse_.setThreshold(rank_threshold);
  inverse_.compute(slopes_);
  const int free = static_cast<int>(x_.size()) - static_cast<int>(inverse_.rank());
  freedom_ = std::max(0, free - motions_of_the_page(slopes_, x_, units_.layout.points));
  return true;
}

Sketch Mechanism::figure() const {
  Sketch result = sketch_of(x_, units_);
  result.residual = system_->residual(x_.data());
  return result;
}

Eigen::VectorXd Mechanism::free_part(const Eigen::VectorXd& gradient) const {
  return gradient - inverse_.solve(slopes_ * gradient);
}

bool Mechanism::moves(const Expression& quantity) const {
  const Eigen::VectorXd gradient = gradient_of(quantity, units_.layout, x_.data());
  return free_part(gradient).norm() > free_by_whole * std::max(gradient.norm(), 1e-12);
}

Eigen::VectorXd gradient_of(const Expression& quantity, const Layout& layout, const double* x) {
  Eigen::VectorXd sum = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(layout.variables()));
  Gradient gradient(layout.variables());
  for (const Term& term : quantity.terms) {
    const double factor = term.coefficient.to_double();
    if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
      const double sign = angle->exterior != angle->reflex ? -1 : 1;
      evaluate({.form = Form::angles, .terms = {{.a = angle->arm1.value, .b = angle->vertex.value, .c = angle->arm2.value}}},
               layout, x, &gradient);
      for (const int i : gradient.touched()) sum[i] += factor * sign * gradient[i];
    } else if (const auto* segment = std::get_if<Segment>(&term.quantity)) {
      const Vector v{x[2 * segment->b.value] - x[2 * segment->a.value], x[2 * segment->b.value + 1] - x[2 * segment->a.value + 1]};
      const double by = factor / std::max(norm(v), 1e-12);
      sum[2 * segment->b.value] += by * v.x;
      sum[2 * segment->b.value + 1] += by * v.y;
      sum[2 * segment->a.value] -= by * v.x;
      sum[2 * segment->a.value + 1] -= by * v.y;
    } else if (const auto* number = std::get_if<Number>(&term.quantity)) {
      if (const int k = layout.number(number->name); k >= 0) sum[static_cast<Eigen::Index>(2 * layout.points) + k] += factor;
    }
  }
  return sum;
}

}  // namespace prover::motion
