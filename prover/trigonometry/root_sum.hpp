// Sums of roots of unity with rational coefficients, exact: Σ c · e^(i·a) with angles a that are rational numbers of
// degrees. Cosines and sines of such angles are of this kind, and so are their sums and products. Whether one is zero is
// decided in the cyclotomic field: it is a polynomial in one primitive root of unity, and zero exactly when the
// cyclotomic polynomial divides it (that one is irreducible: Gauss). No rounding anywhere.
#pragma once
#include <map>
#include <optional>

#include "prover/base/rational.hpp"

namespace prover {

class RootSum {
 public:
  RootSum() = default;
  static RootSum direction(const Rational& degrees, const Rational& factor = 1);  // factor · e^(i·degrees)
  static RootSum cosine(const Rational& degrees, const Rational& factor = 1);

  RootSum& add(const RootSum& other, const Rational& factor = 1);
  friend RootSum operator*(const RootSum& a, const RootSum& b);
  RootSum turned(const Rational& degrees) const;  // times e^(i·degrees)
  RootSum conjugate() const;
  RootSum power(int exponent) const;  // exponent ≥ 0

  // Nothing when the field would be too large to compute in.
  std::optional<bool> is_zero() const;
  bool is_empty() const { return terms_.empty(); }  // then it is zero
  const std::map<Rational, Rational>& terms() const { return terms_; }

 private:
  void put(const Rational& degrees, const Rational& factor);

  std::map<Rational, Rational> terms_;  // degrees in [0, 180) → coefficient, never 0; half a turn is a change of sign
};

}  // namespace prover
