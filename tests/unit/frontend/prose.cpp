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
