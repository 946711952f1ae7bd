#include "prover/evidence/failing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <vector>

#include "prover/sketch/plane.hpp"

namespace prover {

namespace {

using namespace sketching;

class Teller {
 public:
  Teller(const Sketch& figure, const Names& names) : figure_(figure), names_(names) {}

  std::string lengths(PointId a, PointId b, PointId c, PointId d) const {
    return fmt::format("{} = {}, {} = {}", segment(a, b), number(distance(a, b)), segment(c, d), number(distance(c, d)));
  }
  std::string angles(const Angle& one, const Angle& other) const {
    return fmt::format("{} = {}°, {} = {}°", describe(one, names_), number(measure(one, figure_)), describe(other, names_),
                       number(measure(other, figure_)));
  }
  // Lines that should be parallel, or at right angles.
  std::string lines(PointId a, PointId b, PointId c, PointId d, const char* relation) const {
    const Vector u = at(b) - at(a), v = at(d) - at(c);
    double angle = direction({std::fabs(dot(u, v)), std::fabs(cross(u, v))}) / degree;
    return fmt::format("an angle of {}° between {} and {}, which are not {}", number(angle), segment(a, b), segment(c, d), relation);
  }
  std::string beside_line(PointId p, PointId a, PointId b) const {
    const double off = std::fabs(cross(at(b) - at(a), at(p) - at(a))) / std::max(distance(a, b), 1e-12);
    return fmt::format("{} at a distance of {} from line {}, where {} = {}", name(p), number(off), segment(a, b), segment(a, b),
                       number(distance(a, b)));
  }
  // Of the circle through the first three, how far the others are from it.
  std::string beside_circle(const std::vector<PointId>& p) const {
    const Vector u = at(p[1]) - at(p[0]), v = at(p[2]) - at(p[0]);
    const double det = 2 * cross(u, v);
    if (std::fabs(det) < 1e-9) return "";
    const Vector centre = at(p[0]) + (1 / det) * Vector{v.y * dot(u, u) - u.y * dot(v, v), u.x * dot(v, v) - v.x * dot(u, u)};
    std::size_t worst = 3;
    const double radius = norm(at(p[0]) - centre);
    const auto off = [&](std::size_t k) { return std::fabs(norm(at(p[k]) - centre) - radius); };
    for (std::size_t k = 3; k < p.size(); ++k)
      if (off(k) > off(worst)) worst = k;
    return fmt::format("the circle through {}, {} and {} has radius {}, and {} is {} from its centre", name(p[0]), name(p[1]),
                       name(p[2]), number(radius), name(p[worst]), number(norm(at(p[worst]) - centre)));
  }
  std::string quantity(const Expression& expression) const {
    const bool angle = std::any_of(expression.terms.begin(), expression.terms.end(),
                                   [](const Term& term) { return std::holds_alternative<Angle>(term.quantity); });
    return fmt::format("{} = {}{}", describe(expression, names_), number(measure(expression, figure_)), angle ? "°" : "");
  }
  static std::string number(double value) {
    std::string text = fmt::format("{:.1f}", value);
    if (text.ends_with(".0")) text.resize(text.size() - 2);
    return text == "-0" ? "0" : text;
  }
  double distance(PointId a, PointId b) const { return norm(at(b) - at(a)); }

 private:
  const Sketch& figure_;
  const Names& names_;

  Vector at(PointId p) const { return {figure_.points[p.index()][0], figure_.points[p.index()][1]}; }
  const std::string& name(PointId p) const { return names_.of(p); }
  std::string segment(PointId a, PointId b) const { return name(a) + name(b); }
};

bool is_number(const Expression& expression) {
  return std::all_of(expression.terms.begin(), expression.terms.end(),
                     [](const Term& term) { return std::holds_alternative<One>(term.quantity); });
}

// Each quantity that is compared, once; numbers stand in the claim already.
std::string relation(const Relation& relation, const Teller& tell) {
  std::string text;
  for (const Expression& expression : relation.expressions) {
    if (is_number(expression)) continue;
    text += (text.empty() ? "" : ", ") + tell.quantity(expression);
  }
  return text;
}

// Of the three pairs of sides, or angles, the one that differs most.
std::string corresponding(const std::vector<PointId>& p, bool sides, const Sketch& figure, const Teller& tell) {
  std::string text;
  double widest = -1;
  for (std::size_t i = 0; i < 3; ++i) {
    const std::size_t k = (i + 1) % 3, l = (i + 2) % 3;
    const Angle one{p[l], p[i], p[k]}, other{p[3 + l], p[3 + i], p[3 + k]};
    const double apart = sides ? std::fabs(tell.distance(p[i], p[k]) - tell.distance(p[3 + i], p[3 + k]))
                               : std::fabs(measure(one, figure) - measure(other, figure));
    if (apart <= widest) continue;
    widest = apart;
    text = sides ? tell.lengths(p[i], p[k], p[3 + i], p[3 + k]) : tell.angles(one, other);
  }
  return text;
}

}  // namespace

std::string how_it_fails(const Phrase& claim, const Sketch& figure, const Names& names) {
  const Teller tell(figure, names);
  const auto& p = claim.points;
  switch (claim.predicate) {
    case Predicate::relation: return relation(claim.relation, tell);
    case Predicate::parallel: return tell.lines(p[0], p[1], p[2], p[3], "parallel");
    case Predicate::perpendicular: return tell.lines(p[0], p[1], p[2], p[3], "perpendicular");
    case Predicate::collinear:
    case Predicate::line_order:
      if (p.size() >= 3) return tell.beside_line(p[2], p[0], p[1]);
      return "";
    case Predicate::on_line: return tell.beside_line(p[0], p[1], p[2]);
    case Predicate::midpoint: return tell.lengths(p[0], p[1], p[0], p[2]);
    case Predicate::isosceles_at: return tell.lengths(p[0], p[1], p[0], p[2]);
    case Predicate::bisects: return tell.angles({p[1], p[2], p[0]}, {p[0], p[2], p[3]});
    case Predicate::right_angled: return tell.quantity({{Term{1, Angle{p[1], p[0], p[2]}, {}}}, {}});
    case Predicate::equilateral:
    case Predicate::isosceles:
      return tell.lengths(p[0], p[1], p[1], p[2]) + ", " +
             tell.quantity({{Term{1, Segment{p[0], p[2]}, {}}}, {}});
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
      if (p.size() > 3) return tell.beside_circle(p);
      return "";
    case Predicate::congruent: return corresponding(p, true, figure, tell);
    case Predicate::similar: return corresponding(p, false, figure, tell);
    case Predicate::parallelogram: return tell.lengths(p[0], p[1], p[3], p[2]) + "; " + tell.lengths(p[1], p[2], p[0], p[3]);
    case Predicate::rectangle: return tell.quantity({{Term{1, Angle{p[0], p[1], p[2]}, {}}}, {}});
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite: return tell.lengths(p[0], p[1], p[1], p[2]) + "; " + tell.lengths(p[2], p[3], p[3], p[0]);
    case Predicate::trapezium: return tell.lines(p[0], p[1], p[3], p[2], "parallel");
    case Predicate::perpendicular_bisector: return tell.lengths(p[0], p[2], p[0], p[3]) + "; " + tell.lengths(p[1], p[2], p[1], p[3]);
    case Predicate::foot: return tell.lines(p[1], p[0], p[2], p[3], "perpendicular");
    case Predicate::tangent: return tell.lines(p[0], p[1], p[2], p[1], "perpendicular");
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::meet:
    case Predicate::cross:
    case Predicate::circle:
    case Predicate::circle_cyclic:
    case Predicate::diameter:
    case Predicate::tangent_circumcircle:
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::simple_polygon:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
    case Predicate::same_side:
    case Predicate::opposite_sides: return "";  // the figure shows it
  }
  return "";
}

}  // namespace prover
