#include "prover/verdict/checked_proof.hpp"

#include <algorithm>

#include "prover/base/log.hpp"
#include "prover/proof/assemble.hpp"
#include "prover/proof/proof_graph.hpp"
#include "prover/reading/order.hpp"

namespace prover {

namespace {

// The claim's own angles may be named by other points of the same rays: their lines' orders are cited too.
void cite_goal_orders(const Goal& goal, const Arrangement& arrangement, Proof& proof) {
  for (const Phrase& claim : goal.claims)
    for (const Expression& expression : claim.relation.expressions)
      for (const Term& term : expression.terms)
        if (const auto* angle = std::get_if<Angle>(&term.quantity))
          for (PointId arm : {angle->arm1, angle->arm2})
            cite_line_order(arrangement.line(angle->vertex, arm), arrangement, proof);
}

// A proof found in the last moment, or when Ctrl-C ended the search, still gets its checks: they have a little time of
// their own. (A second Ctrl-C ends the program.)
Budget with_grace(const Budget& budget) {
  Budget grace = budget;
  const auto soon = Budget::Clock::now() + std::chrono::milliseconds(500);
  if (budget.stop.stop_requested()) {
    grace.stop = {};
    grace.deadline = soon;
  } else if (grace.deadline) {
    grace.deadline = std::max(*grace.deadline, soon);
  }
  return grace;
}

}  // namespace

bool trusted(const CheckedProof& proof) {
  return proof.replay.accepted && proof.z3.answer == SecondOpinion::Answer::confirmed;
}

bool refuted(const CheckedProof& proof) {
  return !proof.replay.accepted || proof.z3.answer == SecondOpinion::Answer::refuted;
}

GoalSearch goal_search(const Saturation& saturation, const Claim& claim, const Scene& scene) {
  GoalSearch search;
  search.problem.goal = claim.forms;
  for (const int i : ProofGraph(saturation.instances).relevant_to(claim.forms)) {
    const Instance& instance = saturation.instances[static_cast<std::size_t>(i)];
    search.instances.push_back(&instance);
    search.problem.candidates.push_back(
        {instance.premises, instance.conclusions,
         weight_of(instance, scene.options.catalogue, scene.arrangement, scene.options.measure)});
  }
  return search;
}

CheckedProof checked_proof(const GoalSearch& search, LightSet light, const Claim& claim, const Scene& scene,
                           const Budget& budget, StageTimes& times) {
  CheckedProof result;
  {
    StageTimer timer(times.layout);
    result.light = std::move(light);
    std::vector<Instance> members;
    for (const int i : result.light.members) members.push_back(*search.instances[static_cast<std::size_t>(i)]);
    result.proof = assemble(order_for_reading(std::move(members), claim.forms), claim.forms, scene.unknowns, scene.arrangement);
    for (const Position& p : claim.positions) result.proof.positions.push_back({p, scene.arrangement.source(p)});
    result.proof.contradiction = claim.contradiction;
    result.proof.positive = claim.positive;
    cite_goal_orders(claim.goal, scene.arrangement, result.proof);
    result.reading = reading_of(result.proof, scene.statement, claim.goal, scene.options.catalogue, scene.unknowns,
                                scene.arrangement, scene.options.wording);
  }
  {
    StageTimer timer(times.check);
    result.replay = check(result.proof, scene.statement, claim.goal, scene.options.catalogue, scene.unknowns, scene.views);
    if (!result.replay.accepted) log::warn("replay refused step {}: {}", result.replay.step, result.replay.objection);
  }
  {
    StageTimer timer(times.z3);
    result.z3 = second_opinion(result.proof, scene.unknowns, with_grace(budget));
    if (result.z3.answer != SecondOpinion::Answer::confirmed) log::warn("Z3 did not confirm: {}", result.z3.objection);
  }
  return result;
}

}  // namespace prover
