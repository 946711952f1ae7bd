#include "prover/trigonometry/certify.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "prover/search/first_set.hpp"
#include "prover/verdict/claim_phrase.hpp"

namespace prover {

namespace {

constexpr std::size_t kMostCases = 8;
constexpr int kMostChallenges = 3;  // rounds in which a new figure turned up

// The relations that the steps use, proved by the rules; nothing when that did not come to a checked proof.
std::optional<CheckedProof> proved_relations(const Statement& statement, Workings& workings, const std::vector<Form>& forms,
                                             const AttemptOptions& options, const Budget& budget) {
  Goal goal;
  goal.kind = GoalKind::prove;
  for (const Form& form : forms) {
    auto claim = claim_phrase(form, workings.unknowns);
    if (!claim) return std::nullopt;
    goal.claims.push_back(std::move(*claim));
  }
  const GoalForms reached =
      goal_forms(goal, workings.saturation.closure, workings.arrangement, workings.unknowns, statement.names);
  if (!reached.reached) return std::nullopt;
  const Scene scene{statement, workings.arrangement, workings.unknowns, workings.views, options};
  const Claim claim{goal, reached.forms, reached.positions, false};
  const GoalSearch search = goal_search(workings.saturation, claim, scene);
  LightSet light;
  light.members = first_set(search.problem);
  if (light.members.empty()) return std::nullopt;
  StageTimes times;
  CheckedProof proof = checked_proof(search, std::move(light), claim, scene, budget, times);
  if (!trusted(proof)) return std::nullopt;
  return proof;
}

std::set<Position> seen_in(const CertifiedCase& one) {
  std::set<Position> seen;
  if (one.relations) seen = seen_positions(one.relations->proof);
  const auto note = [&](PointId a, PointId b, PointId c) {
    const Position position = canonical({PositionKind::not_collinear, a, b, c, {}});
    if (one.workings->arrangement.source(position) == PositionSource::seen) seen.insert(position);
  };
  const auto note_triangles = [&](const SineCondition& condition) {
    for (const auto& t : condition.triangles) note(t[0], t[1], t[2]);
  };
  for (const SettledStep& step : one.settling.steps) {
    note_triangles(step.condition);
    for (const UnknownId u : step.bounding) {
      const auto& p = one.workings->unknowns[u].points;
      note(p[0], p[1], p[2]);
    }
  }
  for (const SineCondition& identity : one.settling.identities) note_triangles(identity);
  return seen;
}

class Certifier {
 public:
  Certifier(const Statement& statement, std::size_t goal, const Solved& solved, const AttemptOptions& options, const Budget& budget)
      : statement_(statement), goal_(goal), figures_(solved.figures.sketches), options_(options), budget_(budget) {
    // A certificate is no school proof: every rule that somebody proved may serve.
    options_.allowed.assign(options.catalogue.rules.size(), true);
    for (std::size_t i = 0; i < options_.allowed.size(); ++i)
      if (options.catalogue.rules[i].assumed) options_.allowed[i] = false;
    options_.join_points = true;
  }

  Certified run() {
    if (figures_.empty()) return refused("No figure of the givens was found.");
    for (int round = 0; round <= kMostChallenges; ++round) {
      result_ = {};
      if (!all_at_once() && !one_by_one()) return std::move(result_);
      const std::size_t before = figures_.size();
      if (!challenged()) return std::move(result_);
      if (figures_.size() == before) {
        result_.exact = true;
        return std::move(result_);
      }
    }
    return refused("New arrangements kept turning up; not all were looked at.");
  }

 private:
  Certified refused(std::string why) {
    Certified none;
    none.obstacle = std::move(why);
    return none;
  }

  // One case from the arrangement that the figures share.
  std::optional<CertifiedCase> certify_in(const std::vector<Sketch>& figures) {
    StageTimes times;
    Attempt tried = attempt(statement_, figures, options_, budget_.share(0.5), times);
    if (tried.contradiction) {
      result_.obstacle = "The rules find a contradiction in the givens.";
      return std::nullopt;
    }
    CertifiedCase one;
    one.workings = tried.workings;
    one.settling = settle(statement_, goal_, *one.workings, budget_.share(0.5));
    if (!one.settling.reached) {
      result_.obstacle = one.settling.obstacle;
      result_.worth_saying = one.settling.worth_saying;
      return std::nullopt;
    }
    if (one.settling.steps.empty() && one.settling.identities.empty()) {
      result_.by_rules_alone = true;
      result_.obstacle = "The whole catalogue reaches it without trigonometry.";
      return std::nullopt;
    }
    if (!one.settling.proved_forms.empty()) {
      one.relations = proved_relations(statement_, *one.workings, one.settling.proved_forms, options_, budget_);
      if (!one.relations) {
        result_.obstacle = "The condition was found, but what it uses of angles was not confirmed by both checks.";
        return std::nullopt;
      }
    }
    return one;
  }

  bool add(CertifiedCase one) {
    if (result_.value && one.settling.value && !(*result_.value == *one.settling.value)) {
      result_.obstacle = "Different arrangements have different exact values.";
      return false;
    }
    result_.value = one.settling.value;
    result_.cases.push_back(std::move(one));
    return true;
  }

  bool all_at_once() {
    auto one = certify_in(figures_);
    return one && add(std::move(*one));
  }

  // A certificate in one figure holds for all that show the same positions.
  bool one_by_one() {
    if (result_.by_rules_alone || figures_.size() < 2) return false;
    std::vector<bool> covered(figures_.size(), false);
    for (std::size_t i = 0; i < figures_.size(); ++i) {
      if (covered[i]) continue;
      if (budget_.exhausted() || result_.cases.size() >= kMostCases) return false;
      auto one = certify_in({figures_[i]});
      if (!one) return false;
      const std::set<Position> seen = seen_in(*one);
      for (std::size_t k = i; k < figures_.size(); ++k)
        covered[k] = covered[k] || std::all_of(seen.begin(), seen.end(), [&](const Position& p) { return shows(figures_[k], p); });
      if (!add(std::move(*one))) return false;
    }
    result_.obstacle.clear();
    return true;
  }

  // Can a position that was read be otherwise? A figure that shows it joins the others; false when it has another value.
  bool challenged() {
    const Goal& goal = statement_.goals[goal_];
    std::set<Position> all;
    for (CertifiedCase& one : result_.cases) {
      for (const Position& p : seen_in(one)) {
        const std::string words = describe(p, statement_.names);
        one.seen.push_back(words);
        all.insert(p);
        // The positions that some figure does not show are what makes it a case.
        if (result_.cases.size() > 1 && !std::all_of(figures_.begin(), figures_.end(), [&](const Sketch& f) { return shows(f, p); }))
          one.name += (one.name.empty() ? "" : ", and ") + words;
      }
    }
    double ms = 0;
    for (const Position& p : all) {
      // A position that some figure does not show has been met already.
      if (!std::all_of(figures_.begin(), figures_.end(), [&](const Sketch& f) { return shows(f, p); })) continue;
      for (Sketch& figure : figures_against(statement_, p, budget_.share(0.2), ms)) {
        bool other = false;
        if (goal.kind == GoalKind::find) {
          other = result_.value && std::fabs(measure(goal.claims[0].relation.expressions[0], figure) - result_.value->to_double()) > 1e-3;
        } else {
          other = std::any_of(goal.claims.begin(), goal.claims.end(), [&](const Phrase& claim) { return !holds(claim, figure, 1e-3); });
        }
        if (other) {
          result_ = refused("A figure in another arrangement has another value.");
          return false;
        }
        figures_.push_back(std::move(figure));
      }
    }
    return true;
  }

  const Statement& statement_;
  std::size_t goal_;
  std::vector<Sketch> figures_;
  AttemptOptions options_;
  Budget budget_;
  Certified result_;
};

}  // namespace

Certified certify(const Statement& statement, std::size_t goal, const Solved& solved, const AttemptOptions& options,
                  const Budget& budget) {
  if (goal >= statement.goals.size()) return {};
  return Certifier(statement, goal, solved, options, budget).run();
}

}  // namespace prover
