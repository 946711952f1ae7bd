#include "prover/library/theorem.hpp"

#include <fmt/format.h>

namespace prover {

namespace {

std::string text_of(const std::vector<Phrase>& phrases, const Names& names) {
  std::string text;
  for (const Phrase& phrase : phrases) text += (text.empty() ? "" : "; ") + describe(phrase, names);
  return text;
}

void give(const std::vector<Phrase>& phrases, Statement& statement) {
  for (const Phrase& phrase : phrases)
    statement.givens.push_back({phrase, describe(phrase, statement.names), false});
}

void ask(std::vector<Phrase> claims, Statement& statement) {
  Goal goal;
  goal.kind = GoalKind::prove;
  goal.text = text_of(claims, statement.names);
  goal.claims = std::move(claims);
  statement.goals.push_back(std::move(goal));
}

// Sentences that draw come first in a case, so that their new letters are known to all that follows.
void draw(const std::vector<std::string>& sentences, Statement& statement, std::vector<Diagnostic>& mistakes) {
  for (const std::string& sentence : sentences) {
    const std::vector<Phrase> phrases = parse_phrases(sentence, statement.names, mistakes);
    AddedSentence added{"Draw: " + text_of(phrases, statement.names), {}, {}};
    for (const Phrase& phrase : phrases) {
      added.givens.push_back(statement.givens.size());
      statement.givens.push_back({phrase, describe(phrase, statement.names), true});
    }
    statement.added.push_back(std::move(added));
  }
}

TheoremCase case_of(const Rule& rule, const std::vector<Phrase>& premises, const ProofCase& one,
                    std::vector<Diagnostic>& mistakes) {
  TheoremCase result;
  Statement& statement = result.statement;
  statement.names = rule.variables;
  give(premises, statement);
  if (!one.when.empty()) {
    result.when = parse_phrases(one.when, statement.names, mistakes);
    result.name = text_of(result.when, statement.names);
    give(result.when, statement);
  }
  draw(one.added, statement, mistakes);
  ask(rule.then, statement);
  statement.hidden.assign(statement.names.points.size(), false);
  return result;
}

}  // namespace

Theorem theorem_of(const Rule& rule) {
  Theorem theorem;
  if (rule.builtin) {
    theorem.by_examples = true;
    const std::vector<std::string> added =
        rule.proof_cases.empty() ? std::vector<std::string>() : rule.proof_cases.front().added;
    for (const RuleExample& example : rule.examples) {
      if (!example.fires) continue;
      TheoremCase one;
      give(parse_phrases(example.givens, one.statement.names, theorem.mistakes), one.statement);
      one.name = text_of(phrases_of(one.statement), one.statement.names);
      draw(added, one.statement, theorem.mistakes);
      ask(parse_phrases(example.conclusion, one.statement.names, theorem.mistakes), one.statement);
      one.statement.hidden.assign(one.statement.names.points.size(), false);
      theorem.cases.push_back(std::move(one));
    }
    return theorem;
  }
  theorem.premises = rule.given;
  theorem.premises.insert(theorem.premises.end(), rule.where.begin(), rule.where.end());
  theorem.points = rule.variables.points.size();
  theorem.names = rule.variables;
  for (const ProofCase& one : rule.proof_cases)
    theorem.cases.push_back(case_of(rule, theorem.premises, one, theorem.mistakes));
  if (theorem.cases.empty()) theorem.cases.push_back(case_of(rule, theorem.premises, {}, theorem.mistakes));
  return theorem;
}

}  // namespace prover
