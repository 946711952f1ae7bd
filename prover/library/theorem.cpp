#include "prover/library/theorem.hpp"

#include <fmt/format.h>

#include <set>

namespace prover {

namespace {

std::string text_of(const std::vector<Phrase>& phrases, const Names& names) {
  std::string text;
  for (const Phrase& phrase : phrases) text += (text.empty() ? "" : "; ") + describe(phrase, names);
  return text;
}

// "Draw: P, K, Q lie on a line in this order; PQ ∥ LM", "Join OA and OB".
std::string drawing_in_words(const std::vector<Phrase>& phrases, const Names& names) {
  std::string drawn, joined;
  for (const Phrase& phrase : phrases) {
    if (phrase.predicate == Predicate::line_order && phrase.points.size() == 2)
      joined += (joined.empty() ? "" : " and ") + names.of(phrase.points[0]) + names.of(phrase.points[1]);
    else
      drawn += (drawn.empty() ? "Draw: " : "; ") + describe(phrase, names);
  }
  if (drawn.empty()) return "Join " + joined;
  return joined.empty() ? drawn : drawn + "; join " + joined;
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

// Sentences that draw. What is drawn in all cases is examined once, in `common`; to a case it is as good as given, and
// what makes the case may speak of it.
enum class Drawn { examined, to_examine };
void draw(const std::vector<std::string>& sentences, Drawn drawn, Statement& statement, std::vector<Diagnostic>& mistakes) {
  for (const std::string& sentence : sentences) {
    const std::vector<Phrase> phrases = parse_phrases(sentence, statement.names, mistakes);
    AddedSentence added{drawing_in_words(phrases, statement.names), {}, {}};
    for (const Phrase& phrase : phrases) {
      added.givens.push_back(statement.givens.size());
      statement.givens.push_back({phrase, describe(phrase, statement.names), drawn == Drawn::to_examine});
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
  draw({one.added.begin(), common}, Drawn::examined, statement, mistakes);
  if (!one.when.empty()) {
    result.when = parse_phrases(one.when, statement.names, mistakes);
    result.name = text_of(result.when, statement.names);
    give(result.when, statement);
  }
  draw({common, one.added.end()}, Drawn::to_examine, statement, mistakes);
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
  draw(added, Drawn::to_examine, statement, mistakes);
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
  Statement& common = theorem.common;
  common.names = rule.variables;
  give(rule.given, common);
  give(rule.where, common);
  if (!rule.proof_cases.empty()) {
    const auto& added = rule.proof_cases[0].added;
    draw({added.begin(), added.begin() + static_cast<std::ptrdiff_t>(rule.drawn_in_all)}, Drawn::to_examine, common,
         theorem.mistakes);
  }
  common.hidden.assign(common.names.points.size(), false);
  return theorem;
}

void rename_points(TheoremCase& one, const std::vector<std::string>& names) {
  Statement& statement = one.statement;
  auto& points = statement.names.points;
  std::set<std::string> taken(names.begin(), names.end());
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (i < names.size()) {
      points[i] = names[i];
      continue;
    }
    for (char letter = 'P'; taken.contains(points[i]) && letter <= 'Z'; ++letter) points[i] = std::string(1, letter);
    for (int digit = 1; taken.contains(points[i]); ++digit) points[i] = "P" + std::to_string(digit);
    taken.insert(points[i]);
  }
  for (Given& given : statement.givens) given.text = describe(given.phrase, statement.names);
  for (AddedSentence& added : statement.added) {
    std::vector<Phrase> phrases;
    for (const std::size_t i : added.givens) phrases.push_back(statement.givens[i].phrase);
    added.text = drawing_in_words(phrases, statement.names);
  }
  for (Goal& goal : statement.goals) goal.text = text_of(goal.claims, statement.names);
}

}  // namespace prover
