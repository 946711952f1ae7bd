// The search: figures that meet the givens, all the arrangements that these allow, none where there is none.
#include "prover/sketch/sketch.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "prover/sketch/plane.hpp"
#include "tests/unit/sketch/said.hpp"

using namespace prover;
using namespace prover::sketching;

namespace {

using P = Predicate;

void check_all_hold(const std::vector<Phrase>& givens, const SketchReport& report) {
  for (const Sketch& sketch : report.sketches) {
    for (const Phrase& phrase : givens) CHECK(holds(phrase, sketch, 1e-9));
    CHECK(sketch.residual < 1e-9);
  }
}

std::set<int> sides(const SketchReport& report, const char* triple) {
  std::set<int> result;
  for (const Sketch& sketch : report.sketches)
    result.insert(orientation(sketch, point(triple[0]), point(triple[1]), point(triple[2])));
  return result;
}

std::vector<Phrase> isosceles_with_bisector() {  // KLM as ABC, the bisector of B meets AC in D
  return {say(P::triangle, "ABC"), equal({length("AB")}, {length("AC")}), equal({angle("BAC")}, {constant(36)}),
          say(P::line_order, "ADC"), say(P::bisects, "DABC")};
}

}  // namespace

TEST_CASE("a figure that the givens determine is found, once") {
  const std::vector<Phrase> givens = isosceles_with_bisector();
  const SketchReport report = sketch(givens, 4, Budget{});
  CHECK(report.stop == StopReason::saturated);
  REQUIRE(report.sketches.size() == 1);  // all others are this one, moved, turned or scaled
  check_all_hold(givens, report);
  CHECK(measure(sum({angle("ADB")}), report.sketches[0]) == Approx(108));
}

TEST_CASE("unknown numbers are found with the figure") {
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {number("x", 2)}),
                                   equal({angle("BCA")}, {number("x", 3), constant(10)}),
                                   equal({angle("CAB")}, {number("x"), constant(-10)})};
  const SketchReport report = sketch(givens, 3, Budget{});
  REQUIRE_FALSE(report.sketches.empty());
  CHECK(report.sketches[0].numbers.at("x") == Approx(30));
}

TEST_CASE("lengths in units are kept, other figures are drawn about ten wide") {
  const SketchReport units = sketch({say(P::triangle, "ABC"), equal({length("AB")}, {constant(300)}),
                                     equal({length("BC")}, {constant(400)}), say(P::right_angled, "BAC")},
                                    3, Budget{});
  REQUIRE_FALSE(units.sketches.empty());
  CHECK(measure(sum({length("AC")}), units.sketches[0]) == Approx(500));
  const SketchReport free = sketch({say(P::equilateral, "ABC")}, 3, Budget{});
  REQUIRE_FALSE(free.sketches.empty());
  CHECK(measure(sum({length("AC")}), free.sketches[0]) == Approx(10));
}

TEST_CASE("where the givens leave the shape free, the shapes differ") {
  const SketchReport report = sketch({say(P::triangle, "ABC")}, 3, Budget{});
  REQUIRE(report.sketches.size() == 8);
  double least = 180, most = 0;
  for (const Sketch& sketch : report.sketches) {
    least = std::min(least, measure(sum({angle("BAC")}), sketch));
    most = std::max(most, measure(sum({angle("BAC")}), sketch));
  }
  CHECK(least < 30);
  CHECK(most > 100);
}

TEST_CASE("an ambiguous figure shows both arrangements") {
  SECTION("a point on either side of a line") {
    std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABD")}, {constant(40)}),
                               equal({length("BD")}, {length("AB")})};
    CHECK(sides(sketch(givens, 4, Budget{}), "ABD") == std::set<int>{-1, 1});
    givens.push_back(say(P::opposite_sides, "CDAB"));
    CHECK(sides(sketch(givens, 4, Budget{}), "ABD") == std::set<int>{-1});
  }
  SECTION("a ray inside an angle or outside") {
    const SketchReport report = sketch({equal({angle("ABC")}, {constant(24)}), equal({angle("ABD")}, {constant(20)})},
                                       4, Budget{});
    std::set<long> found;
    for (const Sketch& sketch : report.sketches) found.insert(std::lround(measure(sum({angle("CBD")}), sketch)));
    CHECK(found == std::set<long>{4, 44});
  }
  SECTION("the two triangles with two sides and an angle opposite the shorter") {
    const SketchReport report = sketch({say(P::triangle, "ABC"), equal({angle("BAC")}, {constant(40)}),
                                        equal({length("AB", 4)}, {length("BC", 5)})},
                                       3, Budget{});
    std::set<long> found;
    for (const Sketch& sketch : report.sketches) found.insert(std::lround(measure(sum({angle("ACB")}), sketch)));
    CHECK(found.size() == 2);
  }
  SECTION("which two sides of an isosceles triangle are equal") {
    const SketchReport report = sketch({say(P::isosceles, "ABC"), equal({angle("ABC")}, {constant(40)})}, 3, Budget{});
    std::set<long> found;
    for (const Sketch& sketch : report.sketches) found.insert(std::lround(measure(sum({angle("BAC")}), sketch)));
    CHECK(found == std::set<long>{40, 70, 100});
  }
}

TEST_CASE("every figure is turned so that its first triple runs left") {
  const SketchReport report = sketch({say(P::triangle, "ABC"), say(P::inside_polygon, "DABC")}, 4, Budget{});
  CHECK(sides(report, "ABC") == std::set<int>{1});
  CHECK(sides(report, "ABD") == std::set<int>{1});
}

TEST_CASE("givens that cannot all hold give no figure") {
  SECTION("angles that do not add up") {
    const SketchReport report = sketch({say(P::triangle, "ABC"), equal({angle("BAC")}, {constant(100)}),
                                        equal({angle("ABC")}, {constant(90)})}, 3, Budget{});
    CHECK(report.sketches.empty());
    CHECK(report.stop == StopReason::saturated);
    CHECK(report.starts_tried == SketchOptions().starts);
    CHECK(report.best_residual > 1e-6);
  }
  SECTION("a position against an equation") {
    CHECK(sketch({say(P::midpoint, "CAB"), say(P::opposite_sides, "ABCD"), say(P::same_side, "ABCD")}, 4, Budget{})
              .sketches.empty());
  }
  SECTION("a phrase about points that are not there") {
    CHECK(sketch({say(P::triangle, "ABF")}, 3, Budget{}).sketches.empty());
  }
}

TEST_CASE("points do not fall together to please the givens") {
  // All lengths equal between four points would hold if two of them were one.
  const std::vector<Phrase> givens{equal({length("AB")}, {length("BC")}), equal({length("BC")}, {length("CA")}),
                                   equal({length("AD")}, {length("BD")}), equal({length("BD")}, {length("AB")})};
  const SketchReport report = sketch(givens, 4, Budget{});
  REQUIRE(report.sketches.size() == 1);
  CHECK(measure(sum({length("CD")}), report.sketches[0]) == Approx(10));
}

TEST_CASE("the same seed gives the same bytes, another seed other figures") {
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), say(P::foot, "DABC"), say(P::bisects, "EABC")};
  const SketchReport once = sketch(givens, 5, Budget{}), again = sketch(givens, 5, Budget{});
  REQUIRE(once.sketches.size() == again.sketches.size());
  for (std::size_t i = 0; i < once.sketches.size(); ++i) CHECK(once.sketches[i].points == again.sketches[i].points);
  SketchOptions other;
  other.seed = 2;
  CHECK(sketch(givens, 5, Budget{}, other).sketches[0].points != once.sketches[0].points);
}

TEST_CASE("an interrupted budget ends the search at once") {
  std::stop_source source;
  source.request_stop();
  Budget budget;
  budget.stop = source.get_token();
  const SketchReport report = sketch(isosceles_with_bisector(), 4, budget);
  CHECK(report.sketches.empty());
  CHECK(report.starts_tried == 0);
  CHECK(report.stop == StopReason::interrupted);
}

TEST_CASE("our arctangent and unit vectors are the usual ones") {
  for (double a = -3.1; a < 3.15; a += 0.1) {
    CHECK(unit(a).x == Approx(std::cos(a)).margin(1e-14));
    CHECK(unit(a).y == Approx(std::sin(a)).margin(1e-14));
    CHECK(direction(unit(a)) == Approx(a).margin(1e-14));
  }
  CHECK(direction({-1, 0}) == Approx(pi));
  CHECK(direction({0, -2}) == Approx(-pi / 2));
}
