#include <catch2/catch.hpp>

#include "tests/unit/language/understood.hpp"

using namespace prover;

TEST_CASE("an unknown word gets the nearest known one") {
  struct Row {
    const char* written;
    const char* word;
    const char* nearest;
  };
  const std::vector<Row> rows = {{"KL is paralel to MN", "paralel", "\"parallel\""},
                                 {"triangel KLM", "triangel", "\"triangle\""},
                                 {"M is the midpiont of KL", "midpiont", "\"midpoint\""},
                                 {"KLM is an isoceles triangle", "isoceles", "\"isosceles\""},
                                 {"KL is perpendiculer to MN", "perpendiculer", "\"perpendicular\""}};
  for (const Row& row : rows) {
    INFO(row.written);
    const std::string text = row.written;
    const auto found = mistakes(text + "\nfind: x");
    REQUIRE(found.size() == 1);
    CHECK(found[0].way_out == row.nearest);
    CHECK(text.substr(found[0].span.begin, found[0].span.end - found[0].span.begin) == row.word);
  }
}

TEST_CASE("all mistakes of a text are told at once, in its order") {
  const auto found = mistakes("triangel KLM\nangle KLK = 3\nKL = KM\nangle KLM =\nfind: x");
  REQUIRE(found.size() == 3);
  CHECK(found[0].span.begin < found[1].span.begin);
  CHECK(found[1].message == "angle KLK repeats a letter");
  CHECK(found[2].message == "something is missing after \"=\"");
}

TEST_CASE("a sentence that is not understood is never skipped") {
  for (const char* text :
       {"The cat sat on the mat", "KL = KM quickly", "Hello", "KLM", "42", "= = =", "angle", "KL is", "(((",
        "KL =", "and and", "Given that", "with", "In the", "triangle"}) {
    INFO(text);
    CHECK(understood(text).starts_with("mistake: "));
  }
}

TEST_CASE("vague words ask, with sentences to paste that answer") {
  const auto trapezium = mistakes("KLMN is a trapezium\nfind: x");
  REQUIRE(trapezium.size() == 1);
  CHECK(trapezium[0].way_out ==
        "write \"KLMN is a trapezium with KL ∥ NM\" or \"KLMN is a trapezium with LM ∥ KN\"");
  const auto kite = mistakes("KLMN is a kite\nfind: x");
  REQUIRE(kite.size() == 1);
  CHECK(kite[0].way_out == "write \"KLMN is a kite with KL = KN\" or \"KLMN is a kite with LK = LM\"");
  const auto right = mistakes("KLM is a right-angled triangle\nfind: x");
  REQUIRE(right.size() == 1);
  CHECK(right[0].way_out == "write \"triangle KLM is right-angled at K\", or at L or M");
}

TEST_CASE("points are in one order only") {
  CHECK(understood("line: K, L, M in this order; line: M, L, K in this order") != "");
  CHECK(understood("line: K, L, M in this order; K lies between L and M") ==
        "mistake: K cannot be between L and M: it was said that L is in the middle");
  CHECK(understood("line: K, L, M, N in this order; line: K, N, M in this order").starts_with("mistake: "));
}

TEST_CASE("a figure has as many corners as its name says") {
  CHECK(understood("regular pentagon KLMN") == "mistake: a pentagon has 5 corners; KLMN has 4");
  CHECK(understood("triangle KLMN") == "mistake: a triangle has 3 corners; KLMN has 4");
  CHECK(understood("square KLMK") == "mistake: KLMK names a corner twice");
  CHECK(understood("KK = 5").starts_with("mistake: a line or segment has two different ends"));
}

TEST_CASE("points are capital letters") {
  const auto found = mistakes("angle klm = 40\nfind: x");
  REQUIRE(found.size() == 1);
  CHECK(found[0].way_out == "\"KLM\"");
}

TEST_CASE("the bisector of an exterior angle needs an angle with letters, and is not taken for the interior one") {
  const auto found = mistakes("triangle: KLM\nKQ bisects the exterior angle at K\nfind: angle QKM");
  REQUIRE_FALSE(found.empty());
  CHECK(found[0].message.find("exterior angle at K") != std::string::npos);
  CHECK(mistakes("triangle: KLM\nKQ bisects angle K\nfind: angle QKM").empty());
  CHECK(mistakes("triangle: KLM\nLK is produced to P\nKQ bisects angle PKM\nfind: angle QKM").empty());
  CHECK(mistakes("triangle: KLM\nthe exterior angle at K = 100\nfind: angle KLM").empty());
}
