// "Join KM" was an impossible sentence for the sketch, so no figure was found for any problem that joins two points,
// and nothing was proved that had been proved without the line.
#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

TEST_CASE("joining two points asks nothing of a figure") {
  const std::string claim = "prove: angle KLM + angle LMN + angle MNK + angle NKL = 360\n";
  CHECK(ask("convex: K, L, M, N\nadd: draw the diagonal KM\n" + claim).verdict == Verdict::proved);
  CHECK(ask("convex: K, L, M, N\njoin KM\n" + claim).verdict == Verdict::proved);
}

TEST_CASE("joining two points proves nothing by itself") {
  const Answer answer = ask("convex: K, L, M, N\nadd: join K to M\nprove: angle KLM = angle MNK\n");
  CHECK(answer.verdict == Verdict::false_claim);
}
