// Proofs as the search makes them, from the text of a problem on: each is accepted, and each is refused after
// any single change to what it says.
#include <catch2/catch.hpp>

#include "prover/chain/saturate.hpp"
#include "prover/check/check.hpp"
#include "prover/proof/assemble.hpp"
#include "prover/reading/order.hpp"
#include "prover/search/lightest_set.hpp"
#include "prover/proof/weights.hpp"
#include "prover/smt/second_opinion.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/verdict/goal_forms.hpp"

using namespace prover;

namespace {

const char* const problems[] = {
    "triangle: KLM\nKL = KM\nangle LKM = 40\nfind: angle KLM\n",
    "triangle: KLM\nline: K, L, P in this order\nangle LKM = 50\nangle LMK = 60\nfind: angle PLM\n",
    "polygon: KLMN parallelogram, in this order\nangle NKL = 65\nfind: angle KLM\n",
    "triangle: KLM\nP lies on KL\nparallel: PQ, LM\nQ lies on KM\nangle KPQ = 70\nangle PKQ = 50\nfind: "
    "angle KML\n",
    "triangle: KLM\nbisects: ray LP bisects angle KLM\nline: K, P, M in this order\nangle LKM = 80\nangle "
    "KML = 40\n"
    "find: angle LPM\n",
};

struct Found {
  Statement statement;
  UnknownTable unknowns;
  std::vector<Sketch> views;
  Proof proof;

  explicit Found(const char* text) : statement(statements_of(parse_problem(text)).front()) {
    views = sketch(phrases_of(statement), statement.names.points.size(), Budget::seconds(5)).sketches;
    std::vector<Coordinates> coordinates;
    for (const Sketch& view : views) coordinates.push_back(view.points);
    Arrangement arrangement(figure_text(statement), coordinates);
    arrangement.freeze();
    const Catalogue& catalogue = standard_catalogue();
    const Goal& goal = statement.goals[0];
    note_goal(goal, arrangement, unknowns);
    ChainOptions options;
    options.allowed.assign(catalogue.rules.size(), true);
    const Saturation saturation =
        saturate(statement, arrangement, catalogue, unknowns, {}, options, Budget::seconds(5));
    const std::vector<Form> forms =
        goal_forms(goal, saturation.closure, arrangement, unknowns, statement.names).forms;
    SearchProblem problem;
    problem.goal = forms;
    for (const Instance& i : saturation.instances)
      problem.candidates.push_back(
          {i.premises, i.conclusions, weight_of(i, catalogue, arrangement, Measure::classroom)});
    const auto light = lightest_set(problem, {Budget::seconds(5), {}});
    REQUIRE(light);
    std::vector<Instance> members;
    for (const int i : light->members) members.push_back(saturation.instances[static_cast<std::size_t>(i)]);
    proof = assemble(order_for_reading(std::move(members)), forms, unknowns, arrangement);
  }

  CheckReport report(const Proof& changed) const {
    return check(changed, statement, statement.goals[0], standard_catalogue(), unknowns, views);
  }
  bool accepts(const Proof& changed) const { return report(changed).accepted; }
};

}  // namespace

TEST_CASE("proofs of the search are accepted, and refused after any one change") {
  for (const char* text : problems) {
    INFO(text);
    const Found found(text);
    CHECK(found.report(found.proof).objection.empty());
    CHECK(second_opinion(found.proof, found.unknowns, {}).answer == SecondOpinion::Answer::confirmed);
    int changes = 0;
    // Makes one change to a copy, which must then be refused.
    const auto refused = [&](auto change) {
      Proof changed = found.proof;
      change(changed);
      ++changes;
      return !found.accepts(changed);
    };
    for (std::size_t s = 0; s < found.proof.steps.size(); ++s) {
      const ProofStep& step = found.proof.steps[s];
      INFO("step " << s + 1);
      for (std::size_t c = 0; c < step.instance.conclusions.size(); ++c)
        CHECK(refused([&](Proof& p) { p.steps[s].instance.conclusions[c].constant += 1; }));
      for (std::size_t i = 0; i < step.premises.size(); ++i) {
        CHECK(refused([&](Proof& p) { p.steps[s].instance.premises[i].constant += 1; }));
        CHECK(refused(
            [&](Proof& p) { p.steps[s].premises.erase(p.steps[s].premises.begin() + static_cast<int>(i)); }));
        for (std::size_t k = 0; k < step.premises[i].parts.size(); ++k) {
          CHECK(refused([&](Proof& p) { p.steps[s].premises[i].parts[k].multiplier += 1; }));
          CHECK(refused([&](Proof& p) { p.steps[s].premises[i].parts[k].step = static_cast<int>(s); }));
        }
      }
      CHECK(refused([&](Proof& p) { p.steps[s].instance.rule = RuleId(); }));
      CHECK(refused([&](Proof& p) { p.steps[s].instance.places.emplace_back(0); }) ==
            (standard_catalogue()[step.instance.rule].builtin != Builtin::given));
      CHECK(refused([&](Proof& p) { p.steps.erase(p.steps.begin() + static_cast<int>(s)); }));
      if (step.instance.hypothesis >= 0)
        CHECK(refused([&](Proof& p) { p.steps[s].instance.hypothesis = 99; }));
    }
    for (std::size_t k = 0; k < found.proof.conclusion[0].parts.size(); ++k)
      CHECK(refused([&](Proof& p) { p.conclusion[0].parts[k].multiplier += 1; }));
    CHECK(refused([&](Proof& p) { p.goal[0].constant += 1; }));
    CHECK(refused([&](Proof& p) { p.goal[0].scale(0); }));
    CHECK(refused([&](Proof& p) { p.contradiction = true; }));
    CHECK(changes > 10);
    // A position that is seen may not be called text, nor seen without figures.
    for (std::size_t i = 0; i < found.proof.positions.size(); ++i) {
      if (found.proof.positions[i].source != PositionSource::seen) continue;
      CHECK(refused([&](Proof& p) { p.positions[i].source = PositionSource::unknown; }));
    }
  }
}
