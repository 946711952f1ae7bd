#include "prover/proof/assemble.hpp"

#include <algorithm>
#include <cassert>
#include <set>

#include "prover/algebra/linear_system.hpp"

namespace prover {

void cite_line_order(LineId line, const Arrangement& arrangement, Proof& proof) {
  if (!line.valid()) return;
  const auto& on = arrangement.points_on(line);
  for (PointId a : on)
    for (PointId b : on)
      for (PointId c : on) {
        if (!(a < c) || b == a || b == c) continue;
        const Position order{PositionKind::between, a, b, c, {}};
        if (arrangement.source(order) == PositionSource::seen) proof.positions.push_back({order, PositionSource::seen});
      }
}

Proof assemble(std::vector<Instance> ordered, std::vector<Form> goal, const UnknownTable& unknowns,
               const Arrangement& arrangement) {
  Proof proof;
  proof.goal = std::move(goal);
  proof.contradiction = proof.goal.empty();
  if (proof.contradiction) proof.goal.push_back(Form::number(1));
  LinearSystem system(true);
  std::vector<std::pair<int, int>> tags;
  auto combination = [&](const LinearSystem::Certificate& certificate) {
    Combination c;
    for (const auto& [tag, m] : certificate.parts)
      c.parts.push_back({tags[static_cast<std::size_t>(tag)].first, tags[static_cast<std::size_t>(tag)].second, m});
    return c;
  };
  std::set<Position> positions;
  std::set<LineId> lines;
  for (Instance& instance : ordered) {
    ProofStep step;
    const int index = static_cast<int>(proof.steps.size());
    for (const Form& premise : instance.premises) {
      const auto certificate = system.certificate(premise);
      assert(certificate && "premises must follow from earlier steps");
      step.premises.push_back(combination(*certificate));
    }
    for (std::size_t i = 0; i < instance.conclusions.size(); ++i) {
      system.add(instance.conclusions[i], static_cast<int>(tags.size()));
      tags.emplace_back(index, static_cast<int>(i));
      for (const auto& [u, c] : instance.conclusions[i].terms) {
        const Unknown& unknown = unknowns[u];
        if (unknown.kind == UnknownKind::angle) {
          lines.insert(arrangement.line(unknown.points[0], unknown.points[1]));
          lines.insert(arrangement.line(unknown.points[0], unknown.points[2]));
        }
      }
    }
    for (const Position& p : instance.positions) positions.insert(p);
    proof.cost += instance.cost;
    step.instance = std::move(instance);
    proof.steps.push_back(std::move(step));
  }
  if (proof.contradiction) {
    assert(system.contradictory());
    proof.conclusion.push_back(combination(system.contradiction()));
  } else {
    for (const Form& g : proof.goal) {
      const auto certificate = system.certificate(g);
      assert(certificate && "the goal must follow from the steps");
      proof.conclusion.push_back(combination(*certificate));
    }
  }
  for (const Position& p : positions) proof.positions.push_back({p, arrangement.source(p)});
  for (LineId l : lines) cite_line_order(l, arrangement, proof);
  return proof;
}

}  // namespace prover
