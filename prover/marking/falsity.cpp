#include "prover/marking/falsity.hpp"

#include <algorithm>

#include "prover/chain/saturate.hpp"
#include "prover/marking/support.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/search/lightest_set.hpp"
#include "prover/rule/wording.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

constexpr double kTolerance = 1e-3;
constexpr std::size_t kMostInstances = 4'000;

// One mistake, and what costs nothing: from more than that a wrong rule would soon contradict everything.
bool leads_to(const Phrase& claim, const Mistake& mistake, const MistakeBook& book, const Statement& statement,
              const Arrangement& arrangement, const Budget& budget, std::vector<std::string>& places) {
  UnknownTable unknowns;
  Goal goal;
  goal.kind = GoalKind::prove;
  goal.claims = {claim};
  note_goal(goal, arrangement, unknowns);
  ChainOptions chain;
  chain.allowed.assign(book.catalogue.rules.size(), false);
  for (std::size_t r = 0; r < book.true_rules; ++r) chain.allowed[r] = !is_cited(book.catalogue.rules[r]);
  chain.allowed[mistake.rule.index()] = true;
  const Saturation saturation = saturate(statement, arrangement, book.catalogue, unknowns, {}, chain, budget);
  const GoalForms forms = goal_forms(goal, saturation.closure, arrangement, unknowns, statement.names);
  if (forms.unsupported || !forms.missing_position.empty() || forms.forms.empty()) return false;
  SearchProblem problem;
  problem.goal = forms.forms;
  for (const Instance& instance : saturation.instances)
    problem.candidates.push_back({instance.premises, instance.conclusions, instance.rule == mistake.rule ? 100 : 1});
  const auto light = lightest_set(problem, {budget.share(0.5), {}, nullptr});
  if (!light) return false;
  LinearSystem system;
  const Instance* wrong = nullptr;
  for (const int m : light->members) {
    const Instance& instance = saturation.instances[static_cast<std::size_t>(m)];
    if (instance.rule == mistake.rule) {
      if (wrong) return false;  // made twice in one line: nobody did that
      wrong = &instance;
    }
    for (const Form& form : instance.conclusions) system.add(form);
  }
  if (!wrong || system.contradictory()) return false;
  for (const PointId p : wrong->places) places.push_back(statement.names.of(p));
  return true;
}

}  // namespace

InFigures in_figures(const Phrase& claim, const std::vector<Sketch>& figures) {
  InFigures result;
  for (std::size_t i = 0; i < figures.size(); ++i) (holds(claim, figures[i], kTolerance) ? result.holds : result.breaks).push_back(i);
  return result;
}

std::optional<std::string> right_value(const Phrase& claim, const Ground& ground) {
  if (claim.predicate != Predicate::relation || claim.relation.expressions.size() != 2) return std::nullopt;
  const auto& right = claim.relation.expressions[1].terms;
  if (std::any_of(right.begin(), right.end(), [](const Term& t) { return !std::holds_alternative<One>(t.quantity); })) return std::nullopt;
  Goal asked;
  asked.claims = {claim};
  asked.claims[0].relation.expressions.pop_back();
  asked.claims[0].relation.comparisons.clear();
  const GoalForms found = goal_forms(asked, ground.saturation().closure, ground.arrangement(), ground.unknowns(), ground.statement().names);
  if (!found.number) return std::nullopt;
  const auto& left = claim.relation.expressions[0].terms;
  const bool angle = std::any_of(left.begin(), left.end(), [](const Term& t) { return std::holds_alternative<Angle>(t.quantity); });
  return angle ? degrees_text(*found.number) : number_text(*found.number);
}

std::optional<MistakeMade> mistake_behind(const Phrase& claim, const std::vector<Phrase>& before, const std::vector<bool>& named,
                                          const Statement& statement, const std::vector<Sketch>& figures,
                                          const AttemptOptions& options, const Budget& budget) {
  if (options.catalogue.serial != standard_catalogue().serial) return std::nullopt;
  const MistakeBook& book = standard_mistakes();
  const bool any_named = std::find(named.begin(), named.end(), true) != named.end();
  Statement as_pupil = statement;
  for (const Phrase& phrase : before) as_pupil.givens.push_back({phrase, {}, false});
  std::vector<Coordinates> views;
  if (!figures.empty()) views.push_back(figures[0].points);
  Arrangement arrangement(figure_text(as_pupil), std::move(views));
  arrangement.freeze();
  Budget limited = budget.share(0.1);
  limited.max_instances = kMostInstances;
  for (const Mistake& mistake : book.mistakes) {
    if (limited.exhausted()) break;
    const auto instead = book.catalogue.find(mistake.instead);
    if (!instead || (any_named && !named[instead->index()])) continue;
    std::vector<std::string> places;
    if (!leads_to(claim, mistake, book, as_pupil, arrangement, limited, places)) continue;
    MistakeMade made;
    made.id = book.catalogue[mistake.rule].id;
    made.name = book.catalogue[mistake.rule].title;
    made.missing = fill_missing(book, mistake, places);
    made.hint = fill_hint(book.catalogue[mistake.rule], options.wording, HintRung::where, places);
    return made;
  }
  return std::nullopt;
}

}  // namespace prover
