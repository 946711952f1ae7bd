// The hint sentences of each rule at the places of its own examples: the rule is met there by the chain, and what a pupil
// would be asked names points of that figure and does not state what the example shows.
#include "prover/chain/saturate.hpp"
#include "prover/reading/reasons.hpp"
#include "prover/rule/wording.hpp"
#include "prover/statement/figure_text.hpp"
#include "tests/rules/figures.hpp"
#include "tests/rules/sentences.hpp"

using namespace prover;
using namespace rule_tests;

namespace {

bool is_allowed(const Rule& rule) {
  return rule.kind == RuleKind::definition || rule.builtin == Builtin::given || rule.builtin == Builtin::angle_addition ||
         rule.builtin == Builtin::segment_addition;
}

// Met only where a fact was derived: in their examples the straight line stands in the figure, and "perpendicular" at a named
// point is the right angle itself.
bool is_met_in_longer_proofs_only(const Rule& rule) {
  return rule.id == "perpendicular-definition" || rule.id == "line-through-two-points" || rule.family == "line-through-two-points";
}

// What is asked at the first place where the rule is met in the example; empty when it is met nowhere.
HintSentences asked_at(const Drawn& d, RuleId rule, Register wording) {
  const Catalogue& catalogue = standard_catalogue();
  Statement statement;
  statement.names = d.names;
  statement.hidden.assign(d.names.points.size(), false);
  for (const Phrase& phrase : d.givens) statement.givens.push_back({phrase, describe(phrase, d.names), false});
  Goal goal;
  goal.kind = GoalKind::prove;
  goal.claims = d.claims;
  statement.goals.push_back(goal);
  std::vector<Coordinates> views;
  for (const Sketch& sketch : d.report.sketches) views.push_back(sketch.points);
  Arrangement arrangement(figure_text(statement), std::move(views));
  arrangement.freeze();
  UnknownTable unknowns;
  ChainOptions options;
  for (const Rule& one : catalogue.rules) options.allowed.push_back(is_allowed(one));
  options.allowed[rule.index()] = true;
  options.inequalities = true;
  const Saturation saturation = saturate(statement, arrangement, catalogue, unknowns, {}, options, Budget::seconds(5));
  const NameBook names(statement, arrangement, unknowns);
  const Reasons reasons(statement, catalogue, unknowns, arrangement, names, wording);
  for (const Instance& instance : saturation.instances)
    if (instance.rule == rule) return reasons.hints(instance);
  return {};
}

}  // namespace

TEST_CASE("the sentences of a rule speak of its examples' figures, and state nothing that these show", "[hints]") {
  const Catalogue& catalogue = standard_catalogue();
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    if (rule.hints.empty() || rule.builtin == Builtin::join) continue;  // a line to be drawn has no example
    for (const RuleExample& example : rule.examples) {
      if (!example.fires) continue;
      INFO(rule.id << ": " << example.givens << "  gives  " << example.conclusion);
      const Drawn d = drawn(example.givens, example.conclusion, 6);
      for (const Register wording : {Register::plain, Register::us}) {
        const HintSentences asked = asked_at(d, RuleId(i), wording);
        CHECK(asked.where.empty() == is_met_in_longer_proofs_only(rule));
        for (const HintRung rung : {HintRung::where, HintRung::kind, HintRung::places}) {
          const std::string& sentence = sentence_of(asked, rung);
          INFO(sentence);
          CHECK(sentence.find_first_of("{}") == std::string::npos);
          CHECK_FALSE(states_one_of(d.claims, d.names, sentence));
          // Every capital that is no word's first letter is a point of the example.
          for (std::size_t at = 0; at < sentence.size(); ++at) {
            const bool capital = sentence[at] >= 'A' && sentence[at] <= 'Z';
            const bool word = at + 1 < sentence.size() && sentence[at + 1] >= 'a' && sentence[at + 1] <= 'z';
            const bool article = sentence[at] == 'A' && (at == 0 || sentence[at - 1] == ' ') && sentence.compare(at, 2, "A ") == 0;
            if (capital && !word && !article)
              CHECK(std::count(d.names.points.begin(), d.names.points.end(), std::string(1, sentence[at])) == 1);
          }
        }
      }
    }
  }
}
