#include "prover/ways/answer_ways.hpp"

#include <algorithm>
#include <map>

#include "prover/ways/titles.hpp"
#include "prover/ways/ways.hpp"

namespace prover {

namespace {

// What one claim needs to be taught: the theorems and postulates cited, in the order of the course.
std::vector<RuleId> theorems_cited(const AnswerProof& proof, const Catalogue& catalogue) {
  std::vector<RuleId> rules;
  for (const std::string& id : proof.rules) {
    const auto rule = catalogue.find(id);
    if (!rule) continue;
    const RuleKind kind = catalogue[*rule].kind;
    if (kind != RuleKind::hypothesis && kind != RuleKind::construction && kind != RuleKind::definition &&
        !catalogue[*rule].free_step)
      rules.push_back(*rule);
  }
  const Course& course = default_course(catalogue);
  const auto place = [&](RuleId r) { return course.place_of(r).value_or(course.entries.size()); };
  std::stable_sort(rules.begin(), rules.end(), [&](RuleId a, RuleId b) { return place(a) < place(b); });
  return rules;
}

class WaysOfAnswer {
 public:
  WaysOfAnswer(const AttemptOptions& options, const WaysAsked& asked, StageTimes& times, double& sketch_ms, Answer& answer)
      : options_(options), asked_(asked), times_(times), sketch_ms_(sketch_ms), answer_(answer) {
    for (std::size_t r = 0; r < options.catalogue.rules.size(); ++r) {
      if (options.catalogue.rules[r].builtin != Builtin::join) continue;
      Instance join;
      join.rule = RuleId(static_cast<std::int64_t>(r));
      joining_ = weight_of(join, options.catalogue, Arrangement({}, {}), options.measure);
    }
  }

  void add(std::size_t goal, const Statement& statement, const Solved& solved, const SolvedCase& one, const Budget& budget) {
    const Attempt& attempt = one.attempt;
    AnswerWays summary;
    summary.goal = statement.goals[goal].text;
    summary.case_name = case_name(statement, one);
    WaysLimits limits{budget.share(0.6), asked_.most, asked_.most_alike, asked_.most_steps, asked_.with, false, {}, 0, {}};
    const std::set<Position> settled = seen_positions(attempt.goals[goal]->proof);
    limits.admissible = [&](const CheckedProof& proof) { return reads_nothing_doubtful(proof, settled, statement, solved, one); };
    const Arrangement& arrangement = attempt.workings->arrangement;
    bool joined = false;  // the attempt itself had to join points
    for (std::size_t l = 0; l < arrangement.line_count(); ++l)
      joined |= arrangement.is_joined(LineId(static_cast<std::int64_t>(l)));
    WaysFound found = ways_to(goal, statement, attempt, options_, limits, times_);
    answer_.checks_disagree |= found.checks_disagree;
    const bool room = found.ways.size() < asked_.most || found.ways.back().proofs[0].checked.light.weight > joining_;
    if (!joined) {  // an idea that joins two points costs more than that line
      summary.joined_tried = true;
      summary.joined_stop = name_of(StopReason::goal_reached);
      summary.joined_complete_below = weight_as_cost(joining_).to_string();
    }
    if (!joined && room && !found.ways.empty()) {
      limits.without_lines = found.kinds;
      limits.line_and_theorem = joining_ + kWeightUnit;
      if (auto more = join(goal, statement, attempt, limits, budget))
        merge(*more, found, summary);
      else if (budget.exhausted())
        summary.joined_stop = name_of(budget.reason());
    }
    summary.ideas = static_cast<int>(found.ways.size());
    summary.more += static_cast<int>(found.more);
    summary.elsewhere += static_cast<int>(found.elsewhere);
    summary.left_out += static_cast<int>(found.left_out);
    summary.stop = name_of(found.stop);
    if (found.stop != StopReason::saturated || found.more > 0)
      summary.complete_below = weight_as_cost(found.complete_below).to_string();
    const std::size_t before = answer_.proofs.size();
    add_proofs(found, *attempt.goals[goal], statement, statement.goals[goal], summary.case_name, solved);
    summary.proofs = answer_.proofs.size() - before;
    answer_.ways.push_back(std::move(summary));
  }

 private:
  // Positions that the first proof reads were settled when it was found; others must hold in every figure of the case,
  // and nobody may be able to draw the opposite.
  bool reads_nothing_doubtful(const CheckedProof& proof, const std::set<Position>& settled, const Statement& statement,
                              const Solved& solved, const SolvedCase& one) {
    for (const Position& p : seen_positions(proof.proof)) {
      if (settled.contains(p)) continue;
      const auto [place, fresh] = doubtful_.try_emplace({&one, p}, false);
      if (fresh) {
        for (const std::size_t v : one.views) place->second |= !shows(solved.figures.sketches[v], p);
        place->second = place->second || !figures_against(statement, p, Budget::seconds(0.2), sketch_ms_).empty();
      }
      if (place->second) return false;
    }
    return true;
  }

  // Ideas that begin by joining two points.
  std::optional<WaysFound> join(std::size_t goal, const Statement& statement, const Attempt& attempt, WaysLimits limits,
                                const Budget& budget) {
    if (budget.exhausted()) return std::nullopt;
    AttemptOptions joined = options_;
    joined.join_points = true;
    const Attempt other = prover::attempt(statement, attempt.workings->views, joined, budget.share(0.6), times_);
    if (!other.all_reached || other.stop != StopReason::saturated) return std::nullopt;
    limits.budget = budget;
    limits.only_with_joined_points = true;
    WaysFound found = ways_to(goal, statement, other, joined, limits, times_);
    answer_.checks_disagree |= found.checks_disagree;
    return found;
  }

  // The lightest of both lists; what is cut off bounds the list that it comes from.
  void merge(WaysFound& more, WaysFound& into, AnswerWays& summary) const {
    const auto weight = [](const Way& way) { return way.proofs[0].checked.light.weight; };
    for (Way& way : more.ways) into.ways.push_back(std::move(way));
    std::stable_sort(into.ways.begin(), into.ways.end(), [&](const Way& a, const Way& b) { return weight(a) < weight(b); });
    while (into.ways.size() > asked_.most) {
      WaysFound& from = into.ways.back().joins_points ? more : into;
      from.complete_below = from.stop == StopReason::saturated && from.more == 0 ? weight(into.ways.back())
                                                                                  : std::min(from.complete_below, weight(into.ways.back()));
      ++from.more;
      into.ways.pop_back();
    }
    summary.joined_tried = true;
    summary.joined_stop = name_of(more.stop);
    if (more.stop != StopReason::saturated || more.more > 0)
      summary.joined_complete_below = weight_as_cost(more.complete_below).to_string();
    summary.more += static_cast<int>(more.more);
    summary.elsewhere += static_cast<int>(more.elsewhere);
    summary.left_out += static_cast<int>(more.left_out);
  }

  void add_proofs(const WaysFound& found, const CheckedProof& best, const Statement& statement, const Goal& goal,
                  const std::string& name, const Solved& solved) {
    const std::size_t first = answer_.proofs.size();
    int idea = 0;
    for (const Way& way : found.ways) {
      ++idea;
      for (const WayProof& one : way.proofs) {
        AnswerProof proof = answer_proof(one.checked, statement, goal, name, options_);
        // What is shortest was said of the best proof; of another one only what bounds them all.
        const bool is_best = best.light.proved_lightest && one.checked.light.weight == best.light.weight;
        proof.shortest = is_best ? "proved" : "best found";
        proof.lower_bound = weight_as_cost(best.light.lower_bound).to_string();
        proof.idea = idea;
        proof.in_full = one.in_full;
        proof.cited = static_cast<int>(one.steps);
        proof.seen_in_figure.insert(proof.seen_in_figure.end(), solved.added.provided.begin(), solved.added.provided.end());
        for (const RuleId r : theorems_cited(proof, options_.catalogue)) proof.to_be_taught.push_back(options_.catalogue[r].id);
        if (!proof.to_be_taught.empty()) proof.deepest = proof.to_be_taught.back();
        answer_.proofs.push_back(std::move(proof));
      }
    }
    tell_apart(std::span(answer_.proofs).subspan(first), options_.catalogue);
  }

  const AttemptOptions& options_;
  const WaysAsked& asked_;
  StageTimes& times_;
  double& sketch_ms_;
  Answer& answer_;
  std::map<std::pair<const SolvedCase*, Position>, bool> doubtful_;
  std::int64_t joining_ = 0;  // what a joined line weighs
};

}  // namespace

void add_ways(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
              const WaysAsked& asked, const Budget& budget, StageTimes& times, double& sketch_ms, Answer& answer) {
  if (answer.verdict != Verdict::proved && answer.verdict != Verdict::depends_on_figure) return;
  struct Place {
    std::size_t goal, statement;
    const SolvedCase* one;
  };
  std::vector<Place> places;
  for (std::size_t g = 0; g < statements[0].goals.size(); ++g)
    for (std::size_t s = 0; s < statements.size(); ++s)
      for (const SolvedCase& one : solved[s].cases)
        if (g < one.attempt.goals.size() && one.attempt.goals[g] && trusted(*one.attempt.goals[g])) places.push_back({g, s, &one});
  answer.proofs.clear();
  WaysOfAnswer ways(options, asked, times, sketch_ms, answer);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const Place& p = places[i];
    ways.add(p.goal, statements[p.statement], solved[p.statement], *p.one,
             budget.share(1.0 / static_cast<double>(places.size() - i)));
  }
}

}  // namespace prover
