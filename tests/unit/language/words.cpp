#include <catch2/catch.hpp>

#include "prover/language/problem_text.hpp"

using prover::nearest_word;

TEST_CASE("the nearest word is near") {
  const std::vector<std::string> words = {"parallel", "perpendicular", "triangle", "angle"};
  CHECK(nearest_word("paralel", words) == "parallel");
  CHECK(nearest_word("Paralell", words) == "parallel");
  CHECK(nearest_word("agnle", words) == "angle");
  CHECK_FALSE(nearest_word("kettle", {"parallel", "perpendicular"}));
  CHECK_FALSE(nearest_word("x", words));
  CHECK_FALSE(nearest_word("", words));
  CHECK_FALSE(nearest_word(std::string(100'000, 'a'), words));
}
