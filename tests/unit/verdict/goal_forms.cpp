#include "prover/verdict/goal_forms.hpp"

#include "tests/unit/chain/chained.hpp"

using namespace prover;
using told::Chained;

namespace {

Goal goal(const Chained& told, const std::string& claims) {
  Names names = told.statement.names;
  Goal one;
  one.kind = GoalKind::prove;
  one.claims = told::Told::phrases(claims, names);
  return one;
}
Goal asked(const std::string& problem) {
  return parse_problem(problem).goals.at(0);
}
GoalForms forms(Chained& told, const Goal& goal) {
  return goal_forms(goal, told.result.closure, told.figure, told.unknowns, told.statement.names);
}

const char* const isosceles = "triangle: KLM; KL = KM; angle KLM = 50";

}  // namespace

TEST_CASE("what is asked has its value once the chain has it") {
  Chained told(isosceles);
  const GoalForms found = forms(told, asked("triangle: KLM\nfind: angle LKM\n"));
  CHECK(found.reached);
  CHECK(found.value == "80");
  CHECK(found.number == Rational(80));
  CHECK(forms(told, asked("triangle: KLM\nfind: angle LKM + angle KML\n")).value == "130");
  Chained open("triangle: KLM; angle KLM = 50");
  CHECK_FALSE(forms(open, asked("triangle: KLM\nfind: angle LKM\n")).reached);
}

TEST_CASE("a claim is reached when all its equations follow") {
  Chained told(isosceles);
  CHECK(forms(told, goal(told, "angle KLM = angle KML")).reached);
  CHECK(forms(told, goal(told, "angle KLM = angle KML = 50")).reached);
  CHECK_FALSE(forms(told, goal(told, "angle KLM = angle KML = 51")).reached);
  CHECK_FALSE(forms(told, goal(told, "angle KLM = angle LKM")).reached);
}

TEST_CASE("isosceles is reached whichever two sides are equal") {
  Chained told(isosceles);
  CHECK(forms(told, goal(told, "isosceles: triangle KLM")).reached);
  CHECK(forms(told, goal(told, "isosceles: triangle LMK")).reached);
  Chained open("triangle: KLM; angle KLM = 50");
  CHECK_FALSE(forms(open, goal(open, "isosceles: triangle KLM")).reached);
}

TEST_CASE("a claim about position that is not known says which one is missing") {
  Chained told("line: K, L, M in this order; triangle: KLP; angle LKQ = 20");
  const GoalForms found = forms(told, goal(told, "sides: P and Q on the same side of KL"));
  CHECK_FALSE(found.reached);
  CHECK(found.missing_position == "P and Q are on the same side of KL");
  const GoalForms known = forms(told, goal(told, "line: M, L, K in this order"));
  CHECK(known.reached);
  CHECK(known.missing_position.empty());
}

TEST_CASE("an inequality is reached when the difference is a sum of positive sizes") {
  Chained told(isosceles);
  const GoalForms open = forms(told, goal(told, "angle KLM < angle KML"));  // they are equal
  CHECK_FALSE(open.reached);
  CHECK(open.open_comparison);
  const GoalForms part = forms(told, goal(told, "angle KLM + angle LKM > angle KML"));
  CHECK(part.reached);
  CHECK(part.positive.size() == 1);
  CHECK_FALSE(forms(told, goal(told, "angle KLM = angle LKM")).unsupported);
}
