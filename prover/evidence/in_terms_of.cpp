#include "prover/evidence/in_terms_of.hpp"

#include <algorithm>

#include "prover/evidence/settling_candidates.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

namespace {

constexpr std::size_t most_equations = 2;
constexpr std::size_t most_proofs = 4;
constexpr std::size_t most_in_pairs = 8;

// In the attempt that was made; positions that it read from the figures are challenged like those of any proof.
bool is_proved(const Statement& statement, const Goal& goal, const GoalForms& forms, Workings& workings,
               const AttemptOptions& options, const Budget& budget) {
  const Scene scene{statement, workings.arrangement, workings.unknowns, workings.views, options};
  const Claim claim{goal, forms.forms, forms.positions, false};
  const GoalSearch search = goal_search(workings.saturation, claim, scene);
  SearchLimits limits;
  limits.budget = budget.share(0.3);
  auto light = lightest_set(search.problem, limits);
  if (!light) return false;
  StageTimes times;
  const CheckedProof proof = checked_proof(search, std::move(*light), claim, scene, budget.share(0.5), times);
  if (!trusted(proof)) return false;
  double sketch_ms = 0;
  for (const Position& position : seen_positions(proof.proof))
    if (!figures_against(statement, position, budget.share(0.3), sketch_ms).empty()) return false;
  return true;
}

}  // namespace

std::vector<std::string> in_terms_of(const Statement& statement, std::size_t goal, Workings& workings,
                                     const Sketch& figure, const AttemptOptions& options, const Budget& budget) {
  const Goal& asked = statement.goals[goal];
  if (!asked.in_terms_of.empty()) return {};
  const Expression& quantity = asked.claims[0].relation.expressions[0];
  std::vector<Quantity> parameters;
  for (const SettlingCandidate& candidate : settling_candidates(statement, workings.arrangement, figure, quantity))
    if (candidate.kind == SettlingCandidate::Kind::angle && candidate.cost < 3) parameters.push_back(candidate.quantity.terms[0].quantity);

  // One parameter, else two; the closure of the attempt that failed tells which are worth a proof.
  std::vector<std::vector<Quantity>> sets;
  for (const Quantity& one : parameters) sets.push_back({one});
  for (std::size_t i = 0; i < std::min(parameters.size(), most_in_pairs); ++i)
    for (std::size_t k = i + 1; k < std::min(parameters.size(), most_in_pairs); ++k) sets.push_back({parameters[i], parameters[k]});
  std::vector<std::string> equations;
  std::size_t proofs = 0;
  for (const auto& set : sets) {
    if (equations.size() == most_equations || proofs == most_proofs || budget.exhausted()) break;
    if (set.size() > 1 && !equations.empty()) break;
    Goal goal_with = asked;
    goal_with.in_terms_of = set;
    const GoalForms forms = goal_forms(goal_with, workings.saturation.closure, workings.arrangement, workings.unknowns, statement.names);
    if (!forms.reached) continue;
    ++proofs;
    if (is_proved(statement, goal_with, forms, workings, options, budget))
      equations.push_back(describe(quantity, statement.names) + " = " + forms.value);
  }
  return equations;
}

}  // namespace prover
