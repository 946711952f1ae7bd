#include "prover/trigonometry/trig_sum.hpp"

#include <catch2/catch.hpp>

#include <cmath>

#include "prover/trigonometry/degrees.hpp"

using namespace prover;

namespace {

const UnknownId x(std::int64_t{0}), y(std::int64_t{1});

Form moved(const Rational& by, UnknownId unknown = x, const Rational& factor = 1) {
  return Form::of(unknown, factor).add(Form::number(by));
}
double value(const TrigSum& sum, double at_x, double at_y) {
  double total = 0;
  for (const auto& [f, r] : sum.terms())
    total += r.to_double() * std::cos((f.coefficient(x).to_double() * at_x + f.coefficient(y).to_double() * at_y +
                                       f.constant.to_double()) * std::acos(-1.0) / 180);
  return total;
}
double sine(double degrees) { return std::sin(degrees * std::acos(-1.0) / 180); }

}  // namespace

TEST_CASE("products of sines become sums of cosines with the same values", "[trigonometry]") {
  const TrigSum sum = expanded({{3, {moved(10), moved(-20, y, 2), Form::number(50)}}, {Rational(-1, 2), {moved(0), moved(0)}}});
  for (const double at : {7.0, 33.3, 121.0})
    CHECK(value(sum, at, 2 * at) == Approx(3 * sine(at + 10) * sine(4 * at - 20) * sine(50) - sine(at) * sine(at) / 2));
}

TEST_CASE("what is the same sum looks the same", "[trigonometry]") {
  // sin x · sin (180° − x) − sin² x
  CHECK(expanded({{1, {moved(0), moved(180, x, -1)}}, {-1, {moved(0), moved(0)}}}).is_empty());
  CHECK_FALSE(expanded({{1, {moved(0), moved(179, x, -1)}}, {-1, {moved(0), moved(0)}}}).is_empty());
  CHECK(same_sine(moved(170, x, -1)) == moved(10));
  CHECK(same_sine(Form::number(130)) == Form::number(50));
}

TEST_CASE("measured degrees and the fraction they may stand for", "[trigonometry]") {
  CHECK(simplest_near(33.3333333, 120, 1e-6) == Rational(100, 3));
  CHECK(simplest_near(30.0000001, 120, 1e-6) == Rational(30));
  CHECK_FALSE(simplest_near(33.690067, 120, 1e-7).has_value());
  CHECK_FALSE(simplest_near(std::nan(""), 120, 1e-7).has_value());
  CHECK(floor_of(Rational(-1, 2)) == Rational(-1));
  CHECK(within(Rational(-30), 360) == Rational(330));
  CHECK(denominator(Rational(5, 12)) == Rational(12));
}
