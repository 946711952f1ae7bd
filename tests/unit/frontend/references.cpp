#include "frontend/document/references.hpp"

#include <catch2/catch.hpp>

using namespace frontend;

namespace {

ProofLines proof_with_uses(const std::vector<std::vector<int>>& uses) {
  ProofLines proof;
  int number = 0;
  for (const auto& of_line : uses) proof.lines.push_back({++number, "x", {"x"}, "because", of_line, false});
  return proof;
}

}  // namespace

TEST_CASE("lines that rest on the lines just above need no numbers") {
  CHECK_FALSE(references_of(proof_with_uses({{}, {}, {1, 2}})).any);
  CHECK_FALSE(references_of(proof_with_uses({{}, {1}, {2}, {3}})).any);
  CHECK_FALSE(references_of(proof_with_uses({{}, {}, {2, 1, 1}})).any);
}

TEST_CASE("a line that rests on one further up names it, and only the named lines are numbered") {
  const References references = references_of(proof_with_uses({{}, {}, {}, {1, 3}}));
  CHECK(references.any);
  CHECK(references.named[3] == std::vector<int>{1, 3});
  CHECK(references.numbered == std::vector<bool>{true, false, true, false});
}

TEST_CASE("named lines stand after the places of a reason") {
  CHECK(with_references("side, angle, side", {1, 2, 4}) == "side, angle, side, from (1), (2) and (4)");
  CHECK(with_references("substituting", {1, 3}) == "substituting (1) and (3)");
  CHECK(with_references("", {2}) == "from (2)");
  CHECK(with_references("given", {}) == "given");
}
