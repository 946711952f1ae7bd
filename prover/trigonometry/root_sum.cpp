#include "prover/trigonometry/root_sum.hpp"

#include <flint/fmpz_poly.h>

#include <numeric>
#include <string>

#include "prover/trigonometry/degrees.hpp"

namespace prover {

namespace {

// A polynomial of FLINT with the lifetime of a value.
struct Polynomial {
  fmpz_poly_t p;
  Polynomial() { fmpz_poly_init(p); }
  ~Polynomial() { fmpz_poly_clear(p); }
  Polynomial(const Polynomial&) = delete;
  Polynomial& operator=(const Polynomial&) = delete;
};

// Beyond this the reduction would take longer than an answer may.
constexpr std::int64_t kLargestOrder = 50'000;

}  // namespace

void RootSum::put(const Rational& degrees, const Rational& factor) {
  if (factor.is_zero()) return;
  Rational rest = within(degrees, 360);
  const bool half_turn = rest >= Rational(180);
  if (half_turn) rest -= 180;
  Rational& coefficient = terms_[rest];
  coefficient += half_turn ? -factor : factor;
  if (coefficient.is_zero()) terms_.erase(rest);
}

RootSum RootSum::direction(const Rational& degrees, const Rational& factor) {
  RootSum sum;
  sum.put(degrees, factor);
  return sum;
}

RootSum RootSum::cosine(const Rational& degrees, const Rational& factor) {
  RootSum sum;
  sum.put(degrees, factor / 2);
  sum.put(-degrees, factor / 2);
  return sum;
}

RootSum& RootSum::add(const RootSum& other, const Rational& factor) {
  for (const auto& [degrees, coefficient] : other.terms_) put(degrees, coefficient * factor);
  return *this;
}

RootSum operator*(const RootSum& a, const RootSum& b) {
  RootSum product;
  for (const auto& [x, c] : a.terms_)
    for (const auto& [y, d] : b.terms_) product.put(x + y, c * d);
  return product;
}

RootSum RootSum::turned(const Rational& degrees) const {
  RootSum turned;
  for (const auto& [x, c] : terms_) turned.put(x + degrees, c);
  return turned;
}

RootSum RootSum::conjugate() const {
  RootSum mirrored;
  for (const auto& [x, c] : terms_) mirrored.put(-x, c);
  return mirrored;
}

RootSum RootSum::power(int exponent) const {
  RootSum result = direction(0);
  for (int i = 0; i < exponent; ++i) result = result * *this;
  return result;
}

std::optional<bool> RootSum::is_zero() const {
  if (terms_.empty()) return true;
  if (terms_.size() == 1) return false;  // a root of unity times a number that is not 0
  // All are powers of e^(2πi/n); coefficients are made whole.
  std::int64_t n = 1;
  Rational scale = 1;
  for (const auto& [degrees, c] : terms_) {
    const auto order = denominator(degrees / 360).to_int64();
    if (!order || *order > kLargestOrder) return std::nullopt;
    n = std::lcm(n, *order);
    if (n > kLargestOrder) return std::nullopt;
    scale *= denominator(c * scale);
  }
  Polynomial sum, cyclotomic, rest;
  fmpz_t whole;
  fmpz_init(whole);
  for (const auto& [degrees, c] : terms_) {
    const std::int64_t exponent = *(degrees / 360 * Rational(n)).to_int64();
    fmpz_set_str(whole, (c * scale).to_string().c_str(), 10);
    fmpz_poly_set_coeff_fmpz(sum.p, exponent, whole);
  }
  fmpz_clear(whole);
  fmpz_poly_cyclotomic(cyclotomic.p, static_cast<ulong>(n));
  fmpz_poly_rem(rest.p, sum.p, cyclotomic.p);
  return fmpz_poly_is_zero(rest.p) != 0;
}

}  // namespace prover
