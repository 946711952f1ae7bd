// "M lies on the circle" put M on some circle round the same centre, so the angle at M was called undetermined.
#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

TEST_CASE("the circle is the one whose points were named before") {
  const Answer answer = ask(
      "K, L lie on a circle with centre O\nM lies on the circle\nangle KML = 40\n"
      "O and M are on the same side of KL\nfind: angle KOL\n");
  CHECK(answer.verdict == Verdict::proved);
  CHECK(answer.value == "80");
}

TEST_CASE("two circles round one centre stay two") {
  const Answer answer = ask(
      "circle: centre O through K, L\ncircle: centre O through M, N\ntriangle: KML\nangle KML = 40\n"
      "sides: O and M on the same side of KL\nfind: angle KOL\n");
  CHECK(answer.verdict != Verdict::proved);
}
