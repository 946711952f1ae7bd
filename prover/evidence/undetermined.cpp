#include "prover/evidence/undetermined.hpp"

#include <fmt/format.h>

#include <cmath>

#include "prover/evidence/in_terms_of.hpp"
#include "prover/evidence/settling.hpp"
#include "prover/motion/existence.hpp"
#include "prover/motion/far_figures.hpp"
#include "prover/motion/mechanism.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

struct Place {
  std::size_t statement = 0, goal = 0;
};

// Where the figures differ most is what the two figures show; by motion rather than by arrangement.
bool better(const motion::FarFigures& a, const motion::FarFigures& b) {
  if (a.same_arrangement != b.same_arrangement) return a.same_arrangement;
  return a.most_value - a.least_value > b.most_value - b.least_value;
}

AnswerFigure shown(const char* name, const Sketch& figure, const Statement& statement, const Goal& goal,
                   const std::vector<Phrase>& givens) {
  AnswerFigure result = answer_figure(name, figure, statement);
  result.value = measure(goal.claims[0].relation.expressions[0], figure);
  result.exists = motion::Existence::of(givens, figure).has_value();
  return result;
}

}  // namespace

Undetermined undetermined_evidence(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                                   const AttemptOptions& options, const Budget& budget) {
  Undetermined result;
  std::optional<motion::FarFigures> best;
  Place place;
  for (std::size_t s = 0; s < statements.size(); ++s)
    for (std::size_t g = 0; g < statements[s].goals.size(); ++g) {
      const Goal& goal = statements[s].goals[g];
      if (goal.kind != GoalKind::find || budget.exhausted()) continue;
      auto figures = motion::far_figures(phrases_of(statements[s]), solved[s].figures.sketches,
                                         goal.claims[0].relation.expressions[0], budget.share(0.3));
      if (!figures || (best && !better(*figures, *best))) continue;
      best = std::move(figures);
      place = {s, g};
    }
  if (!best) return result;
  const Statement& statement = statements[place.statement];
  const Goal& goal = statement.goals[place.goal];
  const std::vector<Phrase> givens = phrases_of(statement);
  result.figures.push_back(shown("one figure", best->least, statement, goal, givens));
  result.figures.push_back(shown("another figure", best->most, statement, goal, givens));
  result.freedom = best->freedom;
  result.by_arrangement = !best->same_arrangement;
  const auto& cases = solved[place.statement].cases;
  if (cases.empty() || !cases[0].attempt.workings) return result;
  Workings& workings = *cases[0].attempt.workings;
  for (const Sketch& figure : solved[place.statement].figures.sketches) {
    const auto mechanism = motion::Mechanism::at(givens, figure);
    if (!mechanism || !mechanism->moves(goal.claims[0].relation.expressions[0])) continue;
    const Sketch polished = mechanism->figure();
    result.in_terms_of = in_terms_of(statement, place.goal, workings, polished, options, budget.share(0.3));
    result.settled_by = settling_sets(statement, place.goal, workings, polished, options, budget.share(0.6));
    break;
  }
  return result;
}

void add_undetermined(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                      const AttemptOptions& options, const Budget& budget, Answer& answer) {
  Undetermined found = undetermined_evidence(statements, solved, options, budget);
  if (found.figures.empty()) return;
  answer.figures = std::move(found.figures);
  const bool exist = answer.figures[0].exists && answer.figures[1].exists;
  answer.summary = fmt::format(
      "The givens do not settle the answer: two figures{} meet them all and differ in what is asked ({}).",
      found.by_arrangement ? ", arranged differently," : "",
      exist ? "that they exist is proved by intervals" : "measured");
  for (SettlingSet& set : found.settled_by) {
    answer.missing.push_back(std::move(set.says));
    answer.settled_by.push_back(std::move(set.sentences));
  }
  answer.in_terms_of = std::move(found.in_terms_of);
}

}  // namespace prover
