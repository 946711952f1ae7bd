#include "prover/trigonometry/only_root.hpp"

#include <catch2/catch.hpp>

using namespace prover;

TEST_CASE("the only root between limits, and a second one", "[trigonometry]") {
  // cos x vanishes at 90° and 270°.
  const std::vector<Wave> cosine{{1, 1, 0}};
  CHECK(count_roots(cosine, 90, 0, 180, {}) == RootCount::only_this);
  CHECK(count_roots(cosine, 90, 0, 300, {}) == RootCount::several);
  CHECK(count_roots(cosine, 90, 0, 270, {}) == RootCount::only_this);  // at the end itself no figure stands
  CHECK(count_roots(cosine, 80, 0, 180, {}) == RootCount::not_decided);
}

TEST_CASE("a root in which the sum keeps its sign", "[trigonometry]") {
  // 1 + cos x: only at 180°, of order 2. With sin² (x − 60°) beside it: (1 − cos (2x − 120°))/2.
  CHECK(count_roots({{1, 0, 0}, {1, 1, 0}}, 180, 0, 360, {}) == RootCount::only_this);
  CHECK(count_roots({{1, 0, 0}, {-1, 2, -120}}, 60, 0, 180, {}) == RootCount::only_this);
  CHECK(count_roots({{1, 0, 0}, {-1, 2, -120}}, 60, 0, 300, {}) != RootCount::only_this);
}

TEST_CASE("sums that vanish at the limits too, where figures degenerate", "[trigonometry]") {
  // sin x · sin (x − 60°) · sin (180° − x): zero at 0° and 180°, twice each, and at 60°.
  // sin² x · sin (x − 60°) = ½ sin (x − 60°) − ¼ (sin (3x − 60°) − sin (x + 60°)), with sin y = cos (y − 90°).
  const std::vector<Wave> sum{{Rational(1, 2), 1, -150}, {Rational(-1, 4), 3, -150}, {Rational(1, 4), 1, -30}};
  CHECK(count_roots(sum, 60, 0, 180, {}) == RootCount::only_this);
  CHECK(count_roots(sum, 60, 0, 250, {}) != RootCount::only_this);
}

TEST_CASE("a second root that is very near is not overlooked", "[trigonometry]") {
  // sin (x − 40°) · sin (x − 40.001°) = ½ (cos 0.001° − cos (2x − 80.001°))
  const Rational gap(1, 1000);
  const std::vector<Wave> sum{{Rational(1, 2), 0, gap}, {Rational(-1, 2), 2, Rational(-80) - gap}};
  CHECK(count_roots(sum, 40, 0, 180, {}) != RootCount::only_this);
}
