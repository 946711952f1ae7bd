// Exact rational numbers. Nearly all that occur in a classroom are small, so they live in two machine words;
// whatever would overflow moves to GMP (through boost::multiprecision) and back when it fits again. A value
// never wraps and never rounds. Always in lowest terms, denominator positive.
//
// Chaining does little else than copy, compare and add whole numbers, so these stand here, where they are inlined.
#pragma once
#include <cstddef>
#include <cstdint>
#include <functional>
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
  Rational(const Rational& other) : num_(other.num_), den_(other.den_) {
    if (is_big()) big_ = copied(*other.big_);
  }
  Rational(Rational&& other) noexcept : num_(other.num_), den_(other.den_) { other.forget(); }  // leaves zero behind
  Rational& operator=(const Rational& other) {
    if (is_big() || other.is_big()) return *this = Rational(other);
    num_ = other.num_;
    den_ = other.den_;
    return *this;
  }
  Rational& operator=(Rational&& other) noexcept {
    if (this == &other) return *this;
    if (is_big()) release(big_);
    num_ = other.num_;
    den_ = other.den_;
    other.forget();
    return *this;
  }
  ~Rational() {
    if (is_big()) release(big_);
  }

  // "12", "-3/4", "22.5" or "22,5" (decimal comma), any number of digits; nothing for anything else or a zero
  // denominator.
  static std::optional<Rational> parse(std::string_view text);

  bool is_zero() const { return den_ == 1 && num_ == 0; }
  bool is_one() const { return den_ == 1 && num_ == 1; }
  bool is_integer() const { return den_ == 1 || (is_big() && big_is_integer()); }
  int sign() const { return is_big() ? big_sign() : (num_ > 0) - (num_ < 0); }
  std::string to_string() const;  // "37/2"; an integer has no denominator
  double to_double() const;
  std::optional<std::int64_t> to_int64() const;  // nothing when not an integer or too large

  Rational operator-() const {
    if (is_big()) return negated_big();
    Rational result;
    result.num_ = -num_;
    result.den_ = den_;
    return result;
  }
  Rational& operator+=(const Rational& b) {
    std::int64_t sum = 0;
    if (den_ != 1 || b.den_ != 1 || __builtin_add_overflow(num_, b.num_, &sum) || sum == smallest) return add(b);
    num_ = sum;
    return *this;
  }
  Rational& operator-=(const Rational& b) {
    std::int64_t difference = 0;
    if (den_ != 1 || b.den_ != 1 || __builtin_sub_overflow(num_, b.num_, &difference) || difference == smallest)
      return subtract(b);
    num_ = difference;
    return *this;
  }
  Rational& operator*=(const Rational& b) {
    std::int64_t product = 0;
    if (den_ != 1 || b.den_ != 1 || __builtin_mul_overflow(num_, b.num_, &product) || product == smallest)
      return multiply(b);
    num_ = product;
    return *this;
  }
  Rational& operator/=(const Rational& b);  // asserts b != 0
  friend Rational operator+(Rational a, const Rational& b) { return a += b; }
  friend Rational operator-(Rational a, const Rational& b) { return a -= b; }
  friend Rational operator*(Rational a, const Rational& b) { return a *= b; }
  friend Rational operator/(Rational a, const Rational& b) { return a /= b; }
  friend bool operator==(const Rational& a, const Rational& b) {
    return a.is_big() || b.is_big() ? big_equal(a, b) : a.num_ == b.num_ && a.den_ == b.den_;
  }
  friend bool operator<(const Rational& a, const Rational& b);
  friend bool operator>(const Rational& a, const Rational& b) { return b < a; }
  friend bool operator<=(const Rational& a, const Rational& b) { return !(b < a); }
  friend bool operator>=(const Rational& a, const Rational& b) { return !(a < b); }
  std::size_t hash() const {
    if (is_big()) return big_hash();
    const std::size_t h = std::hash<std::int64_t>{}(num_);
    return h ^ (std::hash<std::int64_t>{}(den_) + 0x9e3779b97f4a7c15U + (h << 6) + (h >> 2));
  }

 private:
  struct Big;
  // The machine form never holds the smallest int64: so negating and taking absolute values cannot overflow.
  static constexpr std::int64_t smallest = INT64_MIN;
  union {
    std::int64_t num_ = 0;
    Big* big_;  // owned; where the denominator is 0
  };
  std::int64_t den_ = 1;

  bool is_big() const { return den_ == 0; }
  void forget() {
    num_ = 0;
    den_ = 1;
  }
  static Big* copied(const Big& big);
  static void release(Big* big) noexcept;
  Big to_big() const;
  void set_big(Big&& value);  // stores small when it fits
  // What the inlined ways leave over: fractions, overflow, big numbers.
  Rational& add(const Rational& b);
  Rational& subtract(const Rational& b);
  Rational& multiply(const Rational& b);
  Rational negated_big() const;
  bool big_is_integer() const;
  int big_sign() const;
  std::size_t big_hash() const;
  static bool big_equal(const Rational& a, const Rational& b);
};

}  // namespace prover
