#include "prover/check/rule_meaning.hpp"

#include <algorithm>

namespace prover::replay {
namespace {

bool shown(const std::vector<Equation>& group, const std::vector<Equation>& premises) {
  return std::any_of(group.begin(), group.end(), [&](const Equation& e) { return in_span(e, premises); });
}

// Positive because a given says so: the same up to a positive factor.
bool positive(const Equation& difference, const std::vector<Equation>& known_positive) {
  if (difference.is_constant()) return difference.constant.sign() > 0;
  for (const Equation& known : known_positive) {
    const auto found = known.terms.find(difference.terms.begin()->first);
    if (found == known.terms.end()) continue;
    const Rational factor = difference.terms.begin()->second / found->second;
    if (factor.sign() > 0 && Equation(known).scale(factor) == difference) return true;
  }
  return false;
}

bool shown_positive(const Equation& difference, const std::vector<Equation>& premises, Naming& naming,
                    const Excesses& excesses) {
  return excesses.surely_positive(difference, naming) ||
         std::any_of(premises.begin(), premises.end(), [&](const Equation& premise) {
           return excesses.surely_positive(Equation(difference).add(premise, -1), naming);
         });
}

}  // namespace

std::string objection_to_pattern(const Step& step, Naming& naming,
                                 const std::vector<Equation>& known_positive, Excesses& excesses) {
  const Rule& rule = step.rule;
  if (rule.then.empty()) return "the rule " + rule.id + " says nothing that could be concluded";
  if (step.places.size() != rule.variables.points.size())
    return "the rule " + rule.id + " has another number of places";

  for (const auto* phrases : {&rule.given, &rule.where}) {
    for (const Phrase& phrase : *phrases) {
      const std::string what = "\"" + describe(phrase, rule.variables) + "\" of the rule " + rule.id;
      const Placement placement = placement_of(phrase, step.places);
      const Claims claims = claims_of(phrase, step.places, naming);
      if (!placement.readable || !claims.readable || !claims.complete || !claims.choice.empty() ||
          claims.degenerate)
        return what + " has no meaning at these places";
      // That three points of a circle are not on a line follows from what the premises show of them.
      if (phrase.predicate != Predicate::circle && !naming.positions().follows(placement))
        return what + " is not known of the figure";
      for (const auto& group : claims.groups)
        if (!shown(group, step.premises)) return what + " is not among the premises";
      for (const Equation& difference : claims.positive)
        if (!positive(difference, known_positive) && !shown_positive(difference, step.premises, naming, excesses))
          return what + " is not given";
    }
  }

  std::vector<Equation> may_conclude, more_than_zero;
  for (const Phrase& phrase : rule.then) {
    const Claims claims = claims_of(phrase, step.places, naming);
    if (!claims.readable || claims.degenerate)
      return "the conclusion of the rule " + rule.id + " has no meaning here";
    for (Equation& equation : claims.all()) may_conclude.push_back(std::move(equation));
    more_than_zero.insert(more_than_zero.end(), claims.positive.begin(), claims.positive.end());
  }
  for (const Equation& conclusion : step.conclusions)
    if (!in_span(conclusion, may_conclude) && !excesses.introduces(conclusion, more_than_zero, naming)) return "the rule " + rule.id + " does not conclude this";
  return {};
}

}  // namespace prover::replay
