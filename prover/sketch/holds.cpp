// What a finished sketch says: the same constraints that made it, read off.
#include <cmath>
#include <limits>

#include "prover/sketch/arrangement.hpp"
#include "prover/sketch/constraint.hpp"
#include "prover/sketch/plane.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover {
namespace {

using namespace sketching;

Vector at(const Sketch& sketch, PointId p) { return {sketch.points[p.index()][0], sketch.points[p.index()][1]}; }

bool known(const Sketch& sketch, PointId p) { return p.valid() && p.index() < sketch.points.size(); }

}  // namespace

bool holds(const Phrase& phrase, const Sketch& sketch, double tolerance) {
  Layout layout;
  layout.points = sketch.points.size();
  layout.on_circle = sketch.on_circle;
  std::vector<double> x;
  for (const auto& point : sketch.points) x.insert(x.end(), point.begin(), point.end());
  for (const auto& [name, value] : sketch.numbers) {
    layout.numbers.push_back(name);
    layout.units.push_back(1);
    x.push_back(value);
  }
  for (const Clause& clause : clauses_of(phrase, layout)) {
    if (clause.steers) continue;
    bool any = false;
    for (const Branch& branch : clause.branches) {
      bool all = true;
      for (const Constraint& constraint : branch) {
        const double value = evaluate(constraint, layout, x.data());
        all = all && (constraint.equation ? std::fabs(value) <= tolerance : value > tolerance);
      }
      any = any || all;
    }
    if (!any) return false;
  }
  return true;
}

double measure(const Angle& angle, const Sketch& sketch) {
  if (!known(sketch, angle.arm1) || !known(sketch, angle.vertex) || !known(sketch, angle.arm2))
    return std::numeric_limits<double>::quiet_NaN();
  const Vector u = at(sketch, angle.arm1) - at(sketch, angle.vertex);
  const Vector v = at(sketch, angle.arm2) - at(sketch, angle.vertex);
  double size = direction({dot(u, v), std::fabs(cross(u, v))}) / degree;
  if (angle.exterior) size = 180 - size;
  return angle.reflex ? 360 - size : size;
}

double measure(const Expression& expression, const Sketch& sketch) {
  double sum = 0;
  for (const Term& term : expression.terms) {
    double value = std::numeric_limits<double>::quiet_NaN();
    if (std::holds_alternative<One>(term.quantity)) value = 1;
    if (const auto* angle = std::get_if<Angle>(&term.quantity)) value = measure(*angle, sketch);
    if (const auto* segment = std::get_if<Segment>(&term.quantity))
      if (known(sketch, segment->a) && known(sketch, segment->b))
        value = norm(at(sketch, segment->b) - at(sketch, segment->a));
    if (const auto* number = std::get_if<Number>(&term.quantity))
      if (const auto found = sketch.numbers.find(number->name); found != sketch.numbers.end()) value = found->second;
    sum += term.coefficient.to_double() * value;
  }
  return sum;
}

int orientation(const Sketch& sketch, PointId a, PointId b, PointId c) {
  const double turn = clearance(at(sketch, a), at(sketch, b), at(sketch, c));
  return turn > collinear_below ? 1 : turn < -collinear_below ? -1 : 0;
}

bool between(const Sketch& sketch, PointId a, PointId b, PointId c) {
  return a != b && b != c && a != c && orientation(sketch, a, b, c) == 0 &&
         dot(at(sketch, a) - at(sketch, b), at(sketch, c) - at(sketch, b)) < 0;
}

}  // namespace prover
