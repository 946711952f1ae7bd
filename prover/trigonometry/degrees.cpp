#include "prover/trigonometry/degrees.hpp"

#include <cmath>
#include <string>

namespace prover {

Rational denominator(const Rational& value) {
  const std::string text = value.to_string();
  const auto slash = text.find('/');
  return slash == text.npos ? Rational(1) : *Rational::parse(text.substr(slash + 1));
}

Rational floor_of(const Rational& value) {
  if (value.is_integer()) return value;
  // |error| of the double is far below 1 for all angles that occur; the two comparisons make it exact.
  Rational whole(static_cast<std::int64_t>(std::floor(value.to_double())));
  while (whole > value) whole -= 1;
  while (whole + Rational(1) <= value) whole += 1;
  return whole;
}

Rational within(const Rational& value, const Rational& period) { return value - floor_of(value / period) * period; }

std::optional<Rational> simplest_near(double measured, int largest, double tolerance) {
  if (!std::isfinite(measured) || std::fabs(measured) > 1e9) return std::nullopt;
  for (int d = 1; d <= largest; ++d) {
    const double n = std::round(measured * d);
    if (std::fabs(measured - n / d) < tolerance) return Rational(static_cast<std::int64_t>(n), d);
  }
  return std::nullopt;
}

}  // namespace prover
