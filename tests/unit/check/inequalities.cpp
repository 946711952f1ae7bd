// Inequalities before the checker: what a rule or a given introduces may be used, and nothing else.
#include <catch2/catch.hpp>

#include "prover/smt/second_opinion.hpp"
#include "tests/unit/check/board.hpp"

using namespace board;

namespace {

Phrase more(const Board& b, const std::string& left, const std::string& right) {
  return b.relation({{1, left}}, {{1, right}}, Comparison::greater);
}
Form shown(Board& b, const Sum& difference) { return more_than_zero(b.form(difference), b.unknowns); }

RuleId larger_side(Board& b) {
  const Board r("ABC");
  return b.rule("greater-angle-greater-side", "ABC", {r.phrase(Predicate::triangle, "ABC"), more(r, "ACB", "ABC")}, {},
                {more(r, "AB", "AC")});
}

// Triangle KLM, the angle at M larger than that at L. Prove KL > KM.
Board larger_side_board() {
  Board b("KLM");
  b.given(b.phrase(Predicate::triangle, "KLM"));
  b.given(more(b, "KML", "KLM"));
  b.prove(more(b, "KL", "KM"));
  b.say_given(1, {shown(b, {{1, "KML"}, {-1, "KLM"}})});
  b.say(larger_side(b), "KLM", {}, {shown(b, {{1, "KL"}, {-1, "KM"}})});
  // The premise: ∠KML − ∠KLM equals the excess of the given.
  b.proof.steps[1].instance.premises = {b.proof.steps[0].instance.conclusions[0]};
  b.proof.steps[1].premises = {{{{0, 0, 1}}}};
  b.proof.goal = {b.proof.steps[1].instance.conclusions[0]};
  b.proof.conclusion = {{{{1, 0, 1}}}};
  b.proof.positive = {b.form({{1, "KL"}, {-1, "KM"}})};
  return b;
}

SecondOpinion::Answer z3(const Board& b) { return second_opinion(b.proof, b.unknowns, {}).answer; }

}  // namespace

TEST_CASE("a larger side by a larger angle is accepted by both checks") {
  const Board b = larger_side_board();
  CHECK(b.report().objection == "");
  CHECK(z3(b) == SecondOpinion::Answer::confirmed);
}

TEST_CASE("the claim the other way round is refused by both") {
  Board b = larger_side_board();
  b.prove(more(b, "KM", "KL"));
  CHECK_FALSE(b.accepted());
  b.proof.positive = {b.form({{1, "KM"}, {-1, "KL"}})};
  CHECK(z3(b) == SecondOpinion::Answer::refuted);
}

TEST_CASE("a premise that is not positive is refused") {
  Board b = larger_side_board();
  b.statement.givens[1].phrase = more(b, "KLM", "KML");  // the problem says the contrary
  CHECK_FALSE(b.accepted());
}

TEST_CASE("a rule at other places concludes something else") {
  Board b = larger_side_board();
  b.proof.steps[1].instance.places = b.points("LKM");
  CHECK_FALSE(b.accepted());
}

TEST_CASE("an excess is positive only once it was introduced, and stands for one difference") {
  Board b = larger_side_board();
  b.proof.steps.pop_back();  // no step introduces the excess of KL − KM
  b.proof.conclusion = {{{}}};
  b.proof.goal = {b.form({{1, "KL"}, {-1, "KM"}}).add(b.form({{1, "KL"}, {-1, "KM"}}), -1)};
  CHECK_FALSE(b.accepted());
  // The same letter for another difference: KL − KM would equal ∠KML − ∠KLM.
  Board twice = larger_side_board();
  Form wrong = twice.form({{1, "KL"}, {-1, "KM"}});
  const Form given = twice.proof.steps[0].instance.conclusions[0];
  for (const auto& [unknown, coefficient] : given.terms)
    if (twice.unknowns[unknown].kind == UnknownKind::excess) wrong.add(Form::of(unknown), coefficient);
  twice.proof.steps[1].instance.conclusions = {wrong};
  twice.proof.goal = {wrong};
  CHECK_FALSE(twice.accepted());
}

TEST_CASE("a given equation is no inequality, and an acute triangle has three") {
  Board b("KLM");
  b.given(b.phrase(Predicate::acute, "KLM"));
  b.prove(b.relation({{90, ""}}, {{1, "KLM"}}, Comparison::greater));
  b.say_given(0, {shown(b, {{90, ""}, {-1, "KLM"}})});
  b.proof.goal = {b.proof.steps[0].instance.conclusions[0]};
  b.proof.conclusion = {{{{0, 0, 1}}}};
  CHECK(b.report().objection == "");
  b.statement.givens[0].phrase = b.phrase(Predicate::triangle, "KLM");
  CHECK_FALSE(b.accepted());
}
