// Givens that only a flat figure meets, and twins that a proper one meets, or none.
#include "prover/sketch/flat.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/unit/sketch/said.hpp"

using namespace prover;

namespace {

using P = Predicate;

std::vector<Phrase> triangle_with_sides(int ab, int bc, int ac) {
  return {say(P::triangle, "ABC"), equal({length("AB")}, {constant(ab)}), equal({length("BC")}, {constant(bc)}),
          equal({length("AC")}, {constant(ac)})};
}

}  // namespace

TEST_CASE("sides of 3, 4 and 7 make a triangle only when it is flat") {
  const auto flat = flat_figure(triangle_with_sides(3, 4, 7), 3, Budget{});
  REQUIRE(flat);
  CHECK(flat->together.empty());
  CHECK(flat->on_a_line.size() == 1);
  const auto& p = flat->figure.points;
  CHECK(std::hypot(p[1][0] - p[0][0], p[1][1] - p[0][1]) == Approx(3));
  CHECK(std::hypot(p[2][0] - p[0][0], p[2][1] - p[0][1]) == Approx(7));
}

TEST_CASE("sides of 3, 4 and 5 make a triangle, 3, 4 and 8 make nothing") {
  CHECK_FALSE(flat_figure(triangle_with_sides(3, 4, 5), 3, Budget{}));
  CHECK_FALSE(flat_figure(triangle_with_sides(3, 4, 8), 3, Budget{}));
}

TEST_CASE("two points that the givens force together are told") {
  // D is the midpoint of BC and the foot of the altitude, E the midpoint too: D and E are one point.
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), say(P::midpoint, "DBC"), say(P::midpoint, "EBC")};
  CHECK(sketch(givens, 5, Budget{}).sketches.empty());
  const auto flat = flat_figure(givens, 5, Budget{});
  REQUIRE(flat);
  REQUIRE(flat->together.size() == 1);
  CHECK(flat->together[0] == std::pair(point('D'), point('E')));
}
