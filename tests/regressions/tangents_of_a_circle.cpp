// "UW touches circle V at W" and "UX touches circle V at X" did not make VW and VX radii of one circle unless a third
// sentence listed the points of the circle; the figures drawn had them equal all the same.
#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

TEST_CASE("two lines that touch one circle touch it at equal radii") {
  const Answer answer = ask(
      "tangent: line UW touches circle V at W\ntangent: line UX touches circle V at X\nangle WUX = 80\nfind: angle UVW\n");
  REQUIRE(answer.verdict == Verdict::proved);
  CHECK(answer.value == "50");
}

TEST_CASE("a tangent's point is on the circle whose other points are listed") {
  const Answer answer = ask("circle: centre V through W, Y\ntangent: line UX touches circle V at X\nprove: VX = VY\n");
  CHECK(answer.verdict == Verdict::proved);
}

TEST_CASE("circles with two centres have two radii") {
  const Answer answer = ask(
      "tangent: line UW touches circle V at W\ntangent: line UX touches circle Y at X\ntriangle: UWX\nprove: VW = YX\n");
  CHECK(answer.verdict == Verdict::false_claim);
}
