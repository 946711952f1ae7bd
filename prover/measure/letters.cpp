#include "prover/measure/letters.hpp"

#include <algorithm>

namespace prover {

namespace {

bool all_different(std::vector<PointId> points) {
  std::sort(points.begin(), points.end());
  return std::adjacent_find(points.begin(), points.end()) == points.end();
}

LetterCase case_of(const Rule& rule, const std::vector<int>& block) {
  LetterCase made;
  made.point_of = block;
  for (std::size_t v = 0; v < block.size(); ++v) {
    const auto b = static_cast<std::size_t>(block[v]);
    if (made.names.points.size() <= b) made.names.points.resize(b + 1);
    std::string& name = made.names.points[b];
    name += (name.empty() ? "" : "=") + rule.variables.points[v];
  }
  for (const Phrase& phrase : rule.given) made.premises.push_back(renamed(phrase, block));
  made.given = made.premises.size();
  for (const Phrase& phrase : rule.where) made.premises.push_back(renamed(phrase, block));
  for (const Phrase& phrase : rule.then)
    if (Phrase claim = renamed(phrase, block); has_meaning(claim)) made.claims.push_back(std::move(claim));
  return made;
}

}  // namespace

Phrase renamed(Phrase phrase, const std::vector<int>& point_of) {
  const auto rename = [&](PointId& p) {
    if (p.valid()) p = PointId(point_of[p.index()]);
  };
  for (PointId& p : phrase.points) rename(p);
  for (Expression& expression : phrase.relation.expressions)
    for (Term& term : expression.terms) {
      if (auto* angle = std::get_if<Angle>(&term.quantity)) {
        rename(angle->arm1);
        rename(angle->vertex);
        rename(angle->arm2);
      } else if (auto* segment = std::get_if<Segment>(&term.quantity)) {
        rename(segment->a);
        rename(segment->b);
      }
    }
  return phrase;
}

bool has_meaning(const Phrase& phrase) {
  const std::vector<PointId>& p = phrase.points;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms) {
      if (const auto* angle = std::get_if<Angle>(&term.quantity))
        if (!all_different({angle->arm1, angle->vertex, angle->arm2})) return false;
      if (const auto* segment = std::get_if<Segment>(&term.quantity))
        if (segment->a == segment->b) return false;
    }
  switch (phrase.predicate) {
    case Predicate::relation:
      return true;
    case Predicate::parallel:
    case Predicate::perpendicular:
      return p[0] != p[1] && p[2] != p[3] &&
             !((p[0] == p[2] && p[1] == p[3]) || (p[0] == p[3] && p[1] == p[2]));
    case Predicate::congruent:
    case Predicate::similar:
      return all_different({p[0], p[1], p[2]}) && all_different({p[3], p[4], p[5]});
    case Predicate::same_side:
    case Predicate::opposite_sides:
      return p[2] != p[3] && all_different({p[0], p[2], p[3]}) && all_different({p[1], p[2], p[3]});
    case Predicate::tangent_circumcircle:  // the line meets the circle at T alone
      return p[0] != p[1] && all_different({p[2], p[3], p[4]}) && std::count(p.begin() + 2, p.end(), p[0]) == 0;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::line_order:
    case Predicate::collinear:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line:
    case Predicate::meet:
    case Predicate::cross:
    case Predicate::midpoint:
    case Predicate::foot:
    case Predicate::perpendicular_bisector:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::circle:
    case Predicate::circle_cyclic:
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::diameter:
    case Predicate::tangent:
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
      return all_different(p);
  }
  return false;
}

std::vector<LetterCase> letter_cases(const Rule& rule, std::size_t most_shared) {
  const std::size_t n = rule.variables.points.size();
  std::vector<LetterCase> cases;
  std::vector<int> block(n, 0);
  // Every way to put the letters on points, each letter on the point of an earlier one or on the next new point.
  const auto extend = [&](const auto& self, std::size_t v, int blocks, std::size_t shared) -> void {
    if (v == n) {
      LetterCase made = case_of(rule, block);
      if (!made.claims.empty() && std::all_of(made.premises.begin(), made.premises.end(), has_meaning))
        cases.push_back(std::move(made));
      return;
    }
    block[v] = blocks;
    self(self, v + 1, blocks + 1, shared);
    if (shared < most_shared)
      for (int b = 0; b < blocks; ++b) {
        block[v] = b;
        self(self, v + 1, blocks, shared + 1);
      }
  };
  extend(extend, 0, 0, 0);
  return cases;
}

}  // namespace prover
