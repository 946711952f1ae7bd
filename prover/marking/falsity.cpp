#include "prover/marking/falsity.hpp"

#include <algorithm>

#include "prover/chain/saturate.hpp"
#include "prover/marking/support.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/search/lightest_set.hpp"
#include "prover/rule/wording.hpp"
#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

constexpr double kTolerance = 1e-3;
constexpr std::size_t kMostInstances = 400;

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
  // The search takes all equations for true of one figure, which these are not.
  const auto follows = [&](const Form& form) { return system.entails(form); };
  if (!wrong || system.contradictory() || !std::all_of(forms.forms.begin(), forms.forms.end(), follows)) return false;
  for (const PointId p : wrong->places) places.push_back(statement.names.of(p));
  return true;
}

enum class Kind { angles, lengths, facts };

Kind kind_of(const Phrase& phrase) {
  if (phrase.predicate != Predicate::relation) return Kind::facts;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (std::holds_alternative<Segment>(term.quantity)) return Kind::lengths;
  return Kind::angles;
}

// A mistake about circles where there is none, or about sides where the line speaks of angles, was not made.
bool may_lead_to(const Phrase& claim, const Rule& mistake, const std::vector<Phrase>& known) {
  const bool concludes = std::any_of(mistake.then.begin(), mistake.then.end(), [&](const Phrase& p) {
    return kind_of(p) == kind_of(claim) && (kind_of(p) != Kind::facts || p.predicate == claim.predicate);
  });
  return concludes && std::all_of(mistake.given.begin(), mistake.given.end(), [&](const Phrase& premise) {
    const auto kind = fact_kind_of(premise);
    return !kind || std::any_of(known.begin(), known.end(), [&](const Phrase& p) { return fact_kind_of(p) == kind; });
  });
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
                                          const AttemptOptions& options, const Budget& budget, int& trials) {
  if (options.catalogue.serial != standard_catalogue().serial) return std::nullopt;
  const MistakeBook& book = standard_mistakes();
  const bool any_named = std::find(named.begin(), named.end(), true) != named.end();
  Statement as_pupil = statement;
  for (const Phrase& phrase : before) as_pupil.givens.push_back({phrase, {}, false});
  std::vector<Coordinates> views;
  if (!figures.empty()) views.push_back(figures[0].points);
  Arrangement arrangement(figure_text(as_pupil), std::move(views));
  arrangement.freeze();
  const std::vector<Phrase> known = phrases_of(as_pupil);
  Budget limited = budget.share(0.1);
  limited.max_instances = kMostInstances;
  for (const Mistake& mistake : book.mistakes) {
    if (limited.exhausted() || trials <= 0) break;
    const auto instead = book.catalogue.find(mistake.instead);
    if (!instead || (any_named && !named[instead->index()])) continue;
    if (!may_lead_to(claim, book.catalogue[mistake.rule], known)) continue;
    --trials;
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
