// Exact degrees: remainders, denominators, and the plain fraction nearest to a measured number.
#pragma once
#include <optional>

#include "prover/base/rational.hpp"

namespace prover {

Rational floor_of(const Rational& value);
Rational within(const Rational& value, const Rational& period);  // in [0, period)
Rational denominator(const Rational& value);

// The fraction with the smallest denominator, at most `largest`, that differs from `measured` by less than `tolerance`.
std::optional<Rational> simplest_near(double measured, int largest, double tolerance);

}  // namespace prover
