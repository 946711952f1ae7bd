#include "prover/verdict/attempt.hpp"

#include <algorithm>
#include <set>

#include "prover/algebra/direction_layer.hpp"
#include "prover/base/log.hpp"
#include "prover/proof/reading_quality.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

Arrangement arrange(const Statement& statement, const std::vector<Sketch>& views, bool join_points) {
  std::vector<Coordinates> coordinates;
  for (const Sketch& sketch : views) coordinates.push_back(sketch.points);
  Arrangement arrangement(figure_text(statement), std::move(coordinates));
  // Joining every two points of a large figure would draw thousands of lines.
  constexpr std::size_t most_points_to_join = 14;
  if (join_points && statement.names.points.size() <= most_points_to_join)
    for (std::size_t i = 0; i < arrangement.point_count(); ++i)
      for (std::size_t j = i + 1; j < arrangement.point_count(); ++j)
        if (!statement.hidden[i] && !statement.hidden[j])
          arrangement.join(PointId(static_cast<std::int64_t>(i)), PointId(static_cast<std::int64_t>(j)));
  arrangement.freeze();
  return arrangement;
}

// "∠KLM = −10°": the value that a forced size cannot have.
std::string impossible_value(const Form& form, const UnknownTable& unknowns, const Names& names) {
  if (compares(form, unknowns)) return {};
  if (form.terms.size() > 1) return describe_equation(form, unknowns, names);
  const Unknown& unknown = unknowns[form.terms[0].first];
  const Rational value = -form.constant / form.terms[0].second;
  return describe(unknown, names) + " = " +
         (unknown.kind == UnknownKind::angle ? degrees_text(value) : number_text(value));
}

// What the directions of the lines alone force for a goal that the rules do not reach.
std::string forced_by_directions(const Statement& statement, const Goal& goal, const Arrangement& arrangement,
                                 UnknownTable& unknowns, const std::vector<Sketch>& views) {
  if (views.empty()) return {};
  DirectionLayer layer(arrangement, views[0].points, unknowns);
  for (const Given& given : statement.givens)
    for (const Form& form : meaning_of(given.phrase, arrangement, unknowns).forms) layer.add(form);
  if (layer.contradictory()) return {};
  if (goal.kind == GoalKind::prove) {
    bool all = !goal.claims.empty();
    for (const Phrase& claim : goal.claims) {
      const Meaning meaning = meaning_of(claim, arrangement, unknowns);
      all = all && !meaning.degenerate && !meaning.forms.empty() &&
            std::all_of(meaning.forms.begin(), meaning.forms.end(), [&](const Form& f) { return layer.entails(f); });
    }
    return all ? "true" : "";
  }
  std::vector<PointId> identity;
  for (std::size_t i = 0; i < arrangement.point_count(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  bool degenerate = false;
  const Form asked = form_of(goal.claims[0].relation.expressions[0], identity, arrangement, unknowns, degenerate);
  const auto value = degenerate ? std::nullopt : layer.value(asked);
  return value ? value->to_string() : "";
}

}  // namespace

std::optional<LightSet> best_set(const GoalSearch& search, const Claim& claim, const Scene& scene, const Budget& budget) {
  constexpr std::size_t most_compared = 48;
  SeveralLimits limits;
  limits.search.budget = budget;
  limits.most_sets = most_compared;
  limits.only_lightest = true;
  LightSets found = lightest_sets(search.problem, limits);
  if (found.sets.empty()) return std::nullopt;
  std::vector<Form> question = claim.forms;
  for (const Instance* instance : search.instances)
    if (instance->hypothesis >= 0)
      question.insert(question.end(), instance->conclusions.begin(), instance->conclusions.end());
  const std::set<UnknownId> in_question = angles_of(question, scene.unknowns);
  std::optional<ReadingQuality> best;
  LightSet* chosen = nullptr;
  for (LightSet& set : found.sets) {
    std::vector<const Instance*> members;
    for (const int i : set.members) members.push_back(search.instances[static_cast<std::size_t>(i)]);
    ReadingQuality quality = reading_quality(members, in_question, scene.unknowns, scene.options.catalogue);
    if (best && *best <= quality) continue;
    best = std::move(quality);
    chosen = &set;
  }
  return std::move(*chosen);
}

namespace {

std::optional<CheckedProof> prove_claim(const Saturation& saturation, const Claim& claim, const Scene& scene,
                                        const Budget& budget, StageTimes& times) {
  GoalSearch search;
  std::optional<LightSet> light;
  {
    StageTimer timer(times.search);
    search = goal_search(saturation, claim, scene);
    light = best_set(search, claim, scene, budget.share(0.5));
  }
  if (!light) return std::nullopt;
  return checked_proof(search, std::move(*light), claim, scene, budget, times);
}

}  // namespace

std::shared_ptr<Workings> worked_out(const Statement& statement, const std::vector<Sketch>& views,
                                     const AttemptOptions& options, const Budget& budget) {
  auto workings = std::make_shared<Workings>(
      Workings{arrange(statement, views, options.join_points), {}, Saturation(), {}, views});
  for (const Goal& goal : statement.goals) note_goal(goal, workings->arrangement, workings->unknowns);
  ChainOptions chain;
  chain.allowed = options.allowed;
  chain.inequalities = options.inequalities;
  workings->saturation =
      saturate(statement, workings->arrangement, options.catalogue, workings->unknowns, {}, chain, budget);
  return workings;
}

Attempt attempt(const Statement& statement, const std::vector<Sketch>& views, const AttemptOptions& options,
                const Budget& budget, StageTimes& times) {
  Attempt result;
  result.goals.resize(statement.goals.size());
  result.forced_by_directions.resize(statement.goals.size());
  {
    StageTimer timer(times.chain);
    result.workings = worked_out(statement, views, options, budget.share(0.6));
  }
  const Arrangement& arrangement = result.workings->arrangement;
  UnknownTable& unknowns = result.workings->unknowns;
  const Saturation& saturation = result.workings->saturation;
  const Scene scene{statement, arrangement, unknowns, views, options};
  result.stop = saturation.stop;
  result.instances = saturation.instances.size();
  result.matches = saturation.matches;
  result.rounds = saturation.rounds;
  log::info("chain: {} instances of {} tried, {} rounds, {}", result.instances, result.matches, result.rounds,
            name_of(result.stop));
  if (saturation.contradictory) {
    // 0 = 1, or a value that no angle or length can have.
    const Goal none = statement.goals.empty() ? Goal() : statement.goals[0];
    const std::vector<Position> nowhere;
    std::vector<std::vector<Form>> conflicts;  // any one of them will do
    for (const Form& form : saturation.impossible) conflicts.push_back({form});
    if (saturation.zero_is_one) conflicts.emplace_back();
    for (const std::vector<Form>& conflict : conflicts) {
      auto proof = prove_claim(saturation, {none, conflict, nowhere, true}, scene, budget, times);
      if (!proof || (result.contradiction && !proof->replay.accepted)) continue;
      const bool accepted = proof->replay.accepted;
      result.contradiction = std::move(proof);
      if (!conflict.empty()) result.impossible = impossible_value(conflict[0], unknowns, statement.names);
      if (accepted) break;
    }
    return result;
  }
  result.all_reached = true;
  for (std::size_t i = 0; i < statement.goals.size(); ++i) {
    const Goal& goal = statement.goals[i];
    const GoalForms& forms = result.workings->goals.emplace_back(
        goal_forms(goal, saturation.closure, arrangement, unknowns, statement.names));
    result.unsupported_goal |= forms.unsupported;
    if (forms.reached)
      result.goals[i] = prove_claim(saturation, {goal, forms.forms, forms.positions, false, forms.positive}, scene, budget, times);
    if (result.goals[i]) {
      result.goals[i]->value = forms.value;
      result.goals[i]->number = forms.number;
    } else {
      result.all_reached = false;
      if (!forms.unsupported)
        result.forced_by_directions[i] =
            forced_by_directions(statement, statement.goals[i], arrangement, unknowns, views);
    }
  }
  return result;
}

}  // namespace prover
