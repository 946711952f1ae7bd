#include "frontend/render/two_column.hpp"

#include <catch2/catch.hpp>

#include "frontend/render/width.hpp"

using namespace frontend;

namespace {

ProofLine line(int number, std::vector<std::string> rows, std::string reason, std::vector<int> uses = {},
               bool closing = false) {
  return {number, rows.front(), std::move(rows), std::move(reason), std::move(uses), closing};
}

}  // namespace

TEST_CASE("the width of a text is what stands on the screen, not its bytes") {
  CHECK(display_width("") == 0);
  CHECK(display_width("∠KLM = 40°") == 10);
  CHECK(display_width("KL\xCC\x82M") == 3);  // a combining hat
  CHECK(display_width("角") == 2);
  CHECK(display_width("\xFF") == 1);
  CHECK(padded("∥", 3) == "∥  ");
}

TEST_CASE("texts break at spaces, and a long word stands alone") {
  CHECK(wrapped("one two three", 7) == std::vector<std::string>{"one two", "three"});
  CHECK(wrapped("incomprehensible it is", 5) == std::vector<std::string>{"incomprehensible", "it is"});
  CHECK(wrapped("", 5) == std::vector<std::string>{""});
  CHECK(wrapped_at_commas("line K, given a = 3x + 12, b", 20) == std::vector<std::string>{"line K,", "given a = 3x + 12, b"});
  CHECK(wrapped_at_commas("one two three, four", 8) == std::vector<std::string>{"one two", "three,", "four"});
}

TEST_CASE("chains stand one row below the other, with the equals signs aligned") {
  const ProofLines proof{{line(1, {"∠LKQ = ∠PQK = 52°"}, "alternate angles, KL ∥ PQ, cut by KQ"),
                          line(2, {"∠KLQ = (180° − 52°) ÷ 2", "= 64°"}, "angle sum of triangle KLQ")}};
  CHECK(two_column_lines(proof, 98) == std::vector<std::string>{
                                           "∠LKQ = ∠PQK = 52°         alternate angles, KL ∥ PQ, cut by KQ",
                                           "∠KLQ = (180° − 52°) ÷ 2   angle sum of triangle KLQ",
                                           "     = 64°",
                                       });
}

TEST_CASE("the closing claim has its sign, and named lines their numbers") {
  const ProofLines proof{{line(1, {"a = b"}, "given"), line(2, {"c = d"}, "given"),
                          line(3, {"a = e"}, "substituting", {1}, true)}};
  CHECK(two_column_lines(proof, 98) == std::vector<std::string>{
                                           "(1)  a = b     given",
                                           "     c = d     given",
                                           "     ∴ a = e   substituting (1)",
                                       });
}

TEST_CASE("a long reason is broken inside its column, and a wide claim stands above its reason") {
  const std::string wide(70, 'x');
  const ProofLines proof{{line(1, {"a = b"}, "one two three four five six seven eight nine ten"), line(2, {wide}, "why")}};
  CHECK(two_column_lines(proof, 34) == std::vector<std::string>{
                                           "a = b   one two three four five",
                                           "        six seven eight nine ten",
                                           wide,
                                           "        why",
                                       });
}
