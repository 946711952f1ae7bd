#include "prover/evidence/swapped_given.hpp"

#include <algorithm>
#include <set>

#include "prover/evidence/rule_reach.hpp"
#include "prover/evidence/trial.hpp"
#include "prover/trigonometry/trig_sum.hpp"
#include "prover/verdict/claim_phrase.hpp"

namespace prover {

namespace {

struct Told {
  Form form;
  Phrase phrase;
};

bool says_size(const Phrase& phrase) {
  switch (phrase.predicate) {
    case Predicate::relation:
    case Predicate::parallel:
    case Predicate::perpendicular:
    case Predicate::bisects:
    case Predicate::midpoint:
      return true;
    default:
      return false;
  }
}

// Only what no theorem is needed for: given sentences, definitions, adding up.
std::vector<bool> without_theorems(const Catalogue& catalogue, const std::vector<bool>& allowed) {
  std::vector<bool> few = allowed;
  for (std::size_t i = 0; i < few.size(); ++i) {
    const RuleKind kind = catalogue.rules[i].kind;
    if (kind == RuleKind::theorem || kind == RuleKind::converse || kind == RuleKind::corollary) few[i] = false;
  }
  return few;
}

// What untaught theorems conclude in the proofs of the goals, as sentences; the plainest first.
std::vector<Told> conclusions(const Attempt& full, const AttemptOptions& options) {
  std::vector<Told> out;
  std::set<Form, FormOrder> seen;
  for (const auto& goal : full.goals) {
    if (!goal) continue;
    for (const ProofStep& step : goal->proof.steps) {
      if (options.allowed[step.instance.rule.index()]) continue;
      for (const Form& form : step.instance.conclusions)
        if (auto phrase = claim_phrase(form, full.workings->unknowns); phrase && seen.insert(form.normalised()).second)
          out.push_back({form, std::move(*phrase)});
    }
  }
  std::stable_sort(out.begin(), out.end(), [](const Told& a, const Told& b) { return a.form.terms.size() < b.form.terms.size(); });
  return out;
}

}  // namespace

std::vector<SwappedGiven> swapped_givens(const Statement& statement, const Attempt& full, const AttemptOptions& options,
                                         std::size_t most, const Budget& budget) {
  std::vector<SwappedGiven> found;
  const std::vector<Told> told = conclusions(full, options);
  std::vector<Form> forms;
  std::string value;
  for (const Told& one : told) forms.push_back(one.form);
  for (const auto& goal : full.goals)
    if (goal) value += (value.empty() ? "" : "; ") + goal->value;
  RuleReach reach(full, forms);
  const std::vector<bool> few = without_theorems(options.catalogue, options.allowed);
  for (std::size_t i = 0; i < told.size() && found.size() < most && !budget.exhausted(); ++i) {
    // Neither no help, nor the answer itself.
    if (!reach.reaches_when_told(options.allowed, i, -1) || reach.reaches_when_told(few, i, -1)) continue;
    std::vector<int> places;
    for (std::size_t g = 0; g < statement.givens.size(); ++g)
      if (says_size(statement.givens[g].phrase) && reach.reaches_when_told(options.allowed, i, static_cast<int>(g)))
        places.push_back(static_cast<int>(g));
    places.push_back(-1);  // told beside all givens
    for (const int place : places) {
      Statement other = statement;
      const std::string sentence = describe(told[i].phrase, statement.names);
      if (place >= 0)
        other.givens[static_cast<std::size_t>(place)] = {told[i].phrase, sentence, false};
      else
        other.givens.push_back({told[i].phrase, sentence, false});
      const Answer answer = try_again({other}, options, for_a_trial(budget));
      if (answer.verdict != Verdict::proved || answer.value != value) continue;
      found.push_back({sentence, place >= 0 ? statement.givens[static_cast<std::size_t>(place)].text : ""});
      break;
    }
  }
  return found;
}

}  // namespace prover
