#include "frontend/render/prose.hpp"

#include <catch2/catch.hpp>

using namespace frontend;

TEST_CASE("a proof in sentences keeps its order and says because and so") {
  const ProofLines proof{{
      {1, "∠LKQ = ∠PQK = 52°", {"∠LKQ = ∠PQK = 52°"}, "alternate angles, KL ∥ PQ, cut by KQ", {}, false},
      {2, "∠KLQ = ∠KQL", {"∠KLQ = ∠KQL"}, "angles opposite equal sides, KL = KQ, triangle KLQ", {}, false},
      {3, "∠KLQ = 64°", {"∠KLQ = 64°"}, "angle sum of triangle KLQ", {1, 2}, false},
  }};
  CHECK(prose(proof) ==
        "First, ∠LKQ = ∠PQK = 52°, because of alternate angles (KL ∥ PQ, cut by KQ). Also, ∠KLQ = ∠KQL, because of "
        "angles opposite equal sides (KL = KQ, triangle KLQ). So ∠KLQ = 64°, because of the angle sum of triangle KLQ.");
}

TEST_CASE("what a line leads to follows its reason") {
  const ProofLines proof{{{1, "∠SKT + ∠TKU = 180°, so 5x = 175, x = 35", {"∠SKT + ∠TKU = 180°", "so 5x = 175", "x = 35"},
                           "angles on the straight line SKU, given ∠SKT = 3x", {}, true}}};
  CHECK(prose(proof) ==
        "First, ∠SKT + ∠TKU = 180°, because of angles on the straight line SKU (given ∠SKT = 3x), so 5x = 175, and "
        "therefore x = 35.");
}

TEST_CASE("a reason that is a clause follows \"because\", one about a thing gets its article") {
  const auto reason = [](const char* text) { return prose({{{1, "x", {"x"}, text, {}, false}}}); };
  CHECK(reason("alternate angles are equal, ∠K = ∠L") == "First, x, because alternate angles are equal (∠K = ∠L).");
  CHECK(reason("sides of rhombus KLMN") == "First, x, because of the sides of rhombus KLMN.");
  CHECK(reason("right angle, hypotenuse and a side equal (RHS)") ==
        "First, x, because of right angle, hypotenuse and a side equal (RHS).");
  CHECK(reason("adding angles, ∠LQP") == "First, x, by adding angles (∠LQP).");
}

TEST_CASE("no sentence starts with a symbol, whatever the reason") {
  for (const char* reason : {"given", "substituting", "", "vertical angles", "substitution"}) {
    for (const bool closing : {false, true}) {
      const ProofLines proof{{{1, "∠K = 1°", {"∠K = 1°"}, reason, {}, closing}, {2, "∠L = 1°", {"∠L = 1°"}, reason, {1}, closing}}};
      const std::string text = prose(proof);
      CHECK_FALSE(text.starts_with("∠"));
      CHECK(text.find(". ∠") == std::string::npos);
    }
  }
}
