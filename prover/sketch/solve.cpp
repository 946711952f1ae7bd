// The two phases: find (equations, positions and a little room between points), then polish (equations alone).
#include "prover/sketch/solve.hpp"

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <algorithm>
#include <cmath>

#include "prover/sketch/plane.hpp"

namespace prover::sketching {
namespace {

constexpr double room = 0.12;          // points nearer than this push each other away (a figure is about 2 wide)
constexpr double room_weight = 0.5;
constexpr double exact = 1e-13;

// The sum of squares and its normal equations at a point.
class Normal {
 public:
  Normal(const System& system, double size)
      : system_(system), gradient_(system.layout().variables()), room_(room * size) {
    const auto n = static_cast<Eigen::Index>(system.layout().variables());
    matrix.resize(n, n);
    slope.resize(n);
  }

  Eigen::MatrixXd matrix;  // lower triangle
  Eigen::VectorXd slope;
  double worst_equation = 0;
  double worst_position = 0;

  // `margins`: by how much of their margin positions are to hold; negative leaves positions out.
  double build(const double* x, double margins, bool derivatives) {
    if (derivatives) {
      matrix.setZero();
      slope.setZero();
    }
    double sum = 0;
    worst_equation = worst_position = 0;
    for (const System::Row& row : system_.equations()) {
      const double value = evaluate(*row.constraint, system_.layout(), x, derivatives ? &gradient_ : nullptr);
      worst_equation = std::max(worst_equation, std::fabs(value));
      sum += add(value, derivatives);
    }
    if (margins < 0) return sum;
    for (const System::Row& row : system_.positions()) {
      const double shortfall = margins * row.margin - evaluate(*row.constraint, system_.layout(), x);
      if (shortfall <= 0) continue;
      worst_position = std::max(worst_position, shortfall);
      if (derivatives) {
        evaluate(*row.constraint, system_.layout(), x, &gradient_);
        gradient_.scale(-1);
      }
      sum += add(shortfall, derivatives);
    }
    return sum + keep_apart(x, margins * room_, derivatives);
  }

 private:
  const System& system_;
  Gradient gradient_;
  double room_;

  double add(double value, bool derivatives) {
    if (derivatives) {
      for (const int i : gradient_.touched()) {
        if (system_.is_pinned(i)) continue;
        const double by = gradient_[i];
        slope[i] += by * value;
        for (const int j : gradient_.touched())
          if (j <= i && !system_.is_pinned(j)) matrix(i, j) += by * gradient_[j];
      }
    }
    return value * value;
  }

  double keep_apart(const double* x, double least, bool derivatives) {
    double sum = 0;
    const int n = static_cast<int>(system_.layout().points);
    for (int a = 0; a < n; ++a)
      for (int b = a + 1; b < n; ++b) {
        const Vector v{x[2 * b] - x[2 * a], x[2 * b + 1] - x[2 * a + 1]};
        const double square = dot(v, v);
        if (square >= least * least) continue;
        const double length = std::max(std::sqrt(square), 1e-9);
        const double weight = room_weight / least;
        if (derivatives) {
          gradient_.clear();
          gradient_.add_point(a, weight * v.x / length, weight * v.y / length);
          gradient_.add_point(b, -weight * v.x / length, -weight * v.y / length);
        }
        sum += add(weight * (least - length), derivatives);
      }
    return sum;
  }
};

double spread(const System& system, const std::vector<double>& x) {
  double low[2] = {x[0], x[1]}, high[2] = {x[0], x[1]};
  for (std::size_t i = 0; i < 2 * system.layout().points; ++i) {
    low[i % 2] = std::min(low[i % 2], x[i]);
    high[i % 2] = std::max(high[i % 2], x[i]);
  }
  return std::max({high[0] - low[0], high[1] - low[1], 1e-6});
}

struct Descent {
  int rounds = 60;
  double margins = 1;      // see Normal::build
  double damping = 1e-3;   // the first, relative
  double good_enough = 0;  // stop when equations and positions are this near
};

// Levenberg–Marquardt; returns the largest equation left.
double descend(Normal& normal, std::vector<double>& x, const Descent& how, const Budget& budget) {
  const auto n = static_cast<Eigen::Index>(x.size());
  double cost = normal.build(x.data(), how.margins, true);
  double damping = how.damping * std::max(normal.matrix.diagonal().maxCoeff(), 1e-9), growth = 2;
  Eigen::VectorXd step(n);
  Eigen::LLT<Eigen::MatrixXd> factors(n);
  std::vector<double> trial(x.size());
  double checkpoint = cost;
  for (int round = 0; round < how.rounds; ++round) {
    if (normal.worst_equation <= how.good_enough && normal.worst_position <= how.good_enough) break;
    if (round % 8 == 7) {
      if (budget.exhausted() || cost > 0.5 * checkpoint) break;  // no longer getting anywhere
      checkpoint = cost;
    }
    Eigen::MatrixXd& matrix = normal.matrix;
    matrix.diagonal().array() += damping;
    factors.compute(matrix);
    matrix.diagonal().array() -= damping;
    step = -normal.slope;
    factors.solveInPlace(step);
    if (factors.info() != Eigen::Success || !step.allFinite()) {
      damping *= growth;
      growth *= 2;
      continue;
    }
    for (Eigen::Index i = 0; i < n; ++i) trial[static_cast<std::size_t>(i)] = x[static_cast<std::size_t>(i)] + step[i];
    const double predicted = step.dot(damping * step - normal.slope);
    const double equation = normal.worst_equation, position = normal.worst_position;
    const double next = normal.build(trial.data(), how.margins, false);
    const double gain = (cost - next) / std::max(predicted, 1e-300);
    if (next < cost) {
      x.swap(trial);
      cost = normal.build(x.data(), how.margins, true);
      const double bend = 2 * gain - 1;
      damping *= std::max(1.0 / 5, 1 - bend * bend * bend);
      growth = 2;
    } else {
      normal.worst_equation = equation;
      normal.worst_position = position;
      if (step.squaredNorm() < 1e-28) break;
      damping *= growth;
      growth *= 2;
    }
  }
  return normal.worst_equation;
}

// Newton's method on the equations alone. The damping is as small as the factors bear: it only keeps the step
// orthogonal to what is free, and since the equations are evaluated afresh it costs no accuracy. Stops when the
// equations get no smaller.
double polish(Normal& normal, std::vector<double>& x) {
  const auto n = static_cast<Eigen::Index>(x.size());
  Eigen::LLT<Eigen::MatrixXd> factors(n);
  Eigen::VectorXd step(n);
  std::vector<double> best = x;
  normal.build(x.data(), -1, true);
  double least = normal.worst_equation;
  for (int round = 0; round < 40 && least > exact; ++round) {
    normal.matrix.diagonal().array() += 1e-11 * std::max(normal.matrix.diagonal().maxCoeff(), 1e-9);
    factors.compute(normal.matrix);
    step = -normal.slope;
    factors.solveInPlace(step);
    if (factors.info() != Eigen::Success || !step.allFinite()) break;
    for (Eigen::Index i = 0; i < n; ++i) x[static_cast<std::size_t>(i)] += step[i];
    normal.build(x.data(), -1, true);
    if (normal.worst_equation >= least) break;
    const bool slow = normal.worst_equation > 0.5 * least && normal.worst_equation < 1e-10;
    least = normal.worst_equation;
    best = x;
    if (slow) break;
  }
  x = best;
  return least;
}

}  // namespace

Solution solve(System& system, std::vector<double>& x, double margins, const Budget& budget) {
  system.choose(x.data());
  Normal normal(system, spread(system, x) / 2);
  double left = descend(normal, x, {.rounds = 48, .margins = margins, .good_enough = 1e-4}, budget);
  if (left > 0.5) return {false, left};
  if (left > 1e-4) {
    // Perhaps only the margins, or a branch that fitted the start, stand in the way.
    system.choose(x.data());
    left = descend(normal, x, {.rounds = 64, .margins = 0.1 * margins, .good_enough = 1e-4}, budget);
    if (left > 0.05) return {false, left};
  }
  left = polish(normal, x);
  return {left < 1e-9, left};
}

}  // namespace prover::sketching
