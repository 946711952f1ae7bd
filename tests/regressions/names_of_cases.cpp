// Two cases of one statement bore the same name, because one position was taken that only some other figures lack.
#include <set>

#include "tests/problems/asked.hpp"

using namespace prover;

TEST_CASE("cases of one statement have names of their own") {
  // Three knots on a hoop, the angle at its centre: Euclid III.20, where the lath from the corner may pass the centre on
  // either side or run outside.
  const Answer answer = asked::ask(
      "circle: centre O through K, L, M\ntriangle: OKL\nsides: O and M on the same side of KL\n"
      "prove: angle KOL = 2 angle KML\n");
  CHECK(answer.verdict == Verdict::proved);
  CHECK(answer.cases.size() > 1);
  std::set<std::string> names;
  for (const AnswerCase& one : answer.cases) {
    CHECK_FALSE(one.name.empty());
    CHECK(names.insert(one.name).second);
  }
}
