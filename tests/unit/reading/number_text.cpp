#include "prover/reading/number_text.hpp"

#include <catch2/catch.hpp>

using namespace prover;

// CLASSROOM.md, ruling 16: 18.5°, 23⅓°. Common practice.
TEST_CASE("sizes are written as a class writes them") {
  CHECK(degrees_text(Rational(64)) == "64°");
  CHECK(degrees_text(Rational(37, 2)) == "18.5°");
  CHECK(degrees_text(Rational(70, 3)) == "23⅓°");
  CHECK(degrees_text(Rational(140, 3)) == "46⅔°");
  CHECK(degrees_text(Rational(540, 7)) == "77 1/7°");
  CHECK(number_text(Rational(5)) == "5");
  CHECK(number_text(Rational(0)) == "0");
}

TEST_CASE("what is not the same number is not written the same") {
  CHECK(degrees_text(Rational(37, 2)) != degrees_text(Rational(37)));
  CHECK(number_text(Rational(1, 3)) != number_text(Rational(2, 3)));
}
