#include "prover/figure/arrangement.hpp"

#include "tests/unit/statement/told.hpp"

using namespace prover;
using told::Told;

TEST_CASE("sets of points that share two points are one line") {
  const Told one("collinear: K, L, M; collinear: L, M, N");
  CHECK(one.figure.line_count() == 1);
  CHECK(one.line("KN").valid());
  CHECK(one.line("KN") == one.line("LM"));

  const Told two("collinear: K, L, M; collinear: M, N, P");
  CHECK(two.figure.line_count() == 2);
  CHECK_FALSE(two.line("KN").valid());
  CHECK(two.figure.common_point(two.line("KL"), two.line("NP")) == two.point("M"));
}

TEST_CASE("a merge may bring the next one about") {
  const Told told("collinear: K, L, M; collinear: N, P, Q; collinear: L, M, N, P");
  CHECK(told.figure.line_count() == 1);
  CHECK(told.line("KQ").valid());
}

TEST_CASE("a segment named beside a line that holds both its ends is that line") {
  const Told told("KN = 3; line: K, L, N in this order");
  CHECK(told.figure.line_count() == 1);
}

TEST_CASE("order on a line is closed under betweenness") {
  SECTION("neighbours overlap in a segment") {
    const Told told("line: K, L, M in this order; line: L, M, N in this order");
    CHECK(told.says("line: K, L, M, N in this order"));
    CHECK(told.says("line: N, L, K in this order"));
    CHECK_FALSE(told.says("line: K, N, M in this order"));
  }
  SECTION("a point inside a part") {
    const Told told("line: K, L, N in this order; line: L, M, N in this order");
    CHECK(told.says("line: K, L, M, N in this order"));
  }
  SECTION("two points beyond the same end stay open") {
    const Told told("line: K, L, M in this order; line: K, L, N in this order");
    CHECK_FALSE(told.says("line: L, M, N in this order"));
    CHECK_FALSE(told.says("line: L, N, M in this order"));
    CHECK_FALSE(told.says("line: M, L, N in this order"));
    CHECK(told.figure.ray(told.point("L"), told.point("M")) ==
          told.figure.ray(told.point("L"), told.point("N")));
  }
  SECTION("two points on one segment stay open") {
    const Told told("line: K, L, N in this order; line: K, M, N in this order");
    CHECK_FALSE(told.says("line: K, L, M in this order"));
    CHECK_FALSE(told.says("line: K, M, L in this order"));
  }
}

TEST_CASE("a ray is one ray whichever of its points names it") {
  const Told told("line: K, L, M in this order; ray: P on ray KL");
  const Arrangement& figure = told.figure;
  const PointId k = told.point("K"), l = told.point("L"), m = told.point("M"), p = told.point("P");
  CHECK(figure.ray(k, l) == figure.ray(k, m));
  CHECK(figure.ray(k, l) == figure.ray(k, p));
  CHECK(figure.opposite_rays(l, k, m));
  CHECK_FALSE(figure.opposite_rays(k, l, m));
  // Whether P is before or beyond L is open, so from L nothing is known of it.
  CHECK(figure.ray(l, p) == p);
  CHECK_FALSE(figure.opposite_rays(l, p, m));
  CHECK_FALSE(figure.opposite_rays(l, p, k));
}

TEST_CASE("what figures agree on is seen, and only that") {
  const std::vector<Coordinates> alike{{{0, 0}, {4, 0}, {1, 2}, {2, 3}}, {{0, 0}, {4, 0}, {3, 1}, {1, 2}}};
  const std::vector<Coordinates> unlike{{{0, 0}, {4, 0}, {1, 2}, {2, 3}}, {{0, 0}, {4, 0}, {1, 2}, {2, -3}}};
  const char* same = "sides: M and N on the same side of KL";
  const char* opposite = "sides: M and N on opposite sides of KL";
  CHECK(Told("triangle: KLM; NK = NL", "", alike).source(same) == PositionSource::seen);
  CHECK(Told("triangle: KLM; NK = NL", "", alike).source(opposite) == PositionSource::unknown);
  CHECK(Told("triangle: KLM; NK = NL", "", unlike).source(same) == PositionSource::unknown);
  CHECK(Told("triangle: KLM; NK = NL", "", unlike).source(opposite) == PositionSource::unknown);
  CHECK(Told("triangle: KLM; NK = NL").source(same) == PositionSource::unknown);
  CHECK(Told("triangle: KLM; sides: M and N on the same side of KL", "", alike).source(same) ==
        PositionSource::text);
}

TEST_CASE("a figure shows nothing about points that are nearly on a line") {
  const std::vector<Coordinates> flat{{{0, 0}, {4, 0}, {2, 1e-9}}};
  const std::vector<Coordinates> clear{{{0, 0}, {4, 0}, {2, 1}}};
  CHECK(Told("KL = LM", "", flat).source("triangle: KLM") == PositionSource::unknown);
  CHECK(Told("KL = LM", "", clear).source("triangle: KLM") == PositionSource::seen);
}

// A proof can cite orders only: a ray that is the same in all figures, whichever point is nearer, is no order.
TEST_CASE("order and rays are seen when every figure shows them") {
  const std::vector<Coordinates> views{{{0, 0}, {1, 0}, {3, 0}}, {{0, 0}, {2, 0}, {1, 0}}};
  const Told told("collinear: K, L, M", "", views);
  CHECK(told.source("line: K, L, M in this order") == PositionSource::unknown);
  CHECK(told.figure.ray_source(told.point("K"), told.point("L"), told.point("M")) == PositionSource::unknown);
  CHECK(told.figure.ray_source(told.point("L"), told.point("K"), told.point("M")) == PositionSource::unknown);

  const Told ordered("collinear: K, L, M", "", {views[0]});
  CHECK(ordered.source("line: K, L, M in this order") == PositionSource::seen);
  CHECK(ordered.figure.ray(ordered.point("K"), ordered.point("L")) == ordered.figure.ray(ordered.point("K"), ordered.point("M")));
  CHECK(ordered.figure.ray_source(ordered.point("K"), ordered.point("L"), ordered.point("M")) == PositionSource::seen);
  CHECK(ordered.figure.opposite_rays(ordered.point("L"), ordered.point("K"), ordered.point("M")));
}

TEST_CASE("two named points may be joined where the line is new") {
  Told told("triangle: KLM; triangle: KLN; sides: M and N on opposite sides of KL");
  const PointId m = told.point("M"), n = told.point("N");
  CHECK_FALSE(told.line("MN").valid());
  Arrangement& figure = told.figure;
  // M, N and K might stand on one line that no sentence names.
  CHECK_FALSE(figure.join(m, n).valid());

  Told convex("convex: K, L, M, N");
  CHECK_FALSE(convex.line("KM").valid());
  const LineId diagonal = convex.figure.join(convex.point("K"), convex.point("M"));
  REQUIRE(diagonal.valid());
  CHECK(convex.figure.is_joined(diagonal));
  CHECK(convex.figure.join(convex.point("M"), convex.point("K")) == diagonal);
  const LineId side = convex.figure.join(convex.point("K"), convex.point("L"));
  CHECK_FALSE(convex.figure.is_joined(side));
}
