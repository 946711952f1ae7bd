// Two far figures, and that figures exist: measured anew, and twins without either.
#include "prover/motion/far_figures.hpp"

#include <catch2/catch.hpp>

#include "prover/motion/counter_figure.hpp"
#include "prover/motion/existence.hpp"
#include "prover/motion/shape.hpp"
#include "tests/unit/motion/anew.hpp"
#include "tests/unit/sketch/said.hpp"

using namespace prover;

namespace {

using P = Predicate;

anew::Points places(const Sketch& sketch) {
  anew::Points points;
  for (std::size_t p = 0; p < sketch.points.size(); ++p)
    points[std::string(1, static_cast<char>('A' + p))] = {sketch.points[p][0], sketch.points[p][1]};
  return points;
}
std::vector<Sketch> figures(const std::vector<Phrase>& givens, std::size_t points) {
  std::vector<Sketch> found = sketch(givens, points, Budget{}).sketches;
  REQUIRE_FALSE(found.empty());
  return found;
}

}  // namespace

TEST_CASE("what the givens leave open is moved far, and the figures stay readable", "[motion]") {
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(54)})};
  const auto far = motion::far_figures(givens, figures(givens, 3), sum({angle("BAC")}), Budget{});
  REQUIRE(far);
  CHECK(far->same_arrangement);
  CHECK(far->freedom == 1);
  for (const Sketch* one : {&far->least, &far->most}) {
    CHECK(std::fabs(anew::angle(places(*one), "ABC") - 54) < 1e-10);
    CHECK(motion::clearness(*one) > 0.08);
  }
  const double least = anew::angle(places(far->least), "BAC"), most = anew::angle(places(far->most), "BAC");
  CHECK(std::fabs(least - far->least_value) < 1e-9);
  CHECK(std::fabs(least - std::round(least)) < 1e-9);  // a whole number, for a reader
  CHECK(std::fabs(most - std::round(most)) < 1e-9);
  CHECK(most - least > 60);
}

TEST_CASE("what the givens settle has no two figures", "[motion]") {
  std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(54)}), equal({length("AB")}, {length("AC")})};
  CHECK_FALSE(motion::far_figures(givens, figures(givens, 3), sum({angle("BAC")}), Budget{}));
  // Free in shape, but the asked sum is settled.
  givens.pop_back();
  CHECK_FALSE(motion::far_figures(givens, figures(givens, 3), sum({angle("BAC"), angle("ACB")}), Budget{}));
}

TEST_CASE("what does not move may differ between arrangements", "[motion]") {
  // Two sides and an angle that is not between them.
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(40)}),
                                   equal({length("AB")}, {constant(10)}), equal({length("AC")}, {constant(7)})};
  const auto two = motion::far_figures(givens, figures(givens, 3), sum({angle("ACB")}), Budget{});
  REQUIRE(two);
  CHECK_FALSE(two->same_arrangement);
  CHECK(two->freedom == 0);
  for (const Sketch* one : {&two->least, &two->most}) {
    CHECK(std::fabs(anew::length(places(*one), "AB") - 10) < 1e-10);
    CHECK(std::fabs(anew::length(places(*one), "AC") - 7) < 1e-10);
  }
  // The law of sines: the two angles add up to 180°.
  CHECK(two->least_value + two->most_value == Approx(180));
}

TEST_CASE("a figure is proved to exist, a near miss is not", "[motion]") {
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(40)}), equal({length("AB")}, {length("AC")})};
  const Sketch exact = figures(givens, 3)[0];
  const auto existence = motion::Existence::of(givens, exact);
  REQUIRE(existence);
  CHECK(existence->within() < 1e-6);
  const auto bounds = existence->bounds(sum({angle("BAC")}));
  REQUIRE(bounds);
  CHECK(bounds->least <= 100);
  CHECK(bounds->most >= 100);
  CHECK(bounds->most - bounds->least < 1e-4);
  CHECK(existence->breaks(equal({angle("BAC")}, {constant(99)})));
  CHECK_FALSE(existence->breaks(equal({angle("BAC")}, {constant(100)})));

  Sketch off = exact;
  off.points[1][0] += 1e-4;
  CHECK_FALSE(motion::Existence::of(givens, off));
}

TEST_CASE("a given that only touches what is possible is never proved to exist", "[motion]") {
  // B, D, C on a line with AD as short as it can be: AD = AB sin 30°, a double root.
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), equal({angle("ABC")}, {constant(30)}), equal({length("AB")}, {constant(10)}),
                                   equal({length("AC")}, {constant(5)})};
  Sketch touching = figure({{0, 5}, {-std::sqrt(75.0), 0}, {0, 0}});
  CHECK_FALSE(motion::Existence::of(givens, touching));
}

TEST_CASE("a counter-figure breaks the claim widely and meets the givens", "[motion]") {
  // D is the midpoint of BC: AD does not bisect the angle at A.
  const std::vector<Phrase> givens{say(P::triangle, "ABC"), say(P::midpoint, "DBC")};
  const Phrase claim = equal({angle("BAD")}, {angle("DAC")});
  const auto found = motion::counter_figure(givens, figures(givens, 4), claim, Budget{});
  REQUIRE(found);
  CHECK(found->exists);
  const anew::Points p = places(found->figure);
  CHECK(std::fabs(anew::length(p, "BD") - anew::length(p, "DC")) < 1e-10);
  CHECK(anew::angle(p, "BDC") > 180 - 1e-6);
  CHECK(std::fabs(anew::angle(p, "BAD") - anew::angle(p, "DAC")) > 40);
  CHECK(motion::clearness(found->figure) > 0.08);
  // With the sides equal the claim holds, and no figure breaks it.
  const std::vector<Phrase> twin{say(P::triangle, "ABC"), say(P::midpoint, "DBC"), equal({length("AB")}, {length("AC")})};
  CHECK_FALSE(motion::counter_figure(twin, figures(twin, 4), claim, Budget{}));
}
