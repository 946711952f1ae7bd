#include "frontend/command/similarly.hpp"

#include <catch2/catch.hpp>

#include "frontend/render/prose.hpp"

using frontend::reason_after;
using prover::AnswerStep;

namespace {
AnswerStep step(const char* rule, const char* reason, std::vector<std::string> rows = {"∠K = ∠L"}) {
  AnswerStep one;
  one.rule = rule;
  one.reason = reason;
  one.rows = std::move(rows);
  return one;
}
}  // namespace

TEST_CASE("the second of two steps that are alike names only what differs") {
  CHECK(reason_after(step("alternate-interior-angles", "alternate angles, PQ ∥ LM, cut by KL"),
                     step("alternate-interior-angles", "alternate angles, PQ ∥ LM, cut by KM")) == "similarly, cut by KM");
  CHECK(reason_after(step("isosceles-base-angles", "angles opposite equal sides, KL = KM, triangle KLM"),
                     step("isosceles-base-angles", "angles opposite equal sides, RS = RT, triangle RST")) ==
        "similarly, RS = RT, triangle RST");
}

TEST_CASE("another rule, short words of an examiner, and lines of another form keep their reason") {
  const char* const reason = "alternate angles, PQ ∥ LM, cut by KM";
  CHECK(reason_after(step("corresponding-angles", "corresponding angles, PQ ∥ LM, cut by KL"),
                     step("alternate-interior-angles", reason)) == reason);
  CHECK(reason_after(step("alternate-interior-angles", "alternate angles are equal"),
                     step("alternate-interior-angles", "alternate angles are equal")) == "alternate angles are equal");
  CHECK(reason_after(step("alternate-interior-angles", "alternate angles, PQ ∥ LM, cut by KL"),
                     step("alternate-interior-angles", reason, {"∠K = ∠L + ∠M", "= 40°"})) == reason);
  CHECK(reason_after(step("substitution", "substituting, given KL = KM"), step("substitution", "substituting, given KL = LM")) ==
        "substituting, given KL = LM");
}

TEST_CASE("in sentences: similarly, and a construction or a letter is said without a because") {
  const frontend::ProofLines proof{{
      {1, "Join KM", {"Join KM"}, "construction", {}, false},
      {2, "Let ∠K = x", {"Let ∠K = x"}, "for short", {}, false},
      {3, "∠P = ∠Q", {"∠P = ∠Q"}, "alternate angles, PQ ∥ LM, cut by KL", {}, false},
      {4, "∠R = ∠S", {"∠R = ∠S"}, "similarly, cut by KM", {}, false},
  }};
  CHECK(frontend::prose(proof) ==
        "Join KM. Let ∠K = x. Then ∠P = ∠Q, because of alternate angles (PQ ∥ LM, cut by KL). Similarly, ∠R = ∠S (cut by KM).");
}
