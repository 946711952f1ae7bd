// What sentences say of sides, law by law (the laws stand in prover/figure/arrangement.hpp), each with a twin
// in which the conclusion does not follow. Elementary order geometry of the plane (Hilbert, Grundlagen, group
// II).
#include "tests/unit/statement/told.hpp"

using namespace prover;
using told::Told;

TEST_CASE("law 1: a side of a line is the same whichever two of its points name it") {
  const Told told("line: K, L, M in this order; sides: P and Q on the same side of KL");
  CHECK(told.says("sides: P and Q on the same side of LM"));
  CHECK(told.says("sides: P and Q on the same side of MK"));
  CHECK_FALSE(told.says("sides: P and Q on opposite sides of LM"));

  const Told other("triangle: KLM; sides: P and Q on the same side of KL");
  CHECK_FALSE(other.says("sides: P and Q on the same side of LM"));
}

TEST_CASE("law 2: a triple turns the same way from whichever corner it is read") {
  const Told told("triangle: KLM; line: L, P, M in this order");
  CHECK(told.says("sides: P and M on the same side of KL"));
  CHECK(told.says("sides: P and L on the same side of KM"));
  CHECK(Told("triangle: KLM; line: L, P, M in this order; KP = PM")
            .says("sides: L and M on opposite sides of KP"));
  CHECK_FALSE(told.says("sides: P and M on opposite sides of KL"));

  const Told beyond("triangle: KLM; line: L, M, P in this order; KP = PM");
  CHECK(beyond.says("sides: P and L on opposite sides of KM"));
  CHECK(beyond.says("sides: L and M on the same side of KP"));

  const Told open("triangle: KLM; collinear: L, P, M");
  CHECK_FALSE(open.says("sides: P and M on the same side of KL"));
}

TEST_CASE("law 3: along a line the side of another line changes at most once") {
  const std::string three = "triangle: KXY; triangle: LXY; triangle: MXY; line: K, L, M in this order; ";
  SECTION("ends on one side, so the middle is there too") {
    const Told told(three + "sides: K and M on the same side of XY");
    CHECK(told.says("sides: L and K on the same side of XY"));
  }
  SECTION("changed in the first part, so not in the second") {
    const Told told(three + "sides: K and L on opposite sides of XY");
    CHECK(told.says("sides: L and M on the same side of XY"));
    CHECK(told.says("sides: K and M on opposite sides of XY"));
  }
  SECTION("not changed in the first part: the second is open") {
    const Told told(three + "sides: K and L on the same side of XY");
    CHECK_FALSE(told.says("sides: L and M on the same side of XY"));
    CHECK_FALSE(told.says("sides: L and M on opposite sides of XY"));
  }
  SECTION("ends on both sides: the middle is open") {
    const Told told(three + "sides: K and M on opposite sides of XY");
    CHECK_FALSE(told.says("sides: L and K on the same side of XY"));
    CHECK_FALSE(told.says("sides: L and M on the same side of XY"));
  }
}

TEST_CASE("law 4: order serves sides: what lies on one ray lies on one side") {
  const Told told("line: K, L, M in this order; line: L, M, N in this order; triangle: KLP");
  CHECK(told.says("sides: L and N on the same side of KP"));
  CHECK(told.says("sides: M and N on the same side of KP"));
  const Told open("collinear: K, L, N; triangle: KLP");
  CHECK_FALSE(open.says("sides: L and N on the same side of KP"));
}

TEST_CASE("same and opposite sides add up") {
  const std::string told = "triangle: XYK; sides: K and L on opposite sides of XY; ";
  CHECK(Told(told + "sides: L and M on opposite sides of XY").says("sides: K and M on the same side of XY"));
  CHECK(Told(told + "sides: L and M on the same side of XY").says("sides: K and M on opposite sides of XY"));
  CHECK_FALSE(
      Told(told + "sides: L and M on opposite sides of XK").says("sides: K and M on the same side of XY"));
}

TEST_CASE("a line does not cross its parallel") {
  const Told told("parallel: KL, MN");
  CHECK(told.says("sides: M and N on the same side of KL"));
  CHECK(told.says("sides: K and L on the same side of MN"));
  CHECK_FALSE(Told("perpendicular: KL, MN").says("sides: M and N on the same side of KL"));
}

TEST_CASE("a ray inside an angle has its arms on opposite sides") {
  const Told told("angle KLM = 70; inside: P lies inside angle KLM; PL = LK");
  CHECK(told.says("sides: K and M on opposite sides of LP"));
  CHECK(told.says("sides: P and K on the same side of LM"));
  CHECK(told.says("sides: P and M on the same side of LK"));
  const Told arm("angle KLM = 70; sides: P and K on the same side of LM; PL = LK");
  CHECK_FALSE(arm.says("sides: K and M on opposite sides of LP"));
}

TEST_CASE("position sentences that exclude each other are noticed, and their tame twins are not") {
  struct Twins {
    const char *wild, *tame;
  };
  const Twins twins =
      GENERATE(Twins{"line: K, L, M in this order; line: L, M, N in this order; line: K, N, M in this order",
                     "line: K, L, M in this order; line: L, M, N in this order; line: K, M, N in this order"},
               Twins{"collinear: K, L, M; triangle: KLM", "collinear: K, L, M; triangle: KLN"},
               Twins{"sides: P and Q on the same side of KL; sides: P and Q on opposite sides of KL",
                     "sides: P and Q on the same side of KL; sides: P and Q on opposite sides of KM"},
               Twins{"triangle: KLM; line: L, P, M in this order; sides: P and M on opposite sides of KL",
                     "triangle: KLM; line: P, L, M in this order; sides: P and M on opposite sides of KL"},
               Twins{"parallel: KL, MN; sides: M and N on opposite sides of KL",
                     "perpendicular: KL, MN; sides: M and N on opposite sides of KL"});
  INFO(twins.wild);
  CHECK(Told(twins.wild).figure.contradictory_text());
  INFO(twins.tame);
  CHECK_FALSE(Told(twins.tame).figure.contradictory_text());
}

// K is behind L, seen from M, and cannot be on the ray from L through M.
TEST_CASE("a ray that runs against the order is noticed") {
  CHECK(Told("line: K, L, M in this order; ray: K on ray LM").figure.contradictory_text());
}
TEST_CASE("a ray that runs with the order is no contradiction") {
  CHECK_FALSE(Told("line: K, L, M in this order; ray: L on ray KM").figure.contradictory_text());
}
