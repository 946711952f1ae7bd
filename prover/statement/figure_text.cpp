#include "prover/statement/figure_text.hpp"

#include <algorithm>

#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

using Pairs = std::vector<std::pair<PointId, PointId>>;

void polygon_sides(const std::vector<PointId>& p, std::size_t from, Pairs& pairs) {
  const std::size_t n = p.size() - from;
  for (std::size_t i = 0; i < n; ++i) pairs.emplace_back(p[from + i], p[from + (i + 1) % n]);
}

void quantity_pairs(const Quantity& quantity, Pairs& pairs) {
  if (const auto* angle = std::get_if<Angle>(&quantity)) {
    pairs.emplace_back(angle->vertex, angle->arm1);
    pairs.emplace_back(angle->vertex, angle->arm2);
  } else if (const auto* segment = std::get_if<Segment>(&quantity)) {
    pairs.emplace_back(segment->a, segment->b);
  }
}

// The points that a given puts on one line.
std::vector<std::vector<PointId>> collinear_sets(const Phrase& phrase) {
  const auto& p = phrase.points;
  switch (phrase.predicate) {
    case Predicate::line_order:
    case Predicate::collinear:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line:
    case Predicate::midpoint:
    case Predicate::diameter:
      return {p};
    case Predicate::meet:
    case Predicate::cross:
      return {{p[0], p[1], p[2]}, {p[0], p[3], p[4]}};
    case Predicate::foot:
      return {{p[0], p[2], p[3]}};
    case Predicate::relation:
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::parallel:
    case Predicate::perpendicular:
    case Predicate::perpendicular_bisector:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::circle:
    case Predicate::circle_cyclic:
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::tangent:
    case Predicate::tangent_circumcircle:
    case Predicate::bisects:
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::simple_polygon:
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite:
    case Predicate::trapezium:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
    case Predicate::same_side:
    case Predicate::opposite_sides:
    case Predicate::congruent:
    case Predicate::similar:
      return {};
  }
  return {};
}

bool is_convex_kind(Predicate predicate) {
  return predicate == Predicate::convex || predicate == Predicate::regular_polygon ||
         predicate == Predicate::parallelogram || predicate == Predicate::rectangle ||
         predicate == Predicate::rhombus || predicate == Predicate::square || predicate == Predicate::trapezium;
}

std::vector<PointId> sorted(std::vector<PointId> points) {
  std::sort(points.begin(), points.end());
  return points;
}

// An angle that a given names is between 0° and 180°, so its arms are not on one line.
void named_angles(const Phrase& phrase, const FigureText& text, std::vector<Position>& positions) {
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms) {
      const auto* angle = std::get_if<Angle>(&term.quantity);
      if (!angle) continue;
      const bool straight = std::any_of(text.collinear.begin(), text.collinear.end(), [&](const auto& set) {
        auto in = [&](PointId q) { return std::find(set.begin(), set.end(), q) != set.end(); };
        return in(angle->arm1) && in(angle->vertex) && in(angle->arm2);
      });
      if (!straight)
        positions.push_back({PositionKind::not_collinear, angle->arm1, angle->vertex, angle->arm2, {}});
    }
}

}  // namespace

Pairs drawn_pairs(const Phrase& phrase) {
  const auto& p = phrase.points;
  Pairs pairs;
  switch (phrase.predicate) {
    case Predicate::relation:
      for (const Expression& expression : phrase.relation.expressions)
        for (const Term& term : expression.terms) quantity_pairs(term.quantity, pairs);
      break;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::simple_polygon:
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite:
    case Predicate::trapezium:
      polygon_sides(p, 0, pairs);
      break;
    case Predicate::inside_polygon:
    case Predicate::outside_polygon:
      polygon_sides(p, 1, pairs);
      break;
    case Predicate::congruent:
    case Predicate::similar:
      polygon_sides({p[0], p[1], p[2]}, 0, pairs);
      polygon_sides({p[3], p[4], p[5]}, 0, pairs);
      break;
    case Predicate::line_order:
    case Predicate::collinear:
      for (std::size_t i = 0; i + 1 < p.size(); ++i) pairs.emplace_back(p[i], p[i + 1]);
      break;
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line:
    case Predicate::midpoint:
      pairs = {{p[1], p[2]}, {p[0], p[1]}, {p[0], p[2]}};
      break;
    case Predicate::diameter:
      pairs = {{p[0], p[1]}, {p[0], p[2]}, {p[2], p[1]}};
      break;
    case Predicate::parallel:
    case Predicate::perpendicular:
    case Predicate::perpendicular_bisector:
      pairs = {{p[0], p[1]}, {p[2], p[3]}};
      break;
    case Predicate::meet:
    case Predicate::cross:
      pairs = {{p[1], p[2]}, {p[3], p[4]}};
      break;
    case Predicate::foot:
      pairs = {{p[0], p[1]}, {p[2], p[3]}};
      break;
    case Predicate::bisects:
      pairs = {{p[2], p[0]}, {p[2], p[1]}, {p[2], p[3]}};
      break;
    case Predicate::inside_angle:
      pairs = {{p[2], p[1]}, {p[2], p[3]}};
      break;
    case Predicate::same_side:
    case Predicate::opposite_sides:
      pairs = {{p[2], p[3]}};
      break;
    case Predicate::tangent:
    case Predicate::tangent_circumcircle:
      pairs = {{p[0], p[1]}};
      break;
    case Predicate::circle:
    case Predicate::circle_cyclic:
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::inside_circle:
    case Predicate::outside_circle:
      break;
  }
  return pairs;
}

FigureText figure_text(const Statement& statement) {
  FigureText text;
  text.points = statement.names.points.size();
  std::vector<PointId> identity;
  for (std::size_t i = 0; i < text.points; ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  for (const Given& given : statement.givens)
    for (auto& set : collinear_sets(given.phrase)) text.collinear.push_back(std::move(set));
  std::vector<std::vector<PointId>> convex;
  for (const Given& given : statement.givens) {
    const Phrase& phrase = given.phrase;
    const auto& p = phrase.points;
    for (const auto& pair : drawn_pairs(phrase)) text.drawn.push_back(pair);
    for (const Position& position : positions_of(phrase, identity)) text.positions.push_back(position);
    if (phrase.predicate == Predicate::on_ray) text.rays.push_back({p[0], p[1], p[2]});
    if (phrase.predicate == Predicate::parallel) text.parallel.push_back({p[0], p[1], p[2], p[3]});
    if (phrase.predicate == Predicate::parallelogram || phrase.predicate == Predicate::rectangle ||
        phrase.predicate == Predicate::rhombus || phrase.predicate == Predicate::square) {
      text.parallel.push_back({p[0], p[1], p[3], p[2]});
      text.parallel.push_back({p[1], p[2], p[0], p[3]});
    }
    if (phrase.predicate == Predicate::trapezium) text.parallel.push_back({p[0], p[1], p[3], p[2]});
    if (is_convex_kind(phrase.predicate)) convex.push_back(sorted(p));
    named_angles(phrase, text, text.positions);
  }
  // "Inside a polygon" is a statement about sides only where the polygon is convex.
  for (const Given& given : statement.givens) {
    const auto& p = given.phrase.points;
    if (given.phrase.predicate != Predicate::inside_polygon || p.size() < 5) continue;
    const std::vector<PointId> corners(p.begin() + 1, p.end());
    if (std::find(convex.begin(), convex.end(), sorted(corners)) == convex.end()) continue;
    for (std::size_t i = 0; i < corners.size(); ++i)
      text.positions.push_back({PositionKind::same_side, p[0], corners[(i + 2) % corners.size()], corners[i],
                                corners[(i + 1) % corners.size()]});
  }
  for (const Goal& goal : statement.goals) {
    for (const Phrase& phrase : goal.claims)
      for (const auto& pair : drawn_pairs(phrase)) text.drawn.push_back(pair);
    for (const Quantity& quantity : goal.in_terms_of) quantity_pairs(quantity, text.drawn);
  }
  for (const Position& position : text.positions)
    if (position.kind == PositionKind::same_side || position.kind == PositionKind::opposite_sides)
      text.drawn.emplace_back(position.c, position.d);
  return text;
}

}  // namespace prover
