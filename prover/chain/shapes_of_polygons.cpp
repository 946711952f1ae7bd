#include <set>

#include "prover/chain/offer_instance.hpp"
#include "prover/chain/shapes.hpp"
#include "prover/figure/figure_graph.hpp"

namespace prover {

namespace {

using Corners = std::vector<PointId>;

// The polygons that sentences name, and whether they say that it does not cross itself.
std::vector<Corners> named_polygons(const Statement& statement) {
  std::vector<Corners> named;
  for (const Given& given : statement.givens) {
    const Phrase& phrase = given.phrase;
    const bool polygon = phrase.predicate == Predicate::convex || phrase.predicate == Predicate::simple_polygon ||
                         phrase.predicate == Predicate::kite || phrase.predicate == Predicate::concyclic_cyclic ||
                         phrase.predicate == Predicate::regular_polygon ||
                         phrase.predicate == Predicate::parallelogram || phrase.predicate == Predicate::rectangle ||
                         phrase.predicate == Predicate::rhombus || phrase.predicate == Predicate::square ||
                         phrase.predicate == Predicate::trapezium;
    if (polygon && phrase.points.size() >= 4) named.push_back(phrase.points);
  }
  return named;
}

// The angle sum of a polygon whose corners turn as the figure is known to show. A corner turns the other way
// when its neighbours' neighbour lies on the other side; with at most two such corners the inside is certain,
// since a turn is less than 180° and the turns make 360° (Meister's rule for simple polygons, from memory).
bool offer_sum(RuleId rule, const Rational& cost, const Corners& p, bool convex_only, Knowledge& knowledge) {
  const Arrangement& figure = knowledge.arrangement;
  const std::size_t n = p.size();
  for (std::size_t i = 0; i < n; ++i)
    if (!figure.line(p[i], p[(i + 1) % n]).valid() ||
        figure.line(p[i], p[(i + 1) % n]) == figure.line(p[(i + 1) % n], p[(i + 2) % n]))
      return false;
  ShapeInstance shape(rule, cost, p, knowledge);
  std::vector<bool> turns(n, true);  // relative to corner 1
  for (std::size_t i = 1; i < n; ++i) {
    const PointId a = p[i - 1], b = p[i], c = p[(i + 1) % n], d = p[(i + 2) % n];
    const Position same{PositionKind::same_side, a, d, b, c}, other{PositionKind::opposite_sides, a, d, b, c};
    if (a == d || figure.known(same)) {
      turns[(i + 1) % n] = turns[i];
      if (a != d) shape.need(same);
    } else if (figure.known(other) && !convex_only) {
      turns[(i + 1) % n] = !turns[i];
      shape.need(other);
    } else {
      return false;
    }
  }
  std::size_t reflex = 0;
  for (const bool t : turns) reflex += t ? 0 : 1;
  const bool flip = 2 * reflex > n;
  if (flip) reflex = n - reflex;
  if (reflex > 2 || (convex_only && reflex > 0)) return false;
  if (reflex == 0)  // convex: every other corner on one side of every side
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t k = 3; k < n; ++k) {
        const Position side{PositionKind::same_side, p[(i + 2) % n], p[(i + k) % n], p[i], p[(i + 1) % n]};
        if (!figure.known(side)) return false;
        shape.need(side);
      }
  Form sum = Form::number(-180 * (static_cast<std::int64_t>(n) - 2));
  for (std::size_t i = 0; i < n; ++i) {
    const Form angle = shape.angle(p[(i + n - 1) % n], p[i], p[(i + 1) % n]);
    if (turns[i] != flip)
      sum.add(angle);
    else
      sum.add(Form::number(360)).add(angle, -1);
  }
  shape.conclude(std::move(sum));
  shape.offer();
  return true;
}

}  // namespace

void offer_polygon_sums(RuleId quadrilateral, RuleId polygon, const Catalogue& catalogue,
                        const std::vector<bool>& allowed, const Statement& statement, Knowledge& knowledge) {
  auto may = [&](RuleId rule) { return rule.valid() && allowed[rule.index()]; };
  auto offer = [&](const Corners& corners, bool convex_only) {
    const RuleId rule = corners.size() == 4 && may(quadrilateral) ? quadrilateral : polygon;
    if (may(rule)) offer_sum(rule, catalogue[rule].cost, corners, convex_only, knowledge);
  };
  for (const Corners& corners : named_polygons(statement)) offer(corners, false);
  if (!may(quadrilateral) && !may(polygon)) return;
  // Polygons that a reader sees: the faces of a drawn figure.
  const auto& views = knowledge.arrangement.views();
  if (!views.empty() && views[0].size() <= 40)
    for (const Corners& face : FigureGraph(knowledge.arrangement).faces(views[0]))
      if (face.size() >= 4) offer(face, true);
  // Convex quadrilaterals whose sides are drawn, with the least corner first.
  const Arrangement& figure = knowledge.arrangement;
  const auto n = static_cast<std::int64_t>(figure.point_count());
  if (n > 40) return;  // large figures: only those that sentences name
  for (std::int64_t i = 0; i < n; ++i)
    for (std::int64_t j = i + 1; j < n; ++j) {
      const PointId a(i), b(j);
      if (!figure.line(a, b).valid()) continue;
      for (std::int64_t k = i + 1; k < n; ++k) {
        const PointId c(k);
        if (k == j || !figure.line(b, c).valid()) continue;
        for (std::int64_t l = j + 1; l < n; ++l) {
          const PointId d(l);
          if (l == k || !figure.line(c, d).valid() || !figure.line(d, a).valid()) continue;
          if (!figure.known({PositionKind::same_side, c, d, a, b}) ||
              !figure.known({PositionKind::same_side, a, b, c, d}))
            continue;
          offer({a, b, c, d}, true);
        }
      }
    }
}

void offer_regular_polygons(const RegularPolygonRules& rules, const Catalogue& catalogue,
                            const std::vector<bool>& allowed, std::size_t since, Knowledge& knowledge) {
  const auto& [angles, sides, equal_angles] = rules;
  for (std::size_t f = since; f < knowledge.facts().size(); ++f) {
    const KnownFact fact = knowledge.facts()[f];
    if (fact.kind != FactKind::regular_polygon) continue;
    const auto& p = fact.points;
    const std::size_t n = p.size();
    const Form premise =
        Form::of(knowledge.unknowns.find({UnknownKind::fact, FactKind::regular_polygon, p, {}}));
    if (angles.valid() && allowed[angles.index()]) {
      ShapeInstance shape(angles, catalogue[angles].cost, p, knowledge);
      shape.premise(premise);
      const auto corners = static_cast<std::int64_t>(n);
      for (std::size_t i = 0; i < n; ++i)
        shape.conclude(shape.angle(p[(i + n - 1) % n], p[i], p[(i + 1) % n])
                           .add(Form::number(Rational((2 - corners) * 180, corners))));
      shape.offer();
    }
    if (sides.valid() && allowed[sides.index()]) {
      ShapeInstance shape(sides, catalogue[sides].cost, p, knowledge);
      shape.premise(premise);
      for (std::size_t i = 0; i + 1 < n; ++i)
        shape.conclude(shape.length(p[i], p[i + 1]).add(shape.length(p[i + 1], p[(i + 2) % n]), -1));
      shape.offer();
    }
    if (equal_angles.valid() && allowed[equal_angles.index()]) {
      ShapeInstance shape(equal_angles, catalogue[equal_angles].cost, p, knowledge);
      shape.premise(premise);
      const auto corner = [&](std::size_t i) { return shape.angle(p[(i + n - 1) % n], p[i % n], p[(i + 1) % n]); };
      for (std::size_t i = 0; i + 1 < n; ++i) shape.conclude(corner(i).add(corner(i + 1), -1));
      shape.offer();
    }
  }
}

}  // namespace prover
