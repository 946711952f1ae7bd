#include "prover/evidence/superfluous.hpp"

#include <algorithm>
#include <set>

#include "prover/check/reading.hpp"
#include "prover/evidence/fewer_givens.hpp"
#include "prover/search/closure.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

// Each question may be a problem solved anew; a problem of 12 sentences, all of them needed, asks 12.
constexpr std::size_t kMostQuestions = 120;

std::vector<PointId> identity(const Statement& statement) {
  std::vector<PointId> places;
  for (std::size_t i = 0; i < statement.names.points.size(); ++i) places.emplace_back(static_cast<std::int64_t>(i));
  return places;
}

// Whether the saturation derives what the given says without it. Where it does not, no rules do: leaving a sentence out
// opens no new place for a rule.
bool derived_without(int given, const Workings& workings) {
  SearchProblem problem;
  for (const Instance& instance : workings.saturation.instances)
    if (instance.hypothesis == given)
      problem.goal.insert(problem.goal.end(), instance.conclusions.begin(), instance.conclusions.end());
    else
      problem.candidates.push_back({instance.premises, instance.conclusions, 0});
  if (problem.goal.empty()) return true;  // it said nothing new
  try {
    const FlatProblem flat(problem);
    Closure closure(flat);
    for (int i = 0; i < flat.size(); ++i) closure.add(i);
    return closure.reached();
  } catch (const RowOverflow&) {
    return true;  // not known: it is tried
  }
}

// The words of the other sentences alone say it, by two readings of their positions that share no code.
bool follows_by_position(const Phrase& phrase, const std::vector<Position>& positions, const Statement& others) {
  Arrangement arrangement(figure_text(others), {});
  arrangement.freeze();
  if (!std::all_of(positions.begin(), positions.end(), [&](const Position& p) { return arrangement.known(p); })) return false;
  replay::Positions text(others.names.points.size());
  const auto places = identity(others);
  for (const Given& given : others.givens)
    if (const auto placement = replay::placement_of(given.phrase, places); placement.readable) text.assume(placement);
  const auto placement = replay::placement_of(phrase, places);
  return placement.readable && text.follows(placement);
}

class Consequences {
 public:
  Consequences(const Statement& statement, const Solved& solved, const AttemptOptions& options, const Budget& budget)
      : statement_(statement), solved_(solved), options_(options), budget_(budget) {}

  std::optional<AnswerConsequence> look_at(std::size_t g) {
    const Given& given = statement_.givens[g];
    const Phrase& phrase = given.phrase;
    ElementSet kept(statement_.givens.size(), true);
    kept[g] = false;
    FewerGivens fewer = with_givens(statement_, kept);
    const Workings& workings = *solved_.cases[0].attempt.workings;
    UnknownTable unknowns;
    const Meaning meaning = meaning_of(phrase, workings.arrangement, unknowns);
    if (meaning.forms.empty()) {
      const bool only_positions = phrase.predicate != Predicate::relation && phrase.predicate != Predicate::acute;
      if (!only_positions || meaning.positions.empty() || !follows_by_position(phrase, meaning.positions, fewer.statement))
        return std::nullopt;
      return AnswerConsequence{given.text, positions_said(fewer.statement, phrase, meaning.positions), std::nullopt};
    }
    if (solved_.cases.size() == 1 && !derived_without(static_cast<int>(g), workings)) return std::nullopt;
    Goal goal;
    goal.kind = GoalKind::prove;
    goal.text = given.text;
    goal.claims = {phrase};
    fewer.statement.goals = {goal};
    // A position that the given states must come from the words of the others: figures are drawn to show it.
    const auto one = proved_with_the_lines_drawn(fewer.statement, options_, budget_.share(0.3), meaning.positions.empty());
    if (!one) return std::nullopt;
    const CheckedProof& checked = *one->attempt.goals[0];
    AnswerConsequence out{given.text, {}, answer_proof(checked, fewer.statement, goal, "", options_)};
    for (const int read : sentences_read(checked, fewer.statement, goal, *one, options_))
      out.from.push_back(fewer.statement.givens[static_cast<std::size_t>(read)].text);
    std::erase(out.from, "");
    return out;
  }

 private:
  // A smallest part of the sentences about positions that says it.
  static std::vector<std::string> positions_said(const Statement& others, const Phrase& phrase,
                                                 const std::vector<Position>& positions) {
    ElementSet kept(others.givens.size(), true);
    const ElementSet always = always_kept(others);
    for (std::size_t i = kept.size(); i-- > 0;) {
      if (always[i]) continue;
      kept[i] = false;
      if (!follows_by_position(phrase, positions, with_givens(others, kept).statement)) kept[i] = true;
    }
    std::vector<std::string> said;
    for (std::size_t i = 0; i < kept.size(); ++i)
      if (kept[i] && !others.givens[i].text.empty()) said.push_back(others.givens[i].text);
    return said;
  }

  const Statement& statement_;
  const Solved& solved_;
  const AttemptOptions& options_;
  const Budget& budget_;
};

}  // namespace

std::vector<int> sentences_read(const CheckedProof& checked, const Statement& statement, const Goal& goal,
                                const SolvedCase& one, const AttemptOptions& options) {
  const Workings& workings = *one.attempt.workings;
  const auto stands = [&](const ElementSet& kept) {
    const FewerGivens fewer = with_givens(statement, kept);
    Proof proof = checked.proof;
    for (ProofStep& step : proof.steps)
      if (step.instance.hypothesis >= 0)
        step.instance.hypothesis = fewer.place[static_cast<std::size_t>(step.instance.hypothesis)];
    return check(proof, fewer.statement, goal, options.catalogue, workings.unknowns, workings.views).accepted;
  };
  ElementSet kept(statement.givens.size(), true);
  const ElementSet always = always_kept(statement);
  std::set<int> cited;
  for (const ProofStep& step : checked.proof.steps) cited.insert(step.instance.hypothesis);
  std::vector<int> read;
  for (std::size_t i = kept.size(); i-- > 0;) {
    if (!cited.contains(static_cast<int>(i)) && !always[i]) {
      kept[i] = false;
      if (!stands(kept)) kept[i] = true;
    }
    if (kept[i] && (!always[i] || cited.contains(static_cast<int>(i)))) read.push_back(static_cast<int>(i));
  }
  std::reverse(read.begin(), read.end());
  return read;
}

AnswerSuperfluous superfluous_givens(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                                     const AttemptOptions& options, const Budget& budget) {
  AnswerSuperfluous out;
  const auto& givens = statements[0].givens;
  const ElementSet always = always_kept(statements[0]);
  StillProved still_proved(statements, solved, options, budget);
  const SufficientSets found =
      sufficient_sets(always, [&](const ElementSet& kept) { return still_proved(kept); }, kMostQuestions, budget.share(0.7));
  ElementSet needed = always;
  for (const std::vector<int>& set : found.sets) {
    std::vector<std::string> sentences;
    for (const int g : set) {
      needed[static_cast<std::size_t>(g)] = true;
      sentences.push_back(givens[static_cast<std::size_t>(g)].text);
    }
    out.sufficient.push_back(std::move(sentences));
  }
  if (!found.sets.empty())
    for (std::size_t g = 0; g < givens.size(); ++g)
      if (!needed[g]) out.not_needed.push_back(givens[g].text);
  out.stop = name_of(found.stop);
  if (statements.size() > 1) return out;
  Consequences consequences(statements[0], solved[0], options, budget);
  for (std::size_t g = 0; g < givens.size(); ++g) {
    if (always[g]) continue;
    if (budget.exhausted()) {
      out.stop = name_of(budget.reason());
      break;
    }
    if (auto one = consequences.look_at(g)) out.consequences.push_back(std::move(*one));
  }
  return out;
}

}  // namespace prover
