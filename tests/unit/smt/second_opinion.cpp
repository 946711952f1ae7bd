#include "prover/smt/second_opinion.hpp"

#include <z3.h>

#include <catch2/catch.hpp>
#include <thread>

using namespace prover;
using Answer = SecondOpinion::Answer;

namespace {

UnknownId angle(UnknownTable& table, int arm1, int vertex, int arm2) {
  return table.intern(
      {UnknownKind::angle, FactKind::parallel, {PointId(vertex), PointId(arm1), PointId(arm2)}, ""});
}

Form sum(std::vector<std::pair<UnknownId, Rational>> terms, const Rational& constant) {
  Form form = Form::number(constant);
  for (const auto& [unknown, coefficient] : terms) form.add(Form::of(unknown, coefficient));
  return form;
}

Combination same(int step, int conclusion = 0) {
  return {{{step, conclusion, 1}}};
}

ProofStep step(std::vector<Form> premises, std::vector<Combination> from, std::vector<Form> conclusions) {
  ProofStep result;
  result.instance.premises = std::move(premises);
  result.instance.conclusions = std::move(conclusions);
  result.premises = std::move(from);
  return result;
}

// Triangle KLM (points 0, 1, 2) with KL = KM and the angle at K 40°: the angle at L is 70°.
struct BaseAngles {
  UnknownTable table;
  UnknownId k = angle(table, 1, 0, 2), l = angle(table, 0, 1, 2), m = angle(table, 0, 2, 1);
  UnknownId kl = table.intern({UnknownKind::length, FactKind::parallel, {PointId(0), PointId(1)}, ""});
  UnknownId km = table.intern({UnknownKind::length, FactKind::parallel, {PointId(0), PointId(2)}, ""});
  Proof proof;

  BaseAngles() {
    const Form equal = sum({{kl, 1}, {km, -1}}, 0);
    proof.steps.push_back(step({}, {}, {sum({{k, 1}}, -40)}));
    proof.steps.push_back(step({}, {}, {equal}));
    proof.steps.push_back(step({equal}, {same(1)}, {sum({{l, 1}, {m, -1}}, 0)}));
    proof.steps.push_back(step({}, {}, {sum({{k, 1}, {l, 1}, {m, 1}}, -180)}));
    proof.goal = {sum({{l, 1}}, -70)};
    const Rational half(1, 2);
    proof.conclusion = {{{{0, 0, -half}, {2, 0, half}, {3, 0, half}}}};
  }
};

}  // namespace

TEST_CASE("Z3 confirms base angles of 70 degrees beside an apex of 40") {
  const BaseAngles example;
  const SecondOpinion opinion = second_opinion(example.proof, example.table, {});
  CHECK(opinion.answer == Answer::confirmed);
  CHECK(opinion.objection.empty());
  CHECK(opinion.queries == 2);
}

TEST_CASE("Z3 names the part of a wrong proof that does not follow") {
  BaseAngles wrong;
  SECTION("another value") {
    wrong.proof.goal = {sum({{wrong.l, 1}}, -71)};
    CHECK(second_opinion(wrong.proof, wrong.table, {}).objection == "goal 1 does not follow");
  }
  SECTION("a part of the reasons left out") {
    wrong.proof.conclusion[0].parts.pop_back();
    CHECK(second_opinion(wrong.proof, wrong.table, {}).objection == "goal 1 does not follow");
  }
  SECTION("a premise that nothing supports") {
    wrong.proof.steps[2].premises[0] = same(0);
    CHECK(second_opinion(wrong.proof, wrong.table, {}).objection == "step 3, premise 1 does not follow");
  }
  SECTION("a premise that cites a later step") {
    wrong.proof.steps[2].premises[0] = same(3);
    CHECK(second_opinion(wrong.proof, wrong.table, {}).objection ==
          "step 3, premise 1 cites what has not been shown before");
  }
  SECTION("an index out of range") {
    wrong.proof.steps[2].premises[0] = same(1, 7);
    CHECK(second_opinion(wrong.proof, wrong.table, {}).answer == Answer::refuted);
  }
  SECTION("a premise without support") {
    wrong.proof.steps[2].premises.clear();
    CHECK(second_opinion(wrong.proof, wrong.table, {}).answer == Answer::refuted);
  }
  SECTION("no goal") {
    wrong.proof.goal.clear();
    wrong.proof.conclusion.clear();
    CHECK(second_opinion(wrong.proof, wrong.table, {}).objection == "the proof has no goal");
  }
  SECTION("an unknown from elsewhere") {
    wrong.proof.goal = {Form::of(UnknownId(99))};
    CHECK(second_opinion(wrong.proof, wrong.table, {}).answer == Answer::refuted);
  }
  CHECK(second_opinion(wrong.proof, wrong.table, {}).answer == Answer::refuted);
}

TEST_CASE(
    "givens that cannot all hold are confirmed as such, also where only the size of an angle forbids them") {
  BaseAngles impossible;
  Proof& proof = impossible.proof;
  proof.contradiction = true;
  SECTION("two values for one angle") {
    proof.steps.push_back(step({}, {}, {sum({{impossible.l, 1}}, -50)}));
    proof.goal = {Form::number(1)};
    const Rational f(1, 40);
    proof.conclusion = {{{{0, 0, -f}, {2, 0, f}, {3, 0, f}, {4, 0, f * Rational(-2)}}}};
    CHECK(second_opinion(proof, impossible.table, {}).answer == Answer::confirmed);
    proof.steps.pop_back();
    proof.conclusion[0].parts.pop_back();
    CHECK(second_opinion(proof, impossible.table, {}).answer == Answer::refuted);
  }
  SECTION("an angle below 0") {
    proof.steps[0].instance.conclusions = {sum({{impossible.k, 1}}, -200)};
    proof.goal = {sum({{impossible.l, 1}}, 10)};
    CHECK(second_opinion(proof, impossible.table, {}).answer == Answer::confirmed);
    proof.contradiction = false;  // as a proof it still follows: the denial is impossible too
    CHECK(second_opinion(proof, impossible.table, {}).answer == Answer::confirmed);
  }
}

TEST_CASE("numbers beyond a machine word reach Z3 exactly") {
  UnknownTable table;
  const UnknownId x = table.intern({UnknownKind::number, FactKind::parallel, {}, "x"});
  const Rational huge = *Rational::parse("123456789012345678901234567890/7");
  Proof proof;
  proof.steps.push_back(step({}, {}, {sum({{x, huge}}, -huge)}));
  proof.goal = {sum({{x, 1}}, -1)};
  proof.conclusion = {{{{0, 0, Rational(1) / huge}}}};
  CHECK(second_opinion(proof, table, {}).answer == Answer::confirmed);
  proof.goal = {sum({{x, 1}}, Rational(-1) - Rational(1) / huge)};
  CHECK(second_opinion(proof, table, {}).answer == Answer::refuted);
}

TEST_CASE("without time there is no opinion, and it says so") {
  const BaseAngles example;
  const SecondOpinion opinion = second_opinion(example.proof, example.table, Budget::seconds(0));
  CHECK(opinion.answer == Answer::unknown);
  CHECK_FALSE(opinion.objection.empty());
}

TEST_CASE("each thread has a context of its own") {
  std::vector<Answer> answers(4, Answer::unknown);
  std::vector<std::thread> threads;
  for (Answer& answer : answers) {
    threads.emplace_back([&answer] {
      const BaseAngles example;
      for (int i = 0; i < 20; ++i) answer = second_opinion(example.proof, example.table, {}).answer;
    });
  }
  for (std::thread& thread : threads) thread.join();
  for (const Answer answer : answers) CHECK(answer == Answer::confirmed);
}

TEST_CASE("the obligations as SMT-LIB read like the board, and the same proof gives the same bytes") {
  const BaseAngles example;
  const std::string text = smt_lib(example.proof, example.table, Names{{"K", "L", "M"}});
  CHECK(text == smt_lib(example.proof, example.table, Names{{"K", "L", "M"}}));
  CHECK(text.find("(set-logic QF_LRA)") != std::string::npos);
  CHECK(text.find("(declare-const angle_K_L_M Real)") != std::string::npos);
  CHECK(text.find("; step 3, premise 1\n(push 1)\n(assert (= (+ length_K_L (* (- 1.0) length_K_M)) 0.0))\n"
                  "(assert (not (= (+ length_K_L (* (- 1.0) length_K_M)) 0.0)))\n(check-sat)") !=
        std::string::npos);
  CHECK(text.find("(assert (< 0.0 angle_L_K_M 180.0))") != std::string::npos);
  CHECK(smt_lib(example.proof, example.table).find("angle_P0_P1_P2") != std::string::npos);
  CHECK(smt_lib(example.proof, example.table, Names{{"K'", "L", "M"}}).find("|angle_K'_L_M|") !=
        std::string::npos);
}

TEST_CASE("read back as text, every obligation is unsatisfiable, and those of a wrong proof are not") {
  const auto answers = [](const BaseAngles& example) {
    Z3_config config = Z3_mk_config();
    Z3_context context = Z3_mk_context(config);
    Z3_set_error_handler(context, [](Z3_context, Z3_error_code) {});  // or it ends the program
    const std::string text = smt_lib(example.proof, example.table, Names{{"K'", "L", "M"}});
    const std::string result = Z3_eval_smtlib2_string(context, text.c_str());
    Z3_del_context(context);
    Z3_del_config(config);
    return result;
  };
  BaseAngles example;
  CHECK(answers(example) == "unsat\nunsat\nunsat\n");
  example.proof.goal = {sum({{example.l, 1}}, -71)};
  CHECK(answers(example).substr(0, 10) == "unsat\nsat\n");  // and a complaint: the text promised unsat
}

TEST_CASE("Z3 says which version it is") {
  CHECK(z3_version().substr(0, 2) == "4.");
}
