// Figures agreed that K and R lie on one ray from Q, and not on which of the two is nearer. The chain took the ray for
// seen, the proof could cite no order for it, and the replay refused it: "our own checks disagree". Each order is a case.
#include "tests/problems/asked.hpp"

using namespace prover;

TEST_CASE("points on one ray, either of which may be the nearer, are told apart by cases", "[regression]") {
  std::string text =
      "triangle: PQR\nline: P, L, Q in this order\nline: P, M, R in this order\n"
      "circle: centre O through K, L, M (in any order)\ntangent: line QK touches circle O at K\n"
      "tangent: line PL touches circle O at L\ncollinear: K, Q, R\nangle PQR = 60\nfind: angle PLK\n";
  const Answer open = asked::ask(text);
  CHECK_FALSE(open.checks_disagree);
  // Its twin says which order it is.
  text.replace(text.find("collinear: K, Q, R"), 18, "line: Q, K, R in this order");
  const Answer said = asked::ask(text);
  CHECK(said.verdict == Verdict::proved);
  CHECK(said.value == "120");
}
