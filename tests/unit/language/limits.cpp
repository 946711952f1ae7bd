#include <catch2/catch.hpp>
#include <random>

#include "tests/unit/language/understood.hpp"

using namespace prover;

TEST_CASE("what is no text is told once") {
  CHECK(mistakes(std::string("KL = KM\n\0\0\0 = 5", 15)).size() == 1);
  std::string bytes;
  std::mt19937 random(7);
  for (int i = 0; i < 20'000; ++i) bytes += static_cast<char>(random() % 256);
  CHECK(mistakes(bytes).size() == 1);
  CHECK(mistakes(std::string(1'000'001, 'x')).size() == 1);
}

TEST_CASE("many mistakes are counted, not all shown") {
  std::string text;
  for (int i = 0; i < 200; ++i) text += "nonsense here\n";
  const auto found = mistakes(text);
  REQUIRE(found.size() == 51);
  CHECK(found.back().message == "and 150 more");
}

TEST_CASE("brackets may be nested, within reason") {
  CHECK(understood("angle KLM = " + std::string(50, '(') + "x" + std::string(50, ')')) == "∠KLM = x°");
  CHECK(understood("angle KLM = " + std::string(51, '(') + "x" + std::string(51, ')')) ==
        "mistake: brackets are nested more than 50 deep");
  CHECK(understood("angle KLM = " + std::string(100'000, '(')).starts_with("mistake: "));
  std::string doubled = "angle KLM = ";
  for (int i = 0; i < 9'000; ++i) doubled += "half ";
  CHECK(understood(doubled + "angle LMN").starts_with("∠KLM = ("));
}

TEST_CASE("numbers are exact, however long") {
  const std::string digits = "1" + std::string(999, '0');
  CHECK(understood("angle KLM = " + digits + "1/" + digits + "0 + x") ==
        "∠KLM = (" + Rational::parse(digits + "1/" + digits + "0")->to_string() + " + x)°");
}

TEST_CASE("two thousand points and no more") {
  const auto figure = [](int points) {
    std::string text;
    for (int i = 0; i + 1 < points; ++i)
      text += "P" + std::to_string(i) + "P" + std::to_string(i + 1) + " = 5\n";
    return text + "find: x";
  };
  CHECK(mistakes(figure(2'000)).empty());
  const auto found = mistakes(figure(2'001));
  REQUIRE(found.size() == 1);
  CHECK(found[0].message == "the text names more than 2000 points");
}
