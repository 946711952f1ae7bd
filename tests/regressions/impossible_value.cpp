// An angle that would be negative was printed as "∠LKM + 10° = 0", and the reason of segment addition named
// the line twice ("adding lengths along MPMP").
#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

// `describe_equation` writes a negative size on the left.
TEST_CASE("an impossible size is written as a size") {
  const Answer answer = ask("triangle: KLM\nangle KLM = 100\nangle LMK = 90\nfind: angle LKM\n");
  CHECK(answer.verdict == Verdict::contradictory);
  INFO(answer.summary);
  CHECK(answer.summary.find("+ 10° = 0") == std::string::npos);
}

TEST_CASE("adding lengths names the line once") {
  const Answer answer = ask("line: K, L, M in this order\nKL = 3\nLM = 4\nfind: KM\n");
  REQUIRE(answer.verdict == Verdict::proved);
  for (const AnswerStep& step : answer.proofs[0].steps) {
    INFO(step.reason);
    CHECK(step.reason.find("KMKM") == std::string::npos);
  }
}
