#include "prover/evidence/answer_book.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "prover/evidence/trial.hpp"
#include "prover/language/equation.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover {

namespace {

constexpr int starts_for_a_value = 120;

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return c < 'A' || c > 'Z' ? c : c + 32; });
  return text;
}

std::string trimmed(std::string text) {
  const auto first = text.find_first_not_of(" \t."), last = text.find_last_not_of(" \t.");
  return first == std::string::npos ? std::string() : text.substr(first, last - first + 1);
}

// "x = 12", "64°", "64 degrees", "18,5": the number behind the last "=".
std::optional<Rational> number_in(std::string text) {
  text = text.substr(text.rfind('=') + 1);  // npos + 1 is 0
  for (const char* unit : {"°", "degrees", "degree", "deg", "cm"})
    if (const auto at = text.find(unit); at != std::string::npos) text.erase(at);
  std::replace(text.begin(), text.end(), ',', '.');
  return Rational::parse(trimmed(text));
}

std::optional<bool> yes_or_no(const std::string& text) {
  const std::string word = lower(trimmed(text));
  if (word == "yes" || word == "true" || word == "proved") return true;
  if (word == "no" || word == "false") return false;
  return std::nullopt;
}

std::vector<std::string> split(const std::string& text) {
  std::vector<std::string> parts;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find(';', begin), text.size());
    parts.push_back(trimmed(text.substr(begin, end - begin)));
    begin = end + 1;
  }
  return parts;
}

// "74" as the goal's quantity is written: an angle in degrees.
std::string sized(const std::string& value, const Goal& goal) {
  const auto& terms = goal.claims[0].relation.expressions[0].terms;
  const bool angle = !terms.empty() && std::holds_alternative<Angle>(terms[0].quantity);
  return Rational::parse(value) && angle ? value + "°" : value;
}

AnswerBookEntry entry(const std::string& goal, const std::string& given, const char* outcome, std::string text) {
  return {goal, given, outcome, "The answer book says " + given + "; " + std::move(text), {}};
}

// A figure of the givens in which the asked quantity has this value.
bool drawable(const Statement& statement, const Goal& goal, const Rational& value, const Budget& budget) {
  std::vector<Phrase> givens = phrases_of(statement);
  givens.push_back(equation(goal.claims[0].relation.expressions[0], value));
  SketchOptions options;
  options.wanted = 1;
  options.starts = starts_for_a_value;
  options.seek_arrangements = false;
  return !sketch(givens, statement.names.points.size(), budget.share(0.5), options).sketches.empty();
}

// Does the phrase give a size? "Right only if angle KLM = 40" would say no more than the answer itself.
bool gives_size(const Phrase& phrase) {
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (std::holds_alternative<One>(term.quantity)) return true;
  return false;
}

// Of the sets that would settle the answer, those with which it is proved to be this value.
std::vector<std::string> right_only_if(const Rational& value, const std::vector<Statement>& statements,
                                       const AttemptOptions& options, const Budget& budget, const Answer& answer) {
  std::vector<std::string> result;
  for (const std::vector<std::string>& set : answer.settled_by) {
    std::vector<Statement> more = statements;
    std::string words;
    bool sizes = false;
    for (const std::string& sentence : set) {
      std::vector<Diagnostic> ignored;
      for (const Phrase& phrase : parse_phrases(sentence, more[0].names, ignored)) {
        sizes |= gives_size(phrase);
        words += (words.empty() ? "" : " and ") + describe(phrase, more[0].names);
        for (Statement& one : more) one.givens.push_back({phrase, words, false});
      }
    }
    if (sizes || words.empty() || more[0].names.points.size() != statements[0].names.points.size()) continue;
    const Answer with = try_again(more, options, budget.share(0.5));
    if (with.verdict == Verdict::proved && with.value == value.to_string()) result.push_back(words);
  }
  return result;
}

AnswerBookEntry check_value(const std::string& given, std::size_t g, const std::vector<Statement>& statements,
                            const AttemptOptions& options, const Budget& budget, const Answer& answer) {
  const Goal& goal = statements[0].goals[g];
  const auto value = number_in(given);
  if (!value) return entry(goal.text, given, "unread", "that is not a number, so it was not compared.");
  const std::string exact = value->to_string();
  if (answer.verdict == Verdict::proved || (answer.verdict == Verdict::beyond_rules && !answer.value.empty())) {
    const std::vector<std::string> values = split(answer.value);
    const std::string ours = g < values.size() ? values[g] : answer.value;
    return ours == exact ? entry(goal.text, given, "agrees", "that agrees.")
                         : entry(goal.text, given, "differs", "what follows from the givens is " + sized(ours, goal) + ".");
  }
  if (answer.verdict == Verdict::contradictory)
    return entry(goal.text, given, "no-figure", "but no figure meets the givens at all.");
  if (answer.verdict == Verdict::depends_on_figure) {
    std::string others;
    for (const AnswerCase& one : answer.cases)
      if (one.value != exact && !one.value.empty() && others.find(sized(one.value, goal)) == std::string::npos)
        others += (others.empty() ? "" : " or ") + sized(one.value, goal);
    for (const AnswerCase& one : answer.cases)
      if (one.value == exact)
        return entry(goal.text, given, "one-case", fmt::format("that is right only if {}; otherwise it is {}.", one.name, others));
    return entry(goal.text, given, "differs", "what follows from the givens is " + others + ".");
  }
  if (answer.verdict != Verdict::undetermined) return entry(goal.text, given, "not-decided", "that could not be decided.");
  const bool drawn = std::any_of(statements.begin(), statements.end(), [&](const Statement& statement) {
    return drawable(statement, statement.goals[g], *value, budget);
  });
  if (!drawn) return entry(goal.text, given, "no-figure", "no figure with that answer was found that meets the givens.");
  if (const auto only_if = right_only_if(*value, statements, options, budget, answer); !only_if.empty()) {
    AnswerBookEntry result = entry(goal.text, given, "only-if", "that is right only if something is added, for example that " + only_if[0] + ".");
    result.only_if = only_if;
    return result;
  }
  return entry(goal.text, given, "possible", "a figure with that answer meets the givens, but so do figures with other answers.");
}

AnswerBookEntry check_claim(const std::string& given, const Goal& goal, const Answer& answer) {
  const auto said = yes_or_no(given);
  if (!said) return entry(goal.text, given, "unread", "that is neither yes nor no, so it was not compared.");
  if (answer.verdict == Verdict::proved || answer.verdict == Verdict::false_claim)
    return *said == (answer.verdict == Verdict::proved)
               ? entry(goal.text, given, "agrees", "that agrees.")
               : entry(goal.text, given, "differs", *said ? "but the claim is false." : "but the claim is proved.");
  return entry(goal.text, given, "not-decided", "that could not be decided.");
}

}  // namespace

std::vector<AnswerBookEntry> check_answer_book(const std::vector<std::string>& given,
                                               const std::vector<Statement>& statements, const AttemptOptions& options,
                                               const Budget& budget, const Answer& answer) {
  std::vector<AnswerBookEntry> result;
  const auto& goals = statements[0].goals;
  for (std::size_t g = 0; g < goals.size() && g < given.size(); ++g)
    result.push_back(goals[g].kind == GoalKind::find ? check_value(given[g], g, statements, options, budget, answer)
                                                     : check_claim(given[g], goals[g], answer));
  return result;
}

}  // namespace prover
