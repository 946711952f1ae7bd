#include "prover/base/rational.hpp"

#include <boost/multiprecision/gmp.hpp>
#include <cassert>
#include <functional>
#include <limits>
#include <numeric>
#include <utility>

namespace prover {

using boost::multiprecision::mpq_rational;
using boost::multiprecision::mpz_int;

struct Rational::Big {
  mpq_rational value;
};

namespace {

constexpr std::int64_t smallest = std::numeric_limits<std::int64_t>::min();

bool fits(const mpz_int& n) {
  return n > mpz_int(smallest) && n <= mpz_int(std::numeric_limits<std::int64_t>::max());
}

std::int64_t common_divisor(std::int64_t a, std::int64_t b) {
  return std::gcd(a, b);
}

struct Small {
  std::int64_t num, den;
};

std::optional<Small> multiply_small(std::int64_t an, std::int64_t ad, std::int64_t bn, std::int64_t bd) {
  if (ad == 1 && bd == 1) {  // nearly always
    Small result{0, 1};
    if (__builtin_mul_overflow(an, bn, &result.num) || result.num == smallest) return std::nullopt;
    return result;
  }
  // Cross-reduction first keeps the products as small as they can be, and the result in lowest terms.
  const std::int64_t g = common_divisor(an, bd), h = common_divisor(bn, ad);
  Small result{};
  if (__builtin_mul_overflow(an / g, bn / h, &result.num) ||
      __builtin_mul_overflow(ad / h, bd / g, &result.den) || result.num == smallest) {
    return std::nullopt;
  }
  return result;
}

std::optional<Small> add_small(std::int64_t an, std::int64_t ad, std::int64_t bn, std::int64_t bd) {
  if (ad == 1 && bd == 1) {
    Small result{0, 1};
    if (__builtin_add_overflow(an, bn, &result.num) || result.num == smallest) return std::nullopt;
    return result;
  }
  const std::int64_t g = common_divisor(ad, bd);
  std::int64_t left = 0, right = 0, num = 0, den = 0;
  if (__builtin_mul_overflow(an, bd / g, &left) || __builtin_mul_overflow(bn, ad / g, &right) ||
      __builtin_add_overflow(left, right, &num) || num == smallest ||
      __builtin_mul_overflow(ad, bd / g, &den)) {
    return std::nullopt;
  }
  const std::int64_t h = common_divisor(num, den);
  return Small{num / h, den / h};
}

bool all_digits(std::string_view text) {
  if (text.empty()) return false;
  for (const char c : text) {
    if (c < '0' || c > '9') return false;
  }
  return true;
}

// GMP reads a leading zero as octal; what a person writes is decimal.
mpz_int decimal(std::string_view digits) {
  const std::size_t first = digits.find_first_not_of('0');
  return first == std::string_view::npos ? mpz_int(0) : mpz_int(std::string(digits.substr(first)));
}

}  // namespace

Rational::Big* Rational::copied(const Big& big) {
  return new Big(big);
}

void Rational::release(Big* big) noexcept {
  delete big;
}

Rational::Rational(std::int64_t n) : num_(n) {
  if (n == smallest) set_big(Big{mpq_rational(n)});
}

Rational::Rational(std::int64_t n, std::int64_t d) {
  assert(d != 0 && "a rational number has a denominator that is not zero");
  if (n == smallest || d == smallest) {
    set_big(Big{mpq_rational(mpz_int(n)) / mpq_rational(mpz_int(d))});
    return;
  }
  if (d < 0) {
    n = -n;
    d = -d;
  }
  const std::int64_t g = common_divisor(n, d);
  num_ = n / g;
  den_ = d / g;
}

Rational::Big Rational::to_big() const {
  return is_big() ? *big_ : Big{mpq_rational(mpz_int(num_), mpz_int(den_))};
}

void Rational::set_big(Big&& value) {
  const mpz_int n = boost::multiprecision::numerator(value.value);
  const mpz_int d = boost::multiprecision::denominator(value.value);
  Big* const old = is_big() ? big_ : nullptr;
  if (fits(n) && fits(d)) {
    num_ = static_cast<std::int64_t>(n);
    den_ = static_cast<std::int64_t>(d);
  } else {
    big_ = new Big(std::move(value));
    den_ = 0;
  }
  delete old;
}

std::optional<Rational> Rational::parse(std::string_view text) {
  const bool negative = text.starts_with('-');
  if (negative) text.remove_prefix(1);
  mpz_int num, den = 1;
  if (const std::size_t slash = text.find('/'); slash != std::string_view::npos) {
    const std::string_view top = text.substr(0, slash), bottom = text.substr(slash + 1);
    if (!all_digits(top) || !all_digits(bottom)) return std::nullopt;
    num = decimal(top);
    den = decimal(bottom);
  } else if (const std::size_t point = text.find_first_of(".,"); point != std::string_view::npos) {
    const std::string_view whole = text.substr(0, point), part = text.substr(point + 1);
    if (!all_digits(whole) || !all_digits(part)) return std::nullopt;
    num = decimal(std::string(whole) + std::string(part));
    den = boost::multiprecision::pow(mpz_int(10), static_cast<unsigned>(part.size()));
  } else {
    if (!all_digits(text)) return std::nullopt;
    num = decimal(text);
  }
  if (den == 0) return std::nullopt;
  if (negative) num = -num;
  Rational result;
  result.set_big(Big{mpq_rational(num, den)});
  return result;
}

bool Rational::big_is_integer() const {
  return boost::multiprecision::denominator(big_->value) == 1;
}

int Rational::big_sign() const {
  return big_->value.sign();
}

std::string Rational::to_string() const {
  if (is_big()) return big_->value.str();
  return den_ == 1 ? std::to_string(num_) : std::to_string(num_) + "/" + std::to_string(den_);
}

double Rational::to_double() const {
  if (is_big()) return static_cast<double>(big_->value);
  return static_cast<double>(num_) / static_cast<double>(den_);
}

std::optional<std::int64_t> Rational::to_int64() const {
  if (den_ == 1) return num_;
  // The one integer that fits an int64 and yet is kept big.
  if (is_big() && big_is_integer() && boost::multiprecision::numerator(big_->value) == mpz_int(smallest))
    return smallest;
  return std::nullopt;
}

Rational Rational::negated_big() const {
  Rational result;
  result.set_big(Big{mpq_rational(-big_->value)});
  return result;
}

Rational& Rational::add(const Rational& b) {
  if (!is_big() && !b.is_big()) {
    if (const auto sum = add_small(num_, den_, b.num_, b.den_)) {
      num_ = sum->num;
      den_ = sum->den;
      return *this;
    }
  }
  set_big(Big{mpq_rational(to_big().value + b.to_big().value)});
  return *this;
}

Rational& Rational::subtract(const Rational& b) {
  if (!is_big() && !b.is_big()) {
    if (const auto difference = add_small(num_, den_, -b.num_, b.den_)) {
      num_ = difference->num;
      den_ = difference->den;
      return *this;
    }
  }
  set_big(Big{mpq_rational(to_big().value - b.to_big().value)});
  return *this;
}

Rational& Rational::multiply(const Rational& b) {
  if (!is_big() && !b.is_big()) {
    if (const auto product = multiply_small(num_, den_, b.num_, b.den_)) {
      num_ = product->num;
      den_ = product->den;
      return *this;
    }
  }
  set_big(Big{mpq_rational(to_big().value * b.to_big().value)});
  return *this;
}

Rational& Rational::operator/=(const Rational& b) {
  assert(!b.is_zero() && "nothing is divided by zero");
  if (!is_big() && !b.is_big()) {
    const std::int64_t flip = b.num_ < 0 ? -1 : 1;
    if (const auto quotient = multiply_small(num_, den_, flip * b.den_, flip * b.num_)) {
      num_ = quotient->num;
      den_ = quotient->den;
      return *this;
    }
  }
  set_big(Big{mpq_rational(to_big().value / b.to_big().value)});
  return *this;
}

bool Rational::big_equal(const Rational& a, const Rational& b) {
  return a.is_big() && b.is_big() && a.big_->value == b.big_->value;
}

bool operator<(const Rational& a, const Rational& b) {
  if (!a.is_big() && !b.is_big()) {
    std::int64_t left = 0, right = 0;
    if (!__builtin_mul_overflow(a.num_, b.den_, &left) && !__builtin_mul_overflow(b.num_, a.den_, &right)) {
      return left < right;
    }
  }
  return a.to_big().value < b.to_big().value;
}

std::size_t Rational::big_hash() const {
  return std::hash<std::string>{}(big_->value.str());
}

}  // namespace prover
