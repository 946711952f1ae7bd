// What the law of sines certifies, and what it must not. Values of angles are those of published problems or of textbook
// trigonometry, as each case says.
#include "prover/trigonometry/certify.hpp"

#include <catch2/catch.hpp>

#include "prover/statement/statement.hpp"

using namespace prover;

namespace {

Certified certified(const std::string& text) {
  const ProblemText problem = parse_problem(text);
  REQUIRE(problem.diagnostics.empty());
  const Statement statement = statements_of(problem).at(0);
  const AttemptOptions options{standard_catalogue(), std::vector<bool>(standard_catalogue().rules.size(), true),
                               Measure::classroom, Register::plain, false};
  StageTimes times;
  double ms = 0;
  const Solved solved = solve(statement, options, {}, times, ms);
  return certify(statement, 0, solved, options, {});
}

// E. M. Langley, Mathematical Gazette 11 (1922), note 644.
const std::string langley =
    "triangle: KLM\nequal lengths: KL = KM\nangle LKM = 20\nline: K, U, M in this order\nline: K, V, L in this order\n";

}  // namespace

TEST_CASE("the 80-80-20 triangle with lines at 60 and 50 degrees", "[trigonometry]") {
  const Certified found = certified(langley + "angle MLU = 60\nangle LMV = 50\nfind: angle LUV\n");
  REQUIRE(found.exact);
  CHECK(found.value == Rational(30));
  REQUIRE(found.cases.size() == 1);
  CHECK(found.cases[0].settling.steps.size() == 1);
  REQUIRE(found.cases[0].relations);
  CHECK(trusted(*found.cases[0].relations));
}

TEST_CASE("a line at 61 degrees makes no fraction of a degree, and says so", "[trigonometry]") {
  const Certified found = certified(langley + "angle MLU = 61\nangle LMV = 50\nfind: angle LUV\n");
  CHECK_FALSE(found.exact);
  CHECK(found.obstacle.find("not a fraction of a degree") != std::string::npos);
}

TEST_CASE("what the givens leave open is not certified", "[trigonometry]") {
  CHECK_FALSE(certified(langley + "angle MLU = 60\nfind: angle LUV\n").exact);
  CHECK_FALSE(certified("triangle: KLM\nangle LKM = 50\nfind: angle KLM\n").exact);
}

TEST_CASE("a wrong claim is not certified", "[trigonometry]") {
  const std::string givens = langley + "angle MLU = 60\nangle LMV = 50\n";
  CHECK(certified(givens + "prove: angle LUV = 30\n").exact);
  CHECK_FALSE(certified(givens + "prove: angle LUV = 31\n").exact);
  CHECK(certified(givens + "prove: angle LUV + 50 = angle LMV + 30\n").exact);
  CHECK_FALSE(certified(givens + "prove: angle LUV = angle LMV\n").exact);
}

TEST_CASE("equal lengths are equal products of sines", "[trigonometry]") {
  // In the triangle with apex 20° and KD = LM on the side, M D bisects nothing: angle KMD = 10 (C. Knop, Kvant 1993, 6).
  const std::string givens = "triangle: KLM\nequal lengths: KL = KM\nangle LKM = 20\nline: K, D, L in this order\nangle KMD = 10\n";
  CHECK(certified(givens + "prove: KD = LM\n").exact);
  CHECK_FALSE(certified(givens + "prove: KD = DL\n").exact);
}

TEST_CASE("two sides and the angle between them", "[trigonometry]") {
  // Sides 1 : 2 with 60° between them make half an equilateral triangle. With 1 : 3 there is tan x = √3/5: no fraction of
  // a degree (the tangents of such angles are no such numbers: Niven's theorem, from memory).
  const Certified half = certified("triangle: PQR\nPQ = 2PR\nangle QPR = 60\nfind: angle PQR\n");
  CHECK((half.by_rules_alone || (half.exact && half.value == Rational(30))));
  CHECK_FALSE(certified("triangle: PQR\nPQ = 3PR\nangle QPR = 60\nfind: angle PQR\n").exact);
}

TEST_CASE("a value that is not rational on the way to one that is", "[trigonometry]") {
  // AMC 10B 2022, problem 20; published answer 113.
  const std::string givens =
      "polygon: PQRS rhombus, in this order\nangle PSR = 46\nmidpoint: T is the midpoint of RS\n"
      "line: Q, U, T in this order\nperpendicular: PU, QT\n";
  const Certified found = certified(givens + "find: angle QUR\n");
  REQUIRE(found.exact);
  CHECK(found.value == Rational(113));
  CHECK_FALSE(found.cases[0].settling.steps[0].value.has_value());
  // The angle on the way has no exact value of its own.
  CHECK_FALSE(certified(givens + "find: angle RQT\n").exact);
}

TEST_CASE("sums of lengths", "[trigonometry]") {
  // IMO 2001, problem 5; published answer 80.
  const std::string givens =
      "triangle: XYZ\nangle YXZ = 60\nline: Y, P, Z in this order\nbisects: ray XP bisects angle YXZ\n"
      "line: X, Q, Z in this order\nbisects: ray YQ bisects angle XYZ\n";
  const Certified found = certified(givens + "lengths: XY + YP = XQ + QY\nfind: angle XYZ\n");
  REQUIRE(found.exact);
  CHECK(found.value == Rational(80));
  CHECK(found.cases[0].settling.steps[0].by == SettledBy::only_root);
  CHECK_FALSE(certified(givens + "lengths: XY + YP = XQ + 2QY\nfind: angle XYZ\n").exact);
}
