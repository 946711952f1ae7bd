// Different letters of a rule may stand for the same point, unless a phrase forbids it. So each pair of
// letters is made one and the rule is measured again: what it concludes must still hold. A phrase forbids it
// when it would lose its meaning: a segment or line without two ends, an angle without two arms, a flat
// triangle.
#include <algorithm>

#include "prover/rule/rule.hpp"
#include "tests/rules/figures.hpp"

using namespace prover;
using namespace rule_tests;

namespace {

Phrase merged(Phrase phrase, PointId from, PointId to) {
  const auto swap = [&](PointId& p) {
    if (p == from) p = to;
  };
  for (PointId& p : phrase.points) swap(p);
  for (Expression& expression : phrase.relation.expressions)
    for (Term& term : expression.terms) {
      if (auto* angle = std::get_if<Angle>(&term.quantity)) {
        swap(angle->arm1);
        swap(angle->vertex);
        swap(angle->arm2);
      } else if (auto* segment = std::get_if<Segment>(&term.quantity)) {
        swap(segment->a);
        swap(segment->b);
      }
    }
  return phrase;
}

bool all_different(std::vector<PointId> points) {
  std::sort(points.begin(), points.end());
  return std::adjacent_find(points.begin(), points.end()) == points.end();
}

// Whether the phrase still says something after its letters fell together.
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
    case Predicate::tangent_circumcircle:
      return p[0] != p[1] && all_different({p[2], p[3], p[4]});
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

}  // namespace

TEST_CASE("a conclusion holds also where letters of the rule fall together") {
  for (const Rule& rule : standard_catalogue().rules) {
    const std::size_t n = rule.then.empty() ? 0 : rule.variables.points.size();
    for (std::size_t from = 0; from < n; ++from)
      for (std::size_t to = 0; to < n; ++to) {
        if (from == to) continue;
        std::vector<Phrase> premises, conclusions;
        const auto merge = [&](const std::vector<Phrase>& phrases, std::vector<Phrase>& out) {
          for (const Phrase& phrase : phrases) out.push_back(merged(phrase, PointId(from), PointId(to)));
        };
        merge(rule.given, premises);
        merge(rule.where, premises);
        merge(rule.then, conclusions);
        if (!std::all_of(premises.begin(), premises.end(), has_meaning)) continue;
        INFO(rule.id << ", " << rule.variables.points[from] << " put on " << rule.variables.points[to]);
        for (const Sketch& sketch : draw(premises, n, 4).sketches)
          for (const Phrase& conclusion : conclusions)
            if (has_meaning(conclusion)) {
              INFO(describe(conclusion, rule.variables) << " in " << coordinates(rule.variables, sketch));
              CHECK(holds(conclusion, sketch));
            }
      }
  }
}
