// The exterior angles of a convex polygon, where its sides are produced one way round.
#include <algorithm>

#include "prover/chain/offer_instance.hpp"
#include "prover/chain/shapes.hpp"
#include "prover/figure/figure_graph.hpp"

namespace prover {

namespace {

using Corners = std::vector<PointId>;

// What says that the corners in this order make a convex polygon with drawn sides, or nothing.
std::vector<Position> convex_and_drawn(const Corners& p, const Arrangement& figure) {
  std::vector<Position> said;
  const std::size_t n = p.size();
  for (std::size_t i = 0; i < n; ++i) {
    const PointId a = p[i], b = p[(i + 1) % n], c = p[(i + 2) % n];
    if (a == b || a == c || b == c || !figure.line(a, b).valid() || figure.line(a, b) == figure.line(b, c)) return {};
    for (std::size_t k = 3; k < n; ++k) said.push_back({PositionKind::same_side, c, p[(i + k) % n], a, b});
  }
  if (n == 3) said.push_back({PositionKind::not_collinear, p[0], p[1], p[2], {}});
  for (const Position& position : said)
    if (!figure.known(position)) return {};
  return said;
}

// The point, if any, that names the ray on which the side from `before` to `corner` is produced.
PointId produced(PointId before, PointId corner, const Arrangement& figure) {
  const LineId side = figure.line(before, corner);
  for (const PointId p : figure.rays_at(corner))
    if (figure.line(corner, p) == side && figure.known({PositionKind::between, before, corner, p, {}})) return p;
  return {};
}

void offer_sum(RuleId rule, const Rational& cost, Corners corners, Knowledge& knowledge) {
  const Arrangement& figure = knowledge.arrangement;
  const std::size_t n = corners.size();
  for (int sense = 0; sense < 2; ++sense, std::reverse(corners.begin(), corners.end())) {
    Corners places = corners;
    for (std::size_t i = 0; i < n; ++i) {
      if (!figure.line(corners[(i + n - 1) % n], corners[i]).valid()) return;
      places.push_back(produced(corners[(i + n - 1) % n], corners[i], figure));
      if (!places.back().valid()) break;
    }
    if (!places.back().valid()) continue;
    const std::vector<Position> convex = convex_and_drawn(corners, figure);
    if (convex.empty()) return;
    ShapeInstance shape(rule, cost, places, knowledge);
    for (const Position& position : convex) shape.need(position);
    Form sum = Form::number(-360);
    for (std::size_t i = 0; i < n; ++i) {
      shape.need({PositionKind::between, corners[(i + n - 1) % n], corners[i], places[n + i], {}});
      sum.add(shape.angle(places[n + i], corners[i], corners[(i + 1) % n]));
    }
    shape.conclude(std::move(sum));
    shape.offer();
  }
}

}  // namespace

void offer_exterior_sums(RuleId rule, const Rational& cost, const Statement& statement, Knowledge& knowledge) {
  // Whatever row of points a sentence names, if it makes a convex polygon.
  for (const Given& given : statement.givens)
    if (given.phrase.points.size() >= 3) offer_sum(rule, cost, given.phrase.points, knowledge);
  // And the faces that a reader sees.
  const auto& views = knowledge.arrangement.views();
  if (!views.empty() && views[0].size() <= 40)
    for (const Corners& face : FigureGraph(knowledge.arrangement).faces(views[0]))
      if (face.size() >= 3) offer_sum(rule, cost, face, knowledge);
}

}  // namespace prover
