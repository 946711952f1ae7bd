// What phrases say of lines and positions.
#include "prover/check/reading.hpp"

namespace prover::replay {
namespace {

Position beside(PositionKind kind, PointId a, PointId b, PointId c, PointId d) {
  return {kind, a, b, c, d};
}
Position triangle(PointId a, PointId b, PointId c) {
  return {PositionKind::not_collinear, a, b, c, {}};
}
Position between(PointId a, PointId b, PointId c) {
  return {PositionKind::between, a, b, c, {}};
}

class Writer {
 public:
  explicit Writer(Placement& out) : out_(out) {}

  void line(Points points) { out_.lines.push_back(std::move(points)); }
  void position(const Position& position) { out_.positions.push_back(position); }
  void same_side(PointId a, PointId b, PointId c, PointId d) {
    position(beside(PositionKind::same_side, a, b, c, d));
  }

  void ordered(const Points& p) {
    line(p);
    for (std::size_t i = 1; i + 1 < p.size(); ++i) position(between(p[i - 1], p[i], p[i + 1]));
  }

  // No three corners on a line, and all corners on one side of every side.
  void convex(const Points& p) {
    const std::size_t n = p.size();
    if (n == 3) position(triangle(p[0], p[1], p[2]));
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t k = 3; k < n; ++k) same_side(p[(i + 2) % n], p[(i + k) % n], p[i], p[(i + 1) % n]);
  }

  void inside(PointId p, const Points& corners) {
    const std::size_t n = corners.size();
    convex(corners);
    for (std::size_t i = 0; i < n; ++i) same_side(p, corners[(i + 2) % n], corners[i], corners[(i + 1) % n]);
  }

  void inside_angle(PointId p, PointId a, PointId b, PointId c) {
    same_side(p, a, b, c);
    same_side(p, c, b, a);
  }

  void on_circle(const Points& p, std::size_t from) {  // a line meets a circle in two points at most
    for (std::size_t i = from; i < p.size(); ++i)
      for (std::size_t j = i + 1; j < p.size(); ++j)
        for (std::size_t k = j + 1; k < p.size(); ++k) position(triangle(p[i], p[j], p[k]));
  }

  // Lines ab and cd are different and meet at p: every other point of one is off the other.
  void crossing(PointId p, PointId a, PointId b, PointId c, PointId d) {
    line({p, a, b});
    line({p, c, d});
    for (const PointId x : {a, b})
      for (const PointId y : {c, d})
        if (x != p && y != p) position(triangle(x, p, y));
  }

  void parallel(PointId a, PointId b, PointId c, PointId d) {
    same_side(c, d, a, b);
    same_side(a, b, c, d);
    out_.parallel.push_back({a, b, c, d});
  }

  // Crossing at right angles: when an end of one is an end of the other, the corner is a triangle; and so it is where
  // another named point stands on both.
  void perpendicular(PointId a, PointId b, PointId c, PointId d) {
    for (const auto& [x, y] : {std::pair{a, b}, std::pair{b, a}})
      for (const auto& [z, w] : {std::pair{c, d}, std::pair{d, c}})
        if (x == z) position(triangle(x, y, w));
    out_.two_lines.push_back({a, b, c, d});
  }

  void quadrilateral(const Points& p, bool both_pairs) {
    convex(p);
    parallel(p[0], p[1], p[3], p[2]);
    if (both_pairs) parallel(p[1], p[2], p[0], p[3]);
  }

 private:
  Placement& out_;
};

bool enough(const Phrase& phrase, std::size_t points);

Placement unreadable() {
  Placement nothing;
  nothing.readable = false;
  return nothing;
}

}  // namespace

Placement placement_of(const Phrase& phrase, const Points& place) {
  Placement result;
  Writer say(result);
  Points p;
  for (const PointId point : phrase.points) {
    if (!point.valid() || point.index() >= place.size()) return unreadable();
    p.push_back(place[point.index()]);
  }
  if (!enough(phrase, p.size())) return unreadable();
  switch (phrase.predicate) {
    case Predicate::relation:
      break;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
      say.position(triangle(p[0], p[1], p[2]));
      break;
    case Predicate::line_order:
      say.ordered(p);
      break;
    case Predicate::collinear:
    case Predicate::on_line:
      say.line(p);
      break;
    case Predicate::on_ray:
      say.line(p);
      result.rays.push_back({p[1], p[0], p[2]});
      break;
    case Predicate::on_segment:
    case Predicate::midpoint:
      say.ordered({p[1], p[0], p[2]});
      break;
    case Predicate::diameter:
      say.ordered({p[0], p[2], p[1]});
      break;
    case Predicate::parallel:
      say.parallel(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::perpendicular:
    case Predicate::perpendicular_bisector:
      say.perpendicular(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::meet:
      say.crossing(p[0], p[1], p[2], p[3], p[4]);
      break;
    case Predicate::cross:
      say.crossing(p[0], p[1], p[2], p[3], p[4]);
      say.position(between(p[1], p[0], p[2]));
      say.position(between(p[3], p[0], p[4]));
      break;
    case Predicate::foot:
      say.line({p[0], p[2], p[3]});
      say.position(triangle(p[1], p[2], p[3]));
      break;
    case Predicate::circle:
      say.on_circle(p, 1);
      break;
    case Predicate::circle_cyclic:
      say.convex({p.begin() + 1, p.end()});
      break;
    case Predicate::concyclic:
      say.on_circle(p, 0);
      break;
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::concyclic_cyclic:
      say.convex(p);
      break;
    case Predicate::tangent:
      say.position(triangle(p[0], p[1], p[2]));
      break;
    case Predicate::tangent_circumcircle:  // the circle is a triangle's, and all of it is on one side of the tangent
      say.position(triangle(p[2], p[3], p[4]));
      for (std::size_t i = 2; i < 5; ++i)
        for (std::size_t j = i + 1; j < 5; ++j)
          if (p[i] != p[1] && p[j] != p[1]) say.same_side(p[i], p[j], p[0], p[1]);
      break;
    case Predicate::bisects:
    case Predicate::inside_angle:
      say.inside_angle(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
      say.quadrilateral(p, true);
      break;
    case Predicate::trapezium:
      say.quadrilateral(p, false);
      break;
    case Predicate::kite:  // ac is the perpendicular bisector of bd
      say.position(beside(PositionKind::opposite_sides, p[1], p[3], p[0], p[2]));
      break;
    case Predicate::inside_polygon:  // a polygon with more corners need not be convex; see replay.cpp
      if (p.size() == 4) say.inside(p[0], {p[1], p[2], p[3]});
      result.readable = p.size() == 4;
      break;
    case Predicate::same_side:
      say.same_side(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::opposite_sides:
      say.position(beside(PositionKind::opposite_sides, p[0], p[1], p[2], p[3]));
      break;
    case Predicate::congruent:
    case Predicate::similar:
      say.position(triangle(p[0], p[1], p[2]));
      say.position(triangle(p[3], p[4], p[5]));
      break;
    case Predicate::simple_polygon:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
      result.readable = false;
      break;
  }
  return result;
}

Placement convex_polygon(const Points& corners) {
  Placement result;
  Writer(result).convex(corners);
  return result;
}

Placement inside_angle(PointId p, PointId arm1, PointId vertex, PointId arm2) {
  Placement result;
  Writer(result).inside_angle(p, arm1, vertex, arm2);
  return result;
}

Placement inside_convex_polygon(PointId p, const Points& corners) {
  Placement result;
  Writer(result).inside(p, corners);
  return result;
}

std::vector<Position> named_angles(const Phrase& phrase) {
  std::vector<Position> result;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (const auto* angle = std::get_if<Angle>(&term.quantity))
        if (angle->arm1.valid() && angle->vertex.valid() && angle->arm2.valid())
          result.push_back(triangle(angle->arm1, angle->vertex, angle->arm2));
  return result;
}

namespace {

// How many points each phrase speaks of, at least.
bool enough(const Phrase& phrase, std::size_t points) {
  switch (phrase.predicate) {
    case Predicate::relation:
      return true;
    case Predicate::collinear:
    case Predicate::line_order:
    case Predicate::circle:
    case Predicate::inside_circle:
    case Predicate::outside_circle:
      return points >= 2;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line:
    case Predicate::midpoint:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::diameter:
    case Predicate::tangent:
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::circle_cyclic:
    case Predicate::simple_polygon:
      return points >= 3;
    case Predicate::parallel:
    case Predicate::perpendicular:
    case Predicate::perpendicular_bisector:
    case Predicate::foot:
    case Predicate::bisects:
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite:
    case Predicate::trapezium:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::outside_polygon:
    case Predicate::same_side:
    case Predicate::opposite_sides:
      return points >= 4;
    case Predicate::meet:
    case Predicate::cross:
    case Predicate::tangent_circumcircle:
      return points >= 5;
    case Predicate::congruent:
    case Predicate::similar:
      return points >= 6;
  }
  return false;
}

}  // namespace
}  // namespace prover::replay
