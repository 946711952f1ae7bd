// The examples in the rule files, as problems for the chain: with this rule alone, beside givens, additions
// and definitions, what fires must follow and what stays silent must not. Drawn figures settle the positions.
// A meaning has words only, so what it explains may come by any rule.
#include <algorithm>

#include "prover/algebra/positive.hpp"
#include "prover/chain/inequalities.hpp"
#include "prover/chain/saturate.hpp"
#include "prover/rule/rule.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"
#include "tests/rules/figures.hpp"

using namespace prover;
using namespace rule_tests;

namespace {

bool is_allowed(const Rule& rule) {
  return rule.meaning || rule.kind == RuleKind::definition || rule.builtin == Builtin::given ||
         rule.builtin == Builtin::angle_addition || rule.builtin == Builtin::segment_addition;
}

Statement statement_of(const Drawn& d) {
  Statement statement;
  statement.names = d.names;
  statement.hidden.assign(d.names.points.size(), false);
  for (const Phrase& phrase : d.givens)
    statement.givens.push_back({phrase, describe(phrase, d.names), false});
  Goal goal;
  goal.kind = GoalKind::prove;
  goal.claims = d.claims;
  statement.goals.push_back(goal);
  return statement;
}

bool follows(const Drawn& d, RuleId only) {
  const Catalogue& catalogue = standard_catalogue();
  const Statement statement = statement_of(d);
  std::vector<Coordinates> views;
  for (const Sketch& sketch : d.report.sketches) views.push_back(sketch.points);
  Arrangement arrangement(figure_text(statement), std::move(views));
  arrangement.freeze();
  UnknownTable unknowns;
  std::vector<Form> goal, positive;
  for (const Phrase& claim : d.claims) {
    if (has_inequality(claim)) {
      for (Form& difference : given_differences(claim, arrangement, unknowns)) positive.push_back(std::move(difference));
      continue;
    }
    const Meaning meaning = meaning_of(claim, arrangement, unknowns);
    REQUIRE_FALSE(meaning.degenerate);
    REQUIRE_FALSE(meaning.unsupported);
    goal.insert(goal.end(), meaning.forms.begin(), meaning.forms.end());
  }
  ChainOptions options;
  for (const Rule& rule : catalogue.rules)
    options.allowed.push_back(catalogue[only].meaning || is_allowed(rule));
  options.allowed[only.index()] = true;
  options.inequalities = !positive.empty();
  const Saturation saturation =
      saturate(statement, arrangement, catalogue, unknowns, goal, options, Budget::seconds(5));
  for (const Form& form : goal)
    if (!saturation.closure.entails(form)) return false;
  for (const Form& difference : positive)
    if (!as_positive_sum(difference, saturation.closure, unknowns)) return false;
  return true;
}

}  // namespace

TEST_CASE("each example fires, or stays silent, by its rule alone") {
  const Catalogue& catalogue = standard_catalogue();
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i)
    for (const RuleExample& example : catalogue.rules[i].examples) {
      INFO(catalogue.rules[i].id << ":" << example.line << ": " << example.givens << "  gives  "
                                 << example.conclusion);
      const Drawn d = drawn(example.givens, example.conclusion, 6);
      CHECK(follows(d, RuleId(i)) == example.fires);
    }
}
