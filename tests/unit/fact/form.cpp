#include "prover/fact/form.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {
constexpr UnknownId a(0), b(1), c(2);
Form sum(const Rational& x, const Rational& y, const Rational& z, const Rational& constant) {
  Form form = Form::number(constant);
  return form.add(Form::of(c), z).add(Form::of(a), x).add(Form::of(b), y);
}
}  // namespace

TEST_CASE("terms are sorted, each unknown once, none with coefficient 0") {
  const Form form = sum(1, 2, 3, 4);
  REQUIRE(form.terms.size() == 3);
  CHECK(form.terms[0].first == a);
  CHECK(form.terms[2].first == c);
  CHECK(form.coefficient(b) == Rational(2));
  CHECK(form.coefficient(UnknownId(7)).is_zero());
  CHECK(Form::of(a, 0).is_zero());
  CHECK(sum(1, 0, 0, 0) == Form::of(a));
}

TEST_CASE("sums cancel exactly") {
  Form form = sum(1, Rational(1, 3), 0, 5);
  form.add(sum(2, Rational(2, 3), 0, 10), Rational(-1, 2));
  CHECK(form.is_zero());
  Form rest = sum(1, 1, 0, 5);
  rest.add(sum(1, 0, 0, 5), -1);
  CHECK(rest == Form::of(b));
  CHECK_FALSE(rest.is_constant());
  CHECK(rest.add(Form::of(b), -1).is_constant());
}

TEST_CASE("a form may be added to itself") {
  Form form = sum(1, 2, 3, 4);
  form.add(form, 2);
  CHECK(form == sum(3, 6, 9, 12));
  form.add(form, -1);
  CHECK(form.is_zero());
}

TEST_CASE("scaling and negation reach the constant too") {
  Form form = sum(1, -2, 0, 6);
  CHECK(-form == sum(-1, 2, 0, -6));
  CHECK(form.scale(Rational(1, 2)) == sum(Rational(1, 2), -1, 0, 3));
  CHECK(form.scale(0).is_zero());
}

TEST_CASE("one equation has one normal form and one hash") {
  const Form once = sum(2, -4, 0, 180), twice = sum(-3, 6, 0, -270);
  CHECK_FALSE(once == twice);
  CHECK(once.normalised() == twice.normalised());
  CHECK(once.normalised().hash() == twice.normalised().hash());
  CHECK(once.normalised().terms[0].second.is_one());
  CHECK(Form::number(5).normalised() == Form::number(5));
}

TEST_CASE("different equations have different normal forms") {
  const Form equation = sum(1, -1, 0, 0).normalised();
  const Form other = GENERATE(sum(1, 1, 0, 0), sum(1, -1, 0, 1), sum(1, 0, -1, 0), sum(1, -2, 0, 0));
  CHECK_FALSE(equation == other.normalised());
  CHECK(equation.hash() != other.normalised().hash());
}
