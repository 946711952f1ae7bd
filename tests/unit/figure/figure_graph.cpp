#include "prover/figure/figure_graph.hpp"

#include <set>

#include "tests/unit/statement/told.hpp"

using namespace prover;
using told::Told;

namespace {

std::string letters(const Told& told, const std::vector<PointId>& points) {
  std::string text;
  for (const PointId p : points) text += told.statement.names.of(p);
  return text;
}
// A cycle as it is read from its first letter in the alphabet on, in the same sense.
std::string cycle(const Told& told, const std::vector<PointId>& points) {
  std::string text = letters(told, points);
  std::rotate(text.begin(), std::min_element(text.begin(), text.end()), text.end());
  return text;
}
// Faces, whichever way round each is read.
std::set<std::string> polygons(const Told& told, const std::vector<std::vector<PointId>>& faces) {
  std::set<std::string> out;
  for (std::vector<PointId> face : faces) {
    const std::string there = cycle(told, face);
    std::reverse(face.begin(), face.end());
    out.insert(std::min(there, cycle(told, face)));
  }
  return out;
}

}  // namespace

TEST_CASE("points are in one group when lines connect them") {
  const Told one("triangle: KLM; triangle: MNP");
  CHECK(FigureGraph(one.figure).connected_points().size() == 1);
  const Told two("triangle: KLM; triangle: NPQ");
  CHECK(FigureGraph(two.figure).connected_points().size() == 2);
}

TEST_CASE("neighbours stand round a point in order, the next along each line only") {
  // K in the middle; M beyond L on the same lath.
  const Told told("line: K, L, M in this order; KN = KP; KQ = KP");
  const Coordinates view{{0, 0}, {1, 0}, {2, 0}, {0, 1}, {-1, 0}, {0, -1}};  // K L M N P Q
  const auto around = FigureGraph(told.figure).neighbours_in_order(view);
  CHECK(cycle(told, around[told.point("K").index()]) == "LNPQ");
  CHECK(cycle(told, around[told.point("M").index()]) == "L");
  const Coordinates mirrored{{0, 0}, {1, 0}, {2, 0}, {0, -1}, {-1, 0}, {0, 1}};
  CHECK(cycle(told, FigureGraph(told.figure).neighbours_in_order(mirrored)[told.point("K").index()]) ==
        "LQPN");
}

TEST_CASE("the bounded faces are the polygons that a reader sees") {
  const Told told("triangle: KLM; line: L, P, M in this order; KP = PM");
  const Coordinates view{{0, 2}, {-1, 0}, {1, 0}, {0.2, 0}};
  CHECK(polygons(told, FigureGraph(told.figure).faces(view)) == std::set<std::string>{"KLP", "KMP"});
}

TEST_CASE("a straight corner is no corner of a face") {
  const Told told("triangle: KLM; line: L, P, M in this order");
  const Coordinates view{{0, 2}, {-1, 0}, {1, 0}, {0.2, 0}};
  CHECK(polygons(told, FigureGraph(told.figure).faces(view)) == std::set<std::string>{"KLM"});
}

TEST_CASE("segments that cross without a name make no plane graph") {
  const Coordinates view{{0, 0}, {2, 0}, {2, 2}, {0, 2}, {1, 1}};
  const Told unnamed("convex: K, L, M, N; KM = LN");
  CHECK(FigureGraph(unnamed.figure).faces({view.begin(), view.begin() + 4}).empty());
  const Told named("convex: K, L, M, N; P is where segments KM and LN cross");
  CHECK(FigureGraph(named.figure).faces(view).size() == 4);
}
