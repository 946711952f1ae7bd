#include "prover/base/rational.hpp"

#include <catch2/catch.hpp>
#include <cstdint>
#include <limits>
#include <utility>

using prover::Rational;

namespace {

constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t smallest = std::numeric_limits<std::int64_t>::min();

Rational r(const char* text) {
  return Rational::parse(text).value();
}

}  // namespace

TEST_CASE("a rational number is read as a person writes it") {
  struct Row {
    const char* written;
    const char* kept;
  };
  const Row row = GENERATE(Row{"12", "12"}, Row{"-3/4", "-3/4"}, Row{"22.5", "45/2"}, Row{"22,5", "45/2"},
                           Row{"6/4", "3/2"}, Row{"007", "7"}, Row{"0.0", "0"}, Row{"-0", "0"},
                           Row{"0/5", "0"}, Row{"010/020", "1/2"}, Row{"0.010", "1/100"});
  CHECK(r(row.written).to_string() == row.kept);
}

TEST_CASE("what is not a number is refused") {
  const char* text = GENERATE("", "-", "1/0", "1/", "/2", "1.", ".5", "1.2.3", "1/2/3", "--1", "+1", "1e5",
                              " 1", "x", "1/-2");
  CHECK_FALSE(Rational::parse(text));
}

TEST_CASE("arithmetic is exact and in lowest terms") {
  CHECK(Rational(1, 3) + Rational(1, 6) == Rational(1, 2));
  CHECK(Rational(1, 3) - Rational(1, 3) == Rational(0));
  CHECK(Rational(2, 3) * Rational(3, 4) == Rational(1, 2));
  CHECK(Rational(540) / Rational(7) == Rational(540, 7));
  CHECK(Rational(1) / Rational(-2) == Rational(-1, 2));
  CHECK(-Rational(3, -6) == Rational(1, 2));
  CHECK(Rational(-7, 2) < Rational(-3));
  CHECK_FALSE(Rational(1, 3) < Rational(1, 3));
}

TEST_CASE("what overflows a machine word neither wraps nor rounds, and comes back when it fits") {
  const Rational more = Rational(largest) + 1;
  CHECK(more.to_string() == "9223372036854775808");
  CHECK_FALSE(more.to_int64());
  CHECK((more - 1).to_int64() == largest);
  CHECK(more - 1 == Rational(largest));
  CHECK((more - 1).hash() == Rational(largest).hash());
  CHECK(Rational(largest) * Rational(largest) / Rational(largest) == Rational(largest));
  CHECK(Rational(1, largest) + Rational(1, largest - 1) > Rational(1, largest));
  CHECK(Rational(largest - 1, largest) < Rational(largest, largest - 1));
}

TEST_CASE("the smallest machine word is a number like any other") {
  CHECK(Rational(smallest).to_string() == "-9223372036854775808");
  CHECK(Rational(smallest).to_int64() == smallest);
  CHECK(-Rational(smallest) == Rational(largest) + 1);
  CHECK(Rational(smallest, smallest) == Rational(1));
  CHECK(Rational(smallest, 2) == Rational(smallest / 2));
  CHECK(Rational(1, smallest).sign() == -1);
  CHECK(Rational(smallest) == Rational(-largest) - 1);
}

TEST_CASE("a thousand digits are kept, all of them") {
  const std::string digits(1000, '7');
  CHECK(r(digits.c_str()).to_string() == digits);
  CHECK((r(digits.c_str()) - r(digits.c_str())).is_zero());
  CHECK(r(("1/" + digits).c_str()) * r(digits.c_str()) == Rational(1));
}

TEST_CASE("a number that was moved from is zero") {
  Rational a = r("99999999999999999999/7");
  const Rational b = std::move(a);
  CHECK(a.is_zero());  // NOLINT: this is the promise
  CHECK(b.to_string() == "99999999999999999999/7");
}

TEST_CASE("machine words and big numbers agree") {
  // The same sums near the edge of the fast path and, shifted far out, in GMP.
  const Rational far = r("1000000000000000000000000");
  for (std::int64_t n = -20; n <= 20; ++n) {
    for (std::int64_t d = 1; d <= 12; ++d) {
      const Rational a(n, d), b(d, 13);
      CHECK((a * far + b * far) / far == a + b);
      CHECK((a * far) * b == (a * b) * far);
      CHECK((a * far < b * far) == (a < b));
    }
  }
}
