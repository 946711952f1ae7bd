#include "prover/evidence/fewer_givens.hpp"

#include <algorithm>
#include <cmath>

#include "prover/language/phrase_points.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

// The proof with its hypotheses renumbered; nothing when it uses one that is left out.
std::optional<Proof> moved(const Proof& proof, const std::vector<int>& place) {
  Proof out = proof;
  for (ProofStep& step : out.steps) {
    if (step.instance.hypothesis < 0) continue;
    const int to = place[static_cast<std::size_t>(step.instance.hypothesis)];
    if (to < 0) return std::nullopt;
    step.instance.hypothesis = to;
  }
  return out;
}

bool only_names_points(const Phrase& phrase) {
  return phrase.predicate == Predicate::triangle ||
         (phrase.predicate == Predicate::line_order && phrase.points.size() == 2);
}

}  // namespace

FewerGivens with_givens(const Statement& whole, const ElementSet& kept) {
  FewerGivens out{whole, std::vector<int>(whole.givens.size(), -1)};
  out.statement.givens.clear();
  for (std::size_t i = 0; i < whole.givens.size(); ++i) {
    if (!kept[i]) continue;
    out.place[i] = static_cast<int>(out.statement.givens.size());
    out.statement.givens.push_back(whole.givens[i]);
  }
  for (std::size_t i = 0; i < whole.givens.size(); ++i) {
    if (kept[i]) continue;
    for (const auto& [a, b] : drawn_pairs(whole.givens[i].phrase))
      out.statement.givens.push_back({phrase_of(Predicate::line_order, {a, b}), "", false});
  }
  for (AddedSentence& added : out.statement.added)
    for (std::size_t& given : added.givens) given = static_cast<std::size_t>(out.place[given]);
  return out;
}

ElementSet always_kept(const Statement& statement) {
  ElementSet kept(statement.givens.size(), false);
  for (std::size_t i = 0; i < kept.size(); ++i)
    kept[i] = statement.givens[i].added || only_names_points(statement.givens[i].phrase);
  return kept;
}

std::optional<SolvedCase> proved_with_the_lines_drawn(const Statement& statement, const AttemptOptions& options,
                                                      const Budget& budget, bool may_read_figures) {
  StageTimes times;
  double sketch_ms = 0;
  const auto settled = [&](const Attempt& one) {
    return one.all_reached && std::all_of(one.goals.begin(), one.goals.end(), [](const auto& goal) { return trusted(*goal); });
  };
  SolvedCase one;
  one.attempt = attempt(statement, {}, options, budget.share(0.4), times);
  if (settled(one.attempt)) return one;
  if (!may_read_figures || one.attempt.contradiction) return std::nullopt;
  const SketchReport figures = sketch(phrases_of(statement), statement.names.points.size(), budget.share(0.4), {});
  if (figures.sketches.empty()) return std::nullopt;
  one.attempt = attempt(statement, figures.sketches, options, budget.share(0.6), times);
  if (!settled(one.attempt)) return std::nullopt;
  for (const auto& goal : one.attempt.goals)
    for (const Position& p : seen_positions(goal->proof))
      if (!figures_against(statement, p, budget.share(0.5), sketch_ms).empty()) return std::nullopt;
  return one;
}

StillProved::StillProved(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                         const AttemptOptions& options, const Budget& budget)
    : statements_(statements), solved_(solved), options_(options), budget_(budget) {
  values_.resize(statements[0].goals.size());
  for (std::size_t s = 0; s < statements.size(); ++s)
    for (const SolvedCase& one : solved[s].cases)
      for (std::size_t g = 0; g < values_.size(); ++g) {
        values_[g].insert(one.attempt.goals[g]->value);
        derived_.push_back(hypothesis_sets(statements[s], one, g));
        complete_ = complete_ && derived_.back().complete;
      }
}

StillProved::Derived StillProved::hypothesis_sets(const Statement& statement, const SolvedCase& one, std::size_t goal) const {
  Workings& workings = *one.attempt.workings;
  const GoalForms& forms = workings.goals[goal];
  const Scene scene{statement, workings.arrangement, workings.unknowns, workings.views, options_};
  GoalSearch search = goal_search(workings.saturation, {statement.goals[goal], forms.forms, forms.positions, false}, scene);
  const ElementSet always = always_kept(statement);
  for (std::size_t i = 0; i < search.instances.size(); ++i) {
    const int hypothesis = search.instances[i]->hypothesis;
    search.problem.candidates[i].weight = hypothesis >= 0 && !always[static_cast<std::size_t>(hypothesis)] ? 1 : 0;
  }
  SeveralLimits limits;
  limits.search.budget = budget_.share(0.3);
  limits.most_sets = 64;
  const LightSets light = lightest_sets(search.problem, limits);
  Derived out;
  out.complete = light.stop == StopReason::saturated;
  for (const LightSet& set : light.sets) {
    std::vector<int> hypotheses;
    for (const int i : set.members)
      if (search.problem.candidates[static_cast<std::size_t>(i)].weight > 0)
        hypotheses.push_back(search.instances[static_cast<std::size_t>(i)]->hypothesis);
    out.sets.push_back(std::move(hypotheses));
  }
  return out;
}

bool StillProved::derivable(const ElementSet& kept) const {
  return std::all_of(derived_.begin(), derived_.end(), [&](const Derived& goal) {
    return !goal.complete || std::any_of(goal.sets.begin(), goal.sets.end(), [&](const std::vector<int>& set) {
      return std::all_of(set.begin(), set.end(), [&](int h) { return kept[static_cast<std::size_t>(h)]; });
    });
  });
}

// Proofs that read nothing from figures, on what the kept sentences say alone.
bool StillProved::proofs_stand(const ElementSet& kept) const {
  for (std::size_t s = 0; s < statements_.size(); ++s) {
    if (solved_[s].cases.size() != 1) return false;
    const SolvedCase& one = solved_[s].cases[0];
    const FewerGivens fewer = with_givens(statements_[s], kept);
    for (std::size_t g = 0; g < values_.size(); ++g) {
      const CheckedProof& checked = *one.attempt.goals[g];
      if (!seen_positions(checked.proof).empty()) return false;
      const auto proof = moved(checked.proof, fewer.place);
      if (!proof || !check(*proof, fewer.statement, statements_[s].goals[g], options_.catalogue,
                           one.attempt.workings->unknowns, {})
                         .accepted)
        return false;
    }
  }
  return true;
}

bool StillProved::measures_otherwise(const FewerGivens& fewer) const {
  SketchOptions quick;
  quick.wanted = 3;
  quick.starts = 40;
  const SketchReport report =
      sketch(phrases_of(fewer.statement), fewer.statement.names.points.size(), budget_.share(0.2), quick);
  for (std::size_t g = 0; g < values_.size(); ++g) {
    const Goal& goal = fewer.statement.goals[g];
    const auto& number = solved_[0].cases[0].attempt.goals[g]->number;
    for (const Sketch& figure : report.sketches) {
      if (goal.kind == GoalKind::prove) {
        for (const Phrase& claim : goal.claims)
          if (!holds(claim, figure, 1e-3)) return true;
      } else if (number && values_[g].size() == 1) {
        const double measured = measure(goal.claims[0].relation.expressions[0], figure);
        if (std::isfinite(measured) && std::abs(measured - number->to_double()) > 1e-3) return true;
      }
    }
  }
  return false;
}

bool StillProved::solved_anew(const ElementSet& kept) {
  std::vector<std::set<std::string>> values(values_.size());
  for (std::size_t s = 0; s < statements_.size(); ++s) {
    const FewerGivens fewer = with_givens(statements_[s], kept);
    if (measures_otherwise(fewer)) return false;
    const auto proved = proved_with_the_lines_drawn(fewer.statement, options_, budget_.share(0.3));
    if (!proved) return false;
    for (std::size_t g = 0; g < values.size(); ++g) values[g].insert(proved->attempt.goals[g]->value);
  }
  return values == values_;
}

bool StillProved::operator()(const ElementSet& kept) {
  if (std::find(kept.begin(), kept.end(), false) == kept.end()) return true;
  return derivable(kept) && (proofs_stand(kept) || solved_anew(kept));
}

}  // namespace prover
