#include "prover/verdict/attempt.hpp"

#include <algorithm>

#include "prover/algebra/direction_layer.hpp"
#include "prover/base/log.hpp"
#include "prover/proof/assemble.hpp"
#include "prover/proof/proof_graph.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/reading/order.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

class Timer {
 public:
  explicit Timer(double& total) : total_(total), start_(Budget::Clock::now()) {}
  ~Timer() { total_ += std::chrono::duration<double, std::milli>(Budget::Clock::now() - start_).count(); }

 private:
  double& total_;
  Budget::Clock::time_point start_;
};

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
  if (form.terms.size() > 1) return describe_equation(form, unknowns, names);
  const Unknown& unknown = unknowns[form.terms[0].first];
  const Rational value = -form.constant / form.terms[0].second;
  return describe(unknown, names) + " = " +
         (unknown.kind == UnknownKind::angle ? degrees_text(value) : number_text(value));
}

SearchProblem search_problem(const std::vector<const Instance*>& instances, const std::vector<Form>& goal,
                             const Arrangement& arrangement, const AttemptOptions& options) {
  SearchProblem problem;
  problem.goal = goal;
  for (const Instance* i : instances)
    problem.candidates.push_back(
        {i->premises, i->conclusions, weight_of(*i, options.catalogue, arrangement, options.measure)});
  return problem;
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

// The claim's own angles may be named by other points of the same rays: their lines' orders are cited too.
void cite_goal_orders(const Goal& goal, const Arrangement& arrangement, Proof& proof) {
  for (const Phrase& claim : goal.claims)
    for (const Expression& expression : claim.relation.expressions)
      for (const Term& term : expression.terms)
        if (const auto* angle = std::get_if<Angle>(&term.quantity))
          for (PointId arm : {angle->arm1, angle->arm2})
            cite_line_order(arrangement.line(angle->vertex, arm), arrangement, proof);
}

// A proof found in the last moment still gets its checks: they may run a little past the deadline.
Budget with_grace(const Budget& budget) {
  Budget grace = budget;
  if (grace.deadline) grace.deadline = std::max(*grace.deadline, Budget::Clock::now() + std::chrono::milliseconds(300));
  return grace;
}

std::optional<CheckedProof> prove_goal(const Saturation& saturation, const std::vector<Form>& forms,
                                       const std::vector<Position>& positions, const Goal& goal,
                                       const Statement& statement, const Arrangement& arrangement,
                                       UnknownTable& unknowns, const std::vector<Sketch>& views,
                                       const AttemptOptions& options, const Budget& budget, StageTimes& times) {
  CheckedProof result;
  {
    Timer timer(times.search);
    std::vector<const Instance*> relevant;
    for (const int i : ProofGraph(saturation.instances).relevant_to(forms))
      relevant.push_back(&saturation.instances[static_cast<std::size_t>(i)]);
    auto light = lightest_set(search_problem(relevant, forms, arrangement, options), {budget.share(0.5), {}});
    if (!light) return std::nullopt;
    result.light = std::move(*light);
    std::vector<Instance> members;
    for (const int i : result.light.members) members.push_back(*relevant[static_cast<std::size_t>(i)]);
    result.proof = assemble(order_for_reading(std::move(members)), forms, unknowns, arrangement);
    for (const Position& p : positions) result.proof.positions.push_back({p, arrangement.source(p)});
    result.proof.contradiction = saturation.contradictory;
    cite_goal_orders(goal, arrangement, result.proof);
  }
  {
    Timer timer(times.layout);
    result.reading = reading_of(result.proof, statement, goal, options.catalogue, unknowns, arrangement, options.wording);
  }
  {
    Timer timer(times.check);
    result.replay = check(result.proof, statement, goal, options.catalogue, unknowns, views);
    if (!result.replay.accepted) log::warn("replay refused step {}: {}", result.replay.step, result.replay.objection);
  }
  {
    Timer timer(times.z3);
    result.z3 = second_opinion(result.proof, unknowns, with_grace(budget));
    if (result.z3.answer != SecondOpinion::Answer::confirmed) log::warn("Z3 did not confirm: {}", result.z3.objection);
  }
  return result;
}

}  // namespace

Attempt attempt(const Statement& statement, const std::vector<Sketch>& views, const AttemptOptions& options,
                const Budget& budget, StageTimes& times) {
  Attempt result;
  result.goals.resize(statement.goals.size());
  result.forced_by_directions.resize(statement.goals.size());
  const Arrangement arrangement = arrange(statement, views, options.join_points);
  UnknownTable unknowns;
  for (const Goal& goal : statement.goals) note_goal(goal, arrangement, unknowns);
  Saturation saturation;
  {
    Timer timer(times.chain);
    ChainOptions chain;
    chain.allowed = options.allowed;
    saturation = saturate(statement, arrangement, options.catalogue, unknowns, {}, chain, budget.share(0.6));
  }
  result.stop = saturation.stop;
  result.instances = saturation.instances.size();
  result.matches = saturation.matches;
  result.rounds = saturation.rounds;
  log::info("chain: {} instances of {} tried, {} rounds, {}", result.instances, result.matches, result.rounds,
            name_of(result.stop));
  if (saturation.contradictory) {
    // 0 = 1, or a value that no angle or length can have.
    const Goal none = statement.goals.empty() ? Goal() : statement.goals[0];
    std::vector<std::vector<Form>> conflicts;  // any one of them will do
    for (const Form& form : saturation.impossible) conflicts.push_back({form});
    if (saturation.zero_is_one) conflicts.emplace_back();
    for (const std::vector<Form>& conflict : conflicts) {
      auto proof = prove_goal(saturation, conflict, {}, none, statement, arrangement, unknowns, views, options, budget, times);
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
    const GoalForms forms =
        goal_forms(statement.goals[i], saturation.closure, arrangement, unknowns, statement.names);
    result.unsupported_goal |= forms.unsupported;
    if (forms.reached)
      result.goals[i] = prove_goal(saturation, forms.forms, forms.positions, statement.goals[i], statement, arrangement,
                                   unknowns, views, options, budget, times);
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
