// What each predicate asks of a figure. Where a predicate leaves something open (which way round a polygon runs,
// which two sides of an isosceles triangle agree), it has branches.
#include "prover/sketch/clause_builder.hpp"

namespace prover::sketching {

void Builder::parallel_lines(int a, int b, int c, int d) {
  need(parallel(a, b, c, d));
  std::vector<Triple> apart;  // not one and the same line
  if (c != a && c != b) apart.push_back({a, b, c});
  if (d != a && d != b) apart.push_back({a, b, d});
  if (apart.size() == 2) same_turn(apart); else impossible();
}

std::vector<Clause> Builder::build(Predicate predicate) {
  const Builder& p = *this;
  switch (predicate) {
    case Predicate::relation: break;
    case Predicate::triangle: triangle(p[0], p[1], p[2]); break;
    case Predicate::acute:
      triangle(p[0], p[1], p[2]);
      need(Branch{acute_angle(p[0], p[1], p[2]), acute_angle(p[1], p[2], p[0]), acute_angle(p[2], p[0], p[1])});
      break;
    case Predicate::line_order: line_order(points_); break;
    case Predicate::collinear:
      for (std::size_t i = 2; i < count(); ++i) need(collinear(p[0], p[1], p[i]));
      break;
    case Predicate::on_ray: need(turn({{1, p[1], p[0]}, {-1, p[1], p[2]}}, 2 * pi)); break;
    case Predicate::on_segment: need(in_order(p[1], p[0], p[2])); break;
    case Predicate::on_line: need(collinear(p[1], p[2], p[0])); break;
    case Predicate::parallel: parallel_lines(p[0], p[1], p[2], p[3]); break;
    case Predicate::perpendicular: need(perpendicular(p[0], p[1], p[2], p[3])); break;
    case Predicate::meet:
      if (p[0] != p[1] && p[0] != p[2]) need(collinear(p[1], p[2], p[0]));
      if (p[0] != p[3] && p[0] != p[4]) need(collinear(p[3], p[4], p[0]));
      break;
    case Predicate::cross:
      need(in_order(p[1], p[0], p[2]));
      need(in_order(p[3], p[0], p[4]));
      break;
    case Predicate::midpoint: need(balanced({{2, p[0]}, {-1, p[1]}, {-1, p[2]}}, p[1], p[2])); break;
    case Predicate::foot:
      if (p[0] != p[2] && p[0] != p[3]) need(collinear(p[2], p[3], p[0]));
      need(perpendicular(p[1], p[0], p[2], p[3]));
      break;
    case Predicate::perpendicular_bisector:
      for (const int end : {p[0], p[1]}) {
        // The midpoint of LM may itself be one of the two; it is as far from L as from M too.
        need(equal_lengths(end, p[2], end, p[3]));
      }
      break;
    case Predicate::isosceles:
      choice({{equal_lengths(p[0], p[1], p[0], p[2])},
              {equal_lengths(p[1], p[0], p[1], p[2])},
              {equal_lengths(p[2], p[0], p[2], p[1])}});
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::isosceles_at: isosceles_at(p[0], p[1], p[2]); break;
    case Predicate::equilateral: regular({p[0], p[1], p[2]}); break;
    case Predicate::right_angled:
      need(perpendicular(p[0], p[1], p[0], p[2]));
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::circle: on_one_circle(p[0], rest(1)); break;
    case Predicate::circle_cyclic:
      on_one_circle(p[0], rest(1));
      if (count() > 4) convex(rest(1));
      break;
    case Predicate::concyclic: on_some_circle(points_); break;
    case Predicate::concyclic_cyclic:
      on_some_circle(points_);
      if (count() > 3) convex(points_);
      break;
    case Predicate::diameter: need(balanced({{2, p[2]}, {-1, p[0]}, {-1, p[1]}}, p[0], p[1])); break;
    case Predicate::tangent: {
      need(perpendicular(p[0], p[1], p[2], p[1]));
      const auto centre = static_cast<std::size_t>(p[2]);
      if (centre < layout_.on_circle.size()) {
        const PointId known = layout_.on_circle[centre];
        if (known.valid() && known.value != p[1]) need(equal_lengths(p[2], p[1], p[2], known.value));
      }
      break;
    }
    case Predicate::tangent_circumcircle: tangent_to_circumcircle(p[0], p[1], {p[2], p[3], p[4]}); break;
    case Predicate::bisects:
      // Twice the direction of BD is that of BA and BC together; the acute half keeps D off the opposite ray. A
      // straight angle may be bisected too, hence the allowance.
      need(Branch{turn({{2, p[2], p[0]}, {-1, p[2], p[1]}, {-1, p[2], p[3]}}, 2 * pi),
                  acute_angle(p[0], p[2], p[1], 1e-3), acute_angle(p[0], p[2], p[3], 1e-3)});
      break;
    case Predicate::regular_polygon: regular(points_); break;
    case Predicate::convex: convex(points_); break;
    case Predicate::simple_polygon: simple(points_); break;
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
      if (predicate == Predicate::square) {
        regular(points_);
        break;
      }
      need(balanced({{1, p[0]}, {-1, p[1]}, {1, p[2]}, {-1, p[3]}}, p[0], p[2]));
      if (predicate == Predicate::rectangle) need(perpendicular(p[0], p[1], p[1], p[2]));
      if (predicate == Predicate::rhombus) need(equal_lengths(p[0], p[1], p[1], p[2]));
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::kite:
      need(equal_lengths(p[0], p[1], p[0], p[3]));
      need(equal_lengths(p[2], p[1], p[2], p[3]));
      convex(points_);
      break;
    case Predicate::trapezium:
      need(turn({{1, p[0], p[1]}, {-1, p[3], p[2]}}, 2 * pi));
      same_turn({{p[0], p[1], p[2]}, {p[0], p[1], p[3]}});
      break;
    case Predicate::inside_polygon: inside_polygon(p[0], rest(1)); break;
    case Predicate::inside_angle:
      same_turn({{p[2], p[1], p[0]}, {p[2], p[0], p[3]}, {p[2], p[1], p[3]}});
      break;
    case Predicate::inside_circle: against_circle(p[0], p[1], 1); break;
    case Predicate::outside_polygon: outside_polygon(p[0], rest(1)); break;
    case Predicate::outside_circle: against_circle(p[0], p[1], -1); break;
    case Predicate::same_side: same_turn({{p[2], p[3], p[0]}, {p[2], p[3], p[1]}}); break;
    case Predicate::opposite_sides: same_turn({{p[2], p[3], p[0]}, {p[3], p[2], p[1]}}); break;
    case Predicate::congruent:
      for (std::size_t i = 0; i < 3; ++i)
        need(equal_lengths(p[i], p[(i + 1) % 3], p[3 + i], p[3 + (i + 1) % 3]));
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::similar:
      for (std::size_t i = 0; i < 3; ++i)
        need(equal_angles({p[(i + 2) % 3], p[i], p[(i + 1) % 3]}, {p[3 + (i + 2) % 3], p[3 + i], p[3 + (i + 1) % 3]}));
      triangle(p[0], p[1], p[2]);
      triangle(p[3], p[4], p[5]);
      break;
  }
  return std::move(clauses_);
}

namespace {

// The fewest points a predicate can speak of; the parser keeps to it, a phrase made elsewhere may not.
std::size_t least_points(Predicate predicate) {
  switch (predicate) {
    case Predicate::relation: return 0;
    case Predicate::line_order:  // two points that are joined ask nothing of a figure
    case Predicate::circle:
    case Predicate::circle_cyclic:
    case Predicate::inside_circle:
    case Predicate::outside_circle: return 2;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::collinear:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line:
    case Predicate::midpoint:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::diameter:
    case Predicate::tangent:
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::simple_polygon: return 3;
    case Predicate::parallel:
    case Predicate::perpendicular:
    case Predicate::foot:
    case Predicate::perpendicular_bisector:
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
    case Predicate::opposite_sides: return 4;
    case Predicate::meet:
    case Predicate::cross:
    case Predicate::tangent_circumcircle: return 5;
    case Predicate::congruent:
    case Predicate::similar: return 6;
  }
  return 0;
}

}  // namespace

std::vector<Clause> clauses_of(const Phrase& phrase, const Layout& layout) {
  if (phrase.predicate == Predicate::relation) return clauses_of(phrase.relation, layout);
  bool known = phrase.points.size() >= least_points(phrase.predicate);
  for (const PointId p : phrase.points) known = known && p.valid() && p.index() < layout.points;
  if (!known) return {Clause{}};
  return Builder(phrase, layout).build(phrase.predicate);
}

}  // namespace prover::sketching
