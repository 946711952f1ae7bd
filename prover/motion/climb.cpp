#include "prover/motion/climb.hpp"

#include <algorithm>
#include <cmath>

#include "prover/motion/shape.hpp"
#include "prover/sketch/arrangement.hpp"
#include "prover/sketch/plane.hpp"

namespace prover::motion {

using namespace sketching;

namespace {

constexpr double first_step = 0.15;  // of a figure about 2 wide
constexpr double longest_step = 0.5;
constexpr double shortest_step = 4e-3;
constexpr double enough = 1e-3;      // a gain by a step, below which climbing ends

bool has_a_length(const Expression& expression) {
  return std::any_of(expression.terms.begin(), expression.terms.end(),
                     [](const Term& term) { return std::holds_alternative<Segment>(term.quantity); });
}

}  // namespace

Aim quantity(const Expression& expression, const Units& units, double sign) {
  const double unit = has_a_length(expression) ? 1 : degree;
  return [=, &units](const std::vector<double>& x, Eigen::VectorXd* gradient) {
    if (gradient) *gradient = sign * gradient_of(expression, units.layout, x.data());
    return sign * unit * measure(expression, sketch_of(x, units));
  };
}

void climb(Mechanism& mechanism, const Aim& aim, const Budget& budget, int steps, double least_clear) {
  const std::size_t points = mechanism.units().layout.points;
  const Barrier barrier(mechanism.x(), points);
  const Arrangement begin = arrangement_of(mechanism.x(), points);
  const double floor = std::min(least_clear, begin.clear);
  const auto value = [&](const std::vector<double>& x, Eigen::VectorXd* gradient) {
    double sum = aim(x, gradient);
    if (gradient == nullptr) return sum + barrier.value(x);
    Eigen::VectorXd by_shape = Eigen::VectorXd::Zero(gradient->size());
    sum += barrier.value(x, &by_shape);
    *gradient += by_shape;
    return sum;
  };
  double step = first_step;
  Eigen::VectorXd gradient(static_cast<Eigen::Index>(mechanism.x().size()));
  double best = value(mechanism.x(), &gradient);
  for (int k = 0; k < steps && step > shortest_step && !budget.exhausted(); ++k) {
    Eigen::VectorXd way = mechanism.free_part(gradient);
    const double slope = way.norm();
    if (!(slope > 1e-4)) return;
    way *= 1 / slope;
    std::vector<double> x = mechanism.x();
    for (std::size_t i = 0; i < x.size(); ++i) x[i] += step * way[static_cast<Eigen::Index>(i)];
    const std::vector<double> before = mechanism.x();
    bool better = false;
    double reached = best;
    if (mechanism.move_to(x)) {
      const Arrangement arrangement = arrangement_of(mechanism.x(), points);
      reached = value(mechanism.x(), nullptr);
      better = reached > best && arrangement.signs == begin.signs && arrangement.clear >= floor;
      if (!better) mechanism.move_to(before);
    }
    if (!better) {
      step *= 0.35;
      continue;
    }
    const bool little = reached - best < enough;
    best = value(mechanism.x(), &gradient);
    if (little) return;
    step = std::min(1.6 * step, longest_step);
  }
}

void tidy(Mechanism& mechanism, const Budget& budget) {
  climb(mechanism, [](const std::vector<double>&, Eigen::VectorXd* gradient) {
    if (gradient) gradient->setZero();
    return 0.0;
  }, budget, 15, 0);
}

}  // namespace prover::motion
