#include "prover/trigonometry/root_sum.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {

RootSum sine(const Rational& degrees) { return RootSum::cosine(degrees - Rational(90)); }

}  // namespace

TEST_CASE("a sum of roots of unity is zero exactly when it is", "[trigonometry]") {
  CHECK(RootSum().is_zero() == true);
  CHECK(RootSum::direction(0).is_zero() == false);
  // The three cube roots of unity, the five fifth ones; two of the three.
  CHECK(RootSum::direction(0).add(RootSum::direction(120)).add(RootSum::direction(240)).is_zero() == true);
  CHECK(RootSum::direction(0).add(RootSum::direction(120)).add(RootSum::direction(239)).is_zero() == false);
  RootSum fifths;
  for (int k = 0; k < 5; ++k) fifths.add(RootSum::direction(Rational(72 * k)));
  CHECK(fifths.is_zero() == true);
  CHECK(fifths.add(RootSum::direction(1), Rational(1, 1'000'000'000)).is_zero() == false);
}

TEST_CASE("products of sines that textbooks know", "[trigonometry]") {
  // sin 20° · sin 40° · sin 80° = √3/8 = sin 60° / 4
  const RootSum product = sine(20) * sine(40) * sine(80);
  CHECK(RootSum(product).add(sine(60), Rational(-1, 4)).is_zero() == true);
  CHECK(RootSum(product).add(sine(61), Rational(-1, 4)).is_zero() == false);
  // sin 18° · sin 54° = 1/4, sin 30° = 1/2
  CHECK((sine(18) * sine(54)).add(RootSum::direction(0), Rational(-1, 4)).is_zero() == true);
  CHECK((sine(18) * sine(55)).add(RootSum::direction(0), Rational(-1, 4)).is_zero() == false);
  CHECK(sine(30).add(RootSum::direction(0), Rational(-1, 2)).is_zero() == true);
}

TEST_CASE("fractions of a degree, and coefficients that do not fit in a machine word", "[trigonometry]") {
  // cos 3a = 4 cos³ a − 3 cos a, at a = 20/7°.
  const Rational a(20, 7);
  const RootSum c = RootSum::cosine(a);
  RootSum difference = RootSum::cosine(a * Rational(3));
  difference.add(c * c * c, -4).add(c, 3);
  CHECK(difference.is_zero() == true);
  const Rational huge = *Rational::parse("123456789012345678901234567890");
  RootSum large;
  large.add(RootSum::cosine(60), huge).add(RootSum::direction(0), -huge / 2);
  CHECK(large.is_zero() == true);
  CHECK(large.add(RootSum::direction(0)).is_zero() == false);
}

TEST_CASE("a field too large to compute in is not guessed at", "[trigonometry]") {
  CHECK_FALSE(RootSum::cosine(Rational(1, 1'000'003)).add(RootSum::direction(0), -1).is_zero().has_value());
}
