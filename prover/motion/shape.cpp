#include "prover/motion/shape.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "prover/sketch/arrangement.hpp"
#include "prover/sketch/plane.hpp"

namespace prover::motion {

using namespace sketching;

namespace {

constexpr double weight = 0.5;  // a radian of what a motion is after, by a barrier at about half the comfort

// t - 1 - log t for t < 1: 0 and level at 1.
double barrier(double t, double& slope) {
  if (t >= 1) {
    slope = 0;
    return 0;
  }
  t = std::max(t, 1e-12);
  slope = -weight * (1 - 1 / t);
  return -weight * (t - 1 - std::log(t));
}

Vector at(const std::vector<double>& x, int p) { return {x[2 * static_cast<std::size_t>(p)], x[2 * static_cast<std::size_t>(p) + 1]}; }

}  // namespace

double clearness(const Sketch& figure) {
  std::vector<double> x;
  for (const auto& point : figure.points) x.insert(x.end(), point.begin(), point.end());
  return arrangement_of(x, figure.points.size()).clear;
}

Barrier::Barrier(const std::vector<double>& x, std::size_t points) : points_(points) {
  const auto n = static_cast<int>(points);
  // Many points leave less room for each.
  comfort_ = 0.3 * std::min(1.0, 8.0 / std::max(1, n));
  double diameter = 0;
  for (int a = 0; a < n; ++a)
    for (int b = a + 1; b < n; ++b) {
      diameter = std::max(diameter, norm(at(x, b) - at(x, a)));
      for (int c = b + 1; c < n; ++c) {
        const double turn = clearance(at(x, a), at(x, b), at(x, c));
        if (std::fabs(turn) > 1e-6) triples_.push_back({a, b, c, turn < 0 ? -1.0 : 1.0});
      }
    }
  distance_ = 0.6 * comfort_ * diameter;
}

double Barrier::value(const std::vector<double>& x, Eigen::VectorXd* gradient) const {
  double sum = 0, slope = 0;
  const auto push = [&](int p, Vector v) {
    (*gradient)[2 * p] += v.x;
    (*gradient)[2 * p + 1] += v.y;
  };
  for (const Triple& t : triples_) {
    const Vector corners[3] = {at(x, t.a), at(x, t.b), at(x, t.c)};
    const int names[3] = {t.a, t.b, t.c};
    // The vertex of the smallest angle is opposite the shortest side.
    int vertex = 0;
    double shortest = std::numeric_limits<double>::infinity();
    for (int k = 0; k < 3; ++k) {
      const Vector side = corners[(k + 2) % 3] - corners[(k + 1) % 3];
      if (dot(side, side) < shortest) {
        shortest = dot(side, side);
        vertex = k;
      }
    }
    const int first = (vertex + 1) % 3, second = (vertex + 2) % 3;
    const Vector u = corners[first] - corners[vertex], v = corners[second] - corners[vertex];
    const double uu = std::max(dot(u, u), 1e-24), vv = std::max(dot(v, v), 1e-24);
    const double by = 1 / std::sqrt(uu * vv), sine = t.sign * cross(u, v) * by, cosine = dot(u, v) * by;
    sum += barrier(sine / comfort_, slope);
    if (gradient == nullptr || slope == 0) continue;
    // d sine = cosine · (d direction of v - d direction of u)
    const double factor = slope / comfort_ * t.sign * cosine;
    const Vector dv = (factor / vv) * left_of(v), du = (-factor / uu) * left_of(u);
    push(names[second], dv);
    push(names[first], du);
    push(names[vertex], -1 * (dv + du));
  }
  const auto n = static_cast<int>(points_);
  for (int a = 0; a < n; ++a)
    for (int b = a + 1; b < n; ++b) {
      const Vector v = at(x, b) - at(x, a);
      const double length = std::max(norm(v), 1e-12);
      sum += barrier(length / distance_, slope);
      if (gradient == nullptr || slope == 0) continue;
      const Vector by = (slope / distance_ / length) * v;
      push(b, by);
      push(a, -1 * by);
    }
  return sum;
}

}  // namespace prover::motion
