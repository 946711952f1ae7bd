#include "prover/evidence/contribution.hpp"

#include <algorithm>

#include "prover/evidence/trial.hpp"

namespace prover {

namespace {

// The cost of all proofs of an answer together; what is compared are answers to the same claims.
Rational cost_of(const Answer& answer) {
  Rational sum;
  for (const AnswerProof& proof : answer.proofs) sum = sum + Rational::parse(proof.cost).value_or(Rational());
  return sum;
}

bool is_cited_as_theorem(const Rule& rule) {
  const bool theorem = rule.kind != RuleKind::hypothesis && rule.kind != RuleKind::construction && rule.kind != RuleKind::definition;
  return theorem && !rule.meaning && !rule.free_step;
}

}  // namespace

std::vector<AnswerContribution> contributions(const std::vector<Statement>& statements, const AttemptOptions& options,
                                              const Budget& budget, const Answer& answer) {
  std::vector<AnswerContribution> result;
  if (answer.verdict != Verdict::proved && answer.verdict != Verdict::depends_on_figure) return result;
  std::vector<std::string> ids;
  for (const AnswerProof& proof : answer.proofs)
    for (const std::string& id : proof.rules)
      if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
  for (const std::string& id : ids) {
    const auto rule = options.catalogue.find(id);
    if (!rule || !is_cited_as_theorem(options.catalogue[*rule])) continue;
    AttemptOptions without = options;
    without.allowed[rule->index()] = false;
    const Answer other = try_again(statements, without, budget.share(0.5));
    if (budget.exhausted()) break;
    AnswerContribution one;
    one.rule = id;
    one.needed = other.verdict != answer.verdict;
    if (one.needed && other.stop != name_of(StopReason::saturated)) continue;  // a limit: nothing is known
    if (!one.needed) one.more = (cost_of(other) - cost_of(answer)).to_string();
    result.push_back(std::move(one));
  }
  return result;
}

}  // namespace prover
