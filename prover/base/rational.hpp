// Exact rational numbers. Nearly all that occur in a classroom are small, so they live in two machine words;
// whatever would overflow moves to GMP (through boost::multiprecision) and back when it fits again. A value
// never wraps and never rounds. Always in lowest terms, denominator positive.
#pragma once
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace prover {

class Rational {
 public:
  Rational() = default;
  Rational(std::int64_t n);  // implicit: integers are rationals
  Rational(int n) : num_(n) {}
  Rational(std::int64_t n, std::int64_t d);  // asserts d != 0
  Rational(const Rational& other);
  Rational(Rational&& other) noexcept;  // leaves zero behind
  Rational& operator=(const Rational& other);
  Rational& operator=(Rational&& other) noexcept;

  // "12", "-3/4", "22.5" or "22,5" (decimal comma), any number of digits; nothing for anything else or a zero
  // denominator.
  static std::optional<Rational> parse(std::string_view text);

  bool is_zero() const { return !big_ && num_ == 0; }
  bool is_one() const { return !big_ && num_ == 1 && den_ == 1; }
  bool is_integer() const;
  int sign() const;
  std::string to_string() const;  // "37/2"; an integer has no denominator
  double to_double() const;
  std::optional<std::int64_t> to_int64() const;  // nothing when not an integer or too large

  Rational operator-() const;
  Rational& operator+=(const Rational& b);
  Rational& operator-=(const Rational& b);
  Rational& operator*=(const Rational& b);
  Rational& operator/=(const Rational& b);  // asserts b != 0
  friend Rational operator+(Rational a, const Rational& b) { return a += b; }
  friend Rational operator-(Rational a, const Rational& b) { return a -= b; }
  friend Rational operator*(Rational a, const Rational& b) { return a *= b; }
  friend Rational operator/(Rational a, const Rational& b) { return a /= b; }
  friend bool operator==(const Rational& a, const Rational& b);
  friend bool operator<(const Rational& a, const Rational& b);
  friend bool operator>(const Rational& a, const Rational& b) { return b < a; }
  friend bool operator<=(const Rational& a, const Rational& b) { return !(b < a); }
  friend bool operator>=(const Rational& a, const Rational& b) { return !(a < b); }
  std::size_t hash() const;

 private:
  struct Big;
  struct Release {  // lets the small case be inlined while Big is not complete
    void operator()(Big* big) const;
  };
  std::int64_t num_ = 0;
  std::int64_t den_ = 1;
  std::unique_ptr<Big, Release> big_;  // when set, it alone holds the value
  Big to_big() const;
  void set_big(Big&& value);  // stores small when it fits
};

}  // namespace prover
