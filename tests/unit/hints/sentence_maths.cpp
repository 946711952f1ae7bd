// The mathematics found in sentences for pupils: numbers, names and relations, and none in plain words.
#include <catch2/catch.hpp>

#include "prover/hints/sentence_maths.hpp"

using namespace prover;

namespace {

const Names letters{{"K", "L", "M", "N", "A", "P1"}};

std::vector<std::string> relations(const char* sentence) { return maths_of(sentence, letters).relations; }

}  // namespace

TEST_CASE("a sentence names angles and segments of the figure, and capitals of other words are none", "[hints][maths]") {
  const SentenceMaths maths = maths_of("Take KL. A pair of angles: one is ∠KLM, and SAS is a fact about M.", letters);
  CHECK(maths.quantities == std::vector<std::string>{"KL", "∠KLM"});
  CHECK(maths.points == std::vector<std::string>{"K", "L", "A", "M"});
  CHECK(maths.relations.empty());
  CHECK(maths.numbers.empty());
}

TEST_CASE("a chain is read as each two of its sides", "[hints][maths]") {
  CHECK(relations("∠KLM = ∠LKN = 64° (alternate angles, KL ∥ MN, cut by KM)") ==
        std::vector<std::string>{"∠KLM = ∠LKN", "∠KLM = 64°", "∠LKN = 64°", "KL ∥ MN"});
  CHECK(relations("so 2∠KLM = 128°") == std::vector<std::string>{"2∠KLM = 128°"});
}

TEST_CASE("numbers are sizes, unless they count or divide", "[hints][maths]") {
  const SentenceMaths maths = maths_of("∠KLM = (180° − 2∠LKM) ÷ 2 = 18½°", letters);
  REQUIRE(maths.numbers.size() == 4);
  CHECK(maths.numbers[0].value == Rational(180));
  CHECK(maths.numbers[1].factor);
  CHECK(maths.numbers[2].factor);
  CHECK(maths.numbers[3].value == Rational(37) / Rational(2));
  CHECK_FALSE(maths.numbers[3].factor);
}

TEST_CASE("mixed numbers are one number each", "[hints][maths]") {
  const SentenceMaths maths = maths_of("so ∠KLM = 25 5/7° and ∠LKM = 3/7°", letters);
  REQUIRE(maths.numbers.size() == 2);
  CHECK(maths.numbers[0].value == Rational(180) / Rational(7));
  CHECK(maths.numbers[1].value == Rational(3) / Rational(7));
}
