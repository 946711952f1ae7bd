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

TheoremCase case_of(const Rule& rule, const ProofCase& one, std::vector<Diagnostic>& mistakes) {
  TheoremCase result;
  Statement& statement = result.statement;
  statement.names = rule.variables;
  give(rule.given, statement);
  give(rule.where, statement);
  const auto common = one.added.begin() + static_cast<std::ptrdiff_t>(rule.drawn_in_all);
  draw({one.added.begin(), common}, statement, mistakes);
  if (!one.when.empty()) {
    result.when = parse_phrases(one.when, statement.names, mistakes);
    result.name = text_of(result.when, statement.names);
    give(result.when, statement);
  }
  draw({common, one.added.end()}, statement, mistakes);
  ask(rule.then, statement);
  statement.hidden.assign(statement.names.points.size(), false);
  return result;
}

// A built-in shape: a problem of its own.
TheoremCase problem_of(const std::string& givens, const std::string& claim, const std::vector<std::string>& added,
                       std::vector<Diagnostic>& mistakes) {
  TheoremCase result;
  Statement& statement = result.statement;
  give(parse_phrases(givens, statement.names, mistakes), statement);
  result.name = text_of(phrases_of(statement), statement.names);
  const std::vector<Phrase> claims = parse_phrases(claim, statement.names, mistakes);
  draw(added, statement, mistakes);
  ask(claims, statement);
  statement.hidden.assign(statement.names.points.size(), false);
  return result;
}

}  // namespace

Theorem theorem_of(const Rule& rule) {
  Theorem theorem;
  if (rule.builtin) {
    theorem.by_examples = true;
    for (const ProofCase& one : rule.proof_cases)
      if (!one.claim.empty()) theorem.cases.push_back(problem_of(one.when, one.claim, one.added, theorem.mistakes));
    if (!theorem.cases.empty()) return theorem;
    for (const RuleExample& example : rule.examples)
      if (example.fires) theorem.cases.push_back(problem_of(example.givens, example.conclusion, {}, theorem.mistakes));
    return theorem;
  }
  for (const ProofCase& one : rule.proof_cases) theorem.cases.push_back(case_of(rule, one, theorem.mistakes));
  if (theorem.cases.empty()) theorem.cases.push_back(case_of(rule, {}, theorem.mistakes));
  theorem.premises = rule.given;
  theorem.premises.insert(theorem.premises.end(), rule.where.begin(), rule.where.end());
  theorem.names = rule.variables;
  if (!rule.proof_cases.empty())
    for (std::size_t i = 0; i < rule.drawn_in_all; ++i) {
      const auto drawn = parse_phrases(rule.proof_cases[0].added[i], theorem.names, theorem.mistakes);
      theorem.premises.insert(theorem.premises.end(), drawn.begin(), drawn.end());
    }
  return theorem;
}

}  // namespace prover
