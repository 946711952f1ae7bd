#include "prover/proof/assemble.hpp"

#include <algorithm>
#include <cassert>
#include <set>
#include <tuple>

#include "prover/algebra/linear_system.hpp"

namespace prover {

namespace {

bool shares_unknown(const Instance& a, const Instance& b) {
  for (const Form& f : a.conclusions)
    for (const auto& [u, c] : f.terms)
      for (const auto* forms : {&b.conclusions, &b.premises})
        for (const Form& g : *forms)
          if (!g.coefficient(u).is_zero()) return true;
  return false;
}

}  // namespace

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

std::vector<Instance> order_for_reading(std::vector<Instance> members) {
  std::vector<Instance> ordered;
  LinearSystem system;
  auto say = [&](std::size_t i) {
    for (const Form& f : members[i].conclusions) system.add(f);
    ordered.push_back(std::move(members[i]));
    members.erase(members.begin() + static_cast<std::ptrdiff_t>(i));
  };
  for (std::size_t i = 0; i < members.size();) {
    if (members[i].hypothesis >= 0)
      say(i);
    else
      ++i;
  }
  while (!members.empty()) {
    std::size_t best = members.size();
    std::tuple<bool, bool, std::size_t, std::size_t> best_score;
    for (std::size_t i = 0; i < members.size(); ++i) {
      const Instance& m = members[i];
      if (!std::all_of(m.premises.begin(), m.premises.end(), [&](const Form& p) { return system.entails(p); }))
        continue;
      std::size_t open = 99, terms = 99;  // unknowns that the line would leave open, and that it speaks of
      for (const Form& f : m.conclusions) {
        open = std::min(open, system.reduce(f).terms.size());
        terms = std::min(terms, f.terms.size());
      }
      const bool linked = !ordered.empty() && ordered.back().hypothesis < 0 && shares_unknown(ordered.back(), m);
      // Values as soon as they can be had; among open equations those between two things before sums.
      const std::tuple<bool, bool, std::size_t, std::size_t> score{open > 1, open > 1 ? terms > 2 : !linked, open, linked ? 0 : 1};
      if (best == members.size() || score < best_score) {
        best = i;
        best_score = score;
      }
    }
    assert(best < members.size() && "the members of a proof must be derivable in some order");
    say(best);
  }
  return ordered;
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
