#include "prover/library/save_rule.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "prover/library/own_rules.hpp"
#include "prover/measure/condition.hpp"
#include "prover/measure/trial.hpp"
#include "prover/prove.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

namespace {

// What may stand in `where`: positions, and nothing that a proof would have to derive.
bool is_position(const Phrase& phrase) {
  static constexpr std::array positions{Predicate::line_order,     Predicate::on_segment,   Predicate::convex,
                                        Predicate::inside_polygon, Predicate::inside_angle, Predicate::same_side,
                                        Predicate::opposite_sides};
  return std::find(positions.begin(), positions.end(), phrase.predicate) != positions.end();
}

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : "; ") + part;
  return text;
}

std::vector<std::string> texts_of(const std::vector<Phrase>& phrases, const Names& names) {
  std::vector<std::string> texts;
  for (const Phrase& phrase : phrases) texts.push_back(describe(phrase, names));
  return texts;
}

// Other letters for the example: as many as there are points, from K on.
Names other_letters(const Names& names) {
  Names other;
  for (std::size_t i = 0; i < names.points.size(); ++i)
    other.points.push_back(i < 16 ? std::string(1, static_cast<char>('K' + i)) : "K" + std::to_string(i - 15));
  return other;
}

struct Parts {
  Names names;
  std::vector<Phrase> given, where, then;
  std::vector<std::string> added;
};

std::string spoken(const std::string& name) {
  std::string text = name;
  std::replace(text.begin(), text.end(), '-', ' ');
  return text;
}

std::string file_of(const std::string& name, const Parts& parts, bool proved, const std::vector<Phrase>& silent) {
  const Names other = other_letters(parts.names);
  std::vector<Phrase> premises = parts.given;
  premises.insert(premises.end(), parts.where.begin(), parts.where.end());
  std::string text = fmt::format("rule {}\n  title    \"{}\"\n  kind     {}\n", name, spoken(name), proved ? "theorem" : "postulate");
  text += fmt::format("  says     \"If {}, then {}.\"\n", joined(texts_of(premises, parts.names)),
                      joined(texts_of(parts.then, parts.names)));
  if (!parts.given.empty()) text += "  given    " + joined(texts_of(parts.given, parts.names)) + "\n";
  if (!parts.where.empty()) text += "  where    " + joined(texts_of(parts.where, parts.names)) + "\n";
  text += "  then     " + joined(texts_of(parts.then, parts.names)) + "\n";
  text += fmt::format("  plain    \"{}\"\n", spoken(name));
  text += proved ? "  why      Proved as a problem; its proof is made anew whenever it is cited.\n"
                 : "  why      Assumed, not proved.\n";
  for (const std::string& added : parts.added) text += "  add      " + added + "\n";
  text += "  source   \"a rule of our own\"\n";
  const std::string claim = joined(texts_of(parts.then, other));
  text += fmt::format("  example  fires   {}   gives  {}\n", joined(texts_of(premises, other)), claim);
  text += fmt::format("  example  silent  {}   gives  {}\n", joined(texts_of(silent, other)), claim);
  return text;
}

// One premise left out, so that the claim no longer follows: a figure says so.
std::optional<std::vector<Phrase>> premises_that_miss(const Rule& rule) {
  std::vector<Phrase> premises = conditions_of(rule);
  for (std::size_t left_out = 0; left_out < premises.size(); ++left_out) {
    if (!figure_without(rule, left_out)) continue;
    premises.erase(premises.begin() + static_cast<std::ptrdiff_t>(left_out));
    if (!premises.empty()) return premises;
    return std::nullopt;
  }
  return std::nullopt;
}

struct Loaded {
  Catalogue catalogue;
  std::string mistake;
};
Loaded with_rule(const std::string& name, const std::string& file, const Catalogue& catalogue) {
  const LoadedCatalogue alone = load_catalogue({{"own/" + name + ".rule", file}});
  Loaded result{catalogue, {}};
  for (const auto& [bad, mistakes] : alone.mistakes)
    for (const Diagnostic& mistake : mistakes)
      if (result.mistake.empty() && mistake.severity == Severity::error) result.mistake = mistake.message;
  if (result.mistake.empty() && alone.catalogue.rules.empty()) result.mistake = "it cannot be read as a rule";
  if (result.mistake.empty()) {
    result.catalogue.rules.push_back(alone.catalogue.rules[0]);
    result.catalogue.rules.back().assumed = true;
    result.catalogue.serial = alone.catalogue.serial;
  }
  return result;
}

}  // namespace

RuleToSave rule_from_problem(const std::string& name, std::string_view problem, const Catalogue& catalogue, bool assume,
                             const Budget& budget) {
  RuleToSave result;
  if (catalogue.find(name)) {
    result.objection = fmt::format("there is a rule “{}” already", name);
    return result;
  }
  const ProblemText text = parse_problem(problem);
  result.diagnostics = text.diagnostics;
  if (has_error(text.diagnostics)) {
    result.objection = "the problem has mistakes";
    return result;
  }
  const std::vector<Statement> statements = statements_of(text);
  if (statements.size() != 1 || text.goals.empty() ||
      std::any_of(text.goals.begin(), text.goals.end(), [](const Goal& g) { return g.kind != GoalKind::prove; })) {
    result.objection = "only a problem with `prove:`, without open cases, can become a rule";
    return result;
  }
  Parts parts;
  parts.names = text.names;
  for (const Given& given : statements[0].givens)
    if (!given.added) (is_position(given.phrase) ? parts.where : parts.given).push_back(given.phrase);
  for (const Goal& goal : text.goals) parts.then.insert(parts.then.end(), goal.claims.begin(), goal.claims.end());
  for (const AddedSentence& added : statements[0].added) {
    std::vector<Phrase> phrases;
    for (const std::size_t i : added.givens) phrases.push_back(statements[0].givens[i].phrase);
    parts.added.push_back(joined(texts_of(phrases, parts.names)));
  }

  std::vector<Phrase> premises = parts.given;
  premises.insert(premises.end(), parts.where.begin(), parts.where.end());
  Loaded loaded = with_rule(name, file_of(name, parts, true, premises), catalogue);
  if (!loaded.mistake.empty()) {
    result.objection = "as a rule it has a mistake: " + loaded.mistake;
    return result;
  }
  const RuleId rule(static_cast<std::int64_t>(loaded.catalogue.rules.size()) - 1);
  const Trial trial = try_rule(loaded.catalogue[rule], {}, budget);
  if (trial.refutation) {
    result.objection = "as a rule it is false: a figure meets its premises and breaks its conclusion, perhaps with two letters on one point";
    return result;
  }
  const TheoremReport report = prove_own_rule(loaded.catalogue, rule, Register::plain, budget);
  result.proved = report.status == TheoremStatus::proved;
  result.may_be_assumed = !result.proved;
  if (!result.proved) result.objection = report.why_not;
  if (!result.proved && !assume) return result;
  const auto silent = premises_that_miss(loaded.catalogue[rule]);
  if (!silent) {
    result.objection = "no figure was found that shows what goes wrong without one of its premises";
    return result;
  }
  result.file = file_of(name, parts, result.proved, *silent);
  return result;
}

}  // namespace prover
