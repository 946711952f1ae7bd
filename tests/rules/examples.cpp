// The examples in the rule files, as figures: where a rule fires its conclusion holds in all of them; where
// it stays silent for want of a condition, some figure shows why it must.
#include "prover/rule/rule.hpp"
#include "tests/rules/figures.hpp"

using namespace prover;
using namespace rule_tests;

namespace {

bool all_hold(const Drawn& d, const Sketch& sketch) {
  for (const Phrase& claim : d.claims)
    if (!holds(claim, sketch)) return false;
  return true;
}

}  // namespace

TEST_CASE("in an example that fires, the conclusion holds") {
  for (const Rule& rule : standard_catalogue().rules)
    for (const RuleExample& example : rule.examples) {
      if (!example.fires) continue;
      INFO(rule.id << ":" << example.line << ": " << example.givens << "  gives  " << example.conclusion);
      const Drawn d = drawn(example.givens, example.conclusion, 6);
      CHECK_FALSE(d.claims.empty());
      CHECK_FALSE(d.report.sketches.empty());
      for (const Sketch& sketch : d.report.sketches) CHECK(all_hold(d, sketch));
    }
}

TEST_CASE("in an example that stays silent, some figure breaks the conclusion") {
  for (const Rule& rule : standard_catalogue().rules)
    for (const RuleExample& example : rule.examples) {
      if (example.fires) continue;
      INFO(rule.id << ":" << example.line << ": " << example.givens << "  gives  " << example.conclusion);
      const Drawn d = drawn(example.givens, example.conclusion, 6);
      CHECK_FALSE(d.claims.empty());
      CHECK_FALSE(d.report.sketches.empty());
      bool broken = false;
      for (const Sketch& sketch : d.report.sketches) broken = broken || !all_hold(d, sketch);
      CHECK(broken);
    }
}
