// What is free in a figure, and what moves along it. Each free figure has a rigid twin.
#include "prover/motion/mechanism.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/unit/sketch/said.hpp"

using namespace prover;
using motion::Mechanism;

namespace {

using P = Predicate;

Mechanism mechanism(const std::vector<Phrase>& givens, std::size_t points) {
  const SketchReport report = sketch(givens, points, Budget{});
  REQUIRE_FALSE(report.sketches.empty());
  auto found = Mechanism::at(givens, report.sketches[0]);
  REQUIRE(found);
  return std::move(*found);
}

}  // namespace

TEST_CASE("the shape of a triangle has two free numbers, each angle that is given takes one", "[motion]") {
  std::vector<Phrase> givens{say(P::triangle, "ABC")};
  CHECK(mechanism(givens, 3).freedom() == 2);
  givens.push_back(equal({angle("ABC")}, {constant(40)}));
  CHECK(mechanism(givens, 3).freedom() == 1);
  givens.push_back(equal({angle("BCA")}, {constant(60)}));
  CHECK(mechanism(givens, 3).freedom() == 0);
}

TEST_CASE("a given that follows from the others takes nothing away", "[motion]") {
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(40)}),
                                   equal({angle("BCA")}, {constant(60)}), equal({angle("CAB")}, {constant(80)})};
  CHECK(mechanism(givens, 3).freedom() == 0);
  const std::vector<Phrase> fewer{givens[0], givens[1]};
  CHECK(mechanism(fewer, 3).freedom() == 1);
}

TEST_CASE("where lengths have units the size of the figure counts", "[motion]") {
  CHECK(mechanism({say(P::triangle, "ABC"), equal({length("AB")}, {constant(5)})}, 3).freedom() == 2);
  CHECK(mechanism({say(P::equilateral, "ABC"), equal({length("AB")}, {constant(5)})}, 3).freedom() == 0);
}

TEST_CASE("an angle that the givens leave open moves, its fixed neighbours do not", "[motion]") {
  // A triangle with the angle at B, and the bisectors of B and C meeting at D.
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(54)}), say(P::bisects, "DABC"),
                                   say(P::bisects, "DACB")};
  const Mechanism open = mechanism(givens, 4);
  CHECK(open.freedom() == 1);
  CHECK(open.moves(sum({angle("BDC")})));
  CHECK_FALSE(open.moves(sum({angle("ABD")})));
  CHECK_FALSE(open.moves(sum({angle("BDC"), angle("BAC", Rational(-1, 2))})));  // 90°, whatever the angle at A
  CHECK(open.moves(sum({angle("BDC"), angle("BAC", Rational(-1, 3))})));
}

TEST_CASE("a polished figure meets the givens to rounding", "[motion]") {
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(54)}), say(P::bisects, "DABC"),
                                   say(P::bisects, "DACB")};
  CHECK(mechanism(givens, 4).figure().residual < 1e-12);
}

TEST_CASE("far from the givens there is no mechanism", "[motion]") {
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(120)}),
                                   equal({angle("BCA")}, {constant(80)})};
  CHECK_FALSE(Mechanism::at(givens, figure({{0, 0}, {4, 0}, {1, 3}})));
}
