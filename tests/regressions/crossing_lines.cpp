// "P is where segments KL and MN cross" was read as lines that meet anywhere, so vertically opposite angles
// got eight arrangements and two answers; and a claim that is true only by the rays of one figure ended in a
// quarrel between the search and the replay checker.
#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

TEST_CASE("segments that cross have their crossing between their ends") {
  const Answer answer = ask("P is where segments KL and MN cross\nangle KPM = 40\nfind: angle LPN\n");
  CHECK(answer.verdict == Verdict::proved);
  CHECK(answer.value == "40");
}

TEST_CASE("lines that meet leave open on which side of the meeting point their points stand") {
  const Answer answer = ask("P is where lines KL and MN meet\nangle KPM = 40\nfind: angle LPN\n");
  CHECK(answer.verdict == Verdict::depends_on_figure);
}

// In a figure where the arms coincide the claim is 0 = 0; the seen positions that make it so were not in the
// proof.
TEST_CASE("the checks do not quarrel about a claim that holds in some arrangements only") {
  const Answer answer = ask("P is where lines KL and MN meet\nprove: angle KPM = angle LPN\n");
  CHECK_FALSE(answer.checks_disagree);
}

TEST_CASE("a claim that holds in some arrangements only is not proved") {
  const Answer answer =
      prove("P is where lines KL and MN meet\nprove: angle KPM = angle LPN\n", standard_catalogue());
  CHECK(answer.verdict != Verdict::proved);
}

// `cross` did not say that K, P and M are not on one line, so the rule waited for a figure.
TEST_CASE("lines that cross are two lines: vertically opposite angles are one step") {
  const Answer answer = ask("KL and MN cross at P\nprove: angle KPM = angle LPN\n");
  CHECK(answer.verdict == Verdict::proved);
  CHECK(answer.proofs.at(0).set_aside == std::vector<std::string>{"vertical-angles"});  // it is the claim itself
}
