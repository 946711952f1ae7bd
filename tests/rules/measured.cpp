// Every rule with a pattern is measured: figures drawn to fit its givens and side conditions, in several
// arrangements, must all have what it concludes. A rule for which no figure can be drawn fails too.
#include "prover/rule/rule.hpp"
#include "tests/rules/figures.hpp"

using namespace prover;
using namespace rule_tests;

TEST_CASE("every conclusion holds in every figure drawn for its premises") {
  constexpr std::size_t enough = 20;
  for (const Rule& rule : standard_catalogue().rules) {
    if (rule.then.empty()) continue;
    INFO(rule.id);
    std::vector<Phrase> premises = rule.given;
    premises.insert(premises.end(), rule.where.begin(), rule.where.end());
    std::size_t figures = 0;  // over several seeds: a rigid premise has one shape a seed
    for (std::uint64_t seed = 1; figures < enough && seed <= enough; ++seed) {
      const SketchReport report = draw(premises, rule.variables.points.size(), enough, seed);
      figures += report.sketches.size();
      for (const Sketch& sketch : report.sketches)
        for (const Phrase& conclusion : rule.then) {
          INFO(describe(conclusion, rule.variables) << " in " << coordinates(rule.variables, sketch));
          CHECK(holds(conclusion, sketch));
        }
    }
    CHECK(figures >= enough);
  }
}
