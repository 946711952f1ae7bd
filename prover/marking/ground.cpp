#include "prover/marking/ground.hpp"

namespace prover {

Ground::Ground(const Statement& statement, const std::vector<Sketch>& views, const AttemptOptions& options, const Budget& budget)
    : statement_(&statement), options_(options), workings_(worked_out(statement, views, options, budget)),
      graph_(std::make_unique<ProofGraph>(workings_->saturation.instances)) {}

GroundClaim Ground::claim(const Phrase& phrase) const {
  Goal goal;
  goal.kind = GoalKind::prove;
  goal.claims = {phrase};
  GoalForms forms = goal_forms(goal, saturation().closure, arrangement(), unknowns(), statement().names);
  GroundClaim result;
  result.meant = !forms.unsupported;
  result.follows = forms.reached;
  result.forms = std::move(forms.forms);
  result.positions = std::move(forms.positions);
  return result;
}

}  // namespace prover
