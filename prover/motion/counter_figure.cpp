#include "prover/motion/counter_figure.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "prover/motion/climb.hpp"
#include "prover/motion/existence.hpp"
#include "prover/motion/shape.hpp"
#include "prover/sketch/solve.hpp"

namespace prover::motion {

using namespace sketching;

namespace {

constexpr std::size_t most_starts = 4;
constexpr double fails = 1e-3;  // of the constraint's value: below this nothing is called false

// By how much the claim fails: of each clause the branch that is nearest to holding, of that the constraint furthest
// from it; the clause that fails most counts.
struct Shortfall {
  double by = 0;
  const Constraint* constraint = nullptr;
  double sign = 1;  // of the constraint's value where it grows
};
Shortfall shortfall(const std::vector<Clause>& clauses, const Layout& layout, const std::vector<double>& x) {
  Shortfall worst;
  for (const Clause& clause : clauses) {
    if (clause.steers) continue;
    Shortfall nearest;
    nearest.by = std::numeric_limits<double>::infinity();
    for (const Branch& branch : clause.branches) {
      Shortfall of_branch;
      for (const Constraint& constraint : branch) {
        const double value = evaluate(constraint, layout, x.data());
        const double by = constraint.equation ? std::fabs(value) : -value;
        if (by > of_branch.by) of_branch = {by, &constraint, constraint.equation && value > 0 ? 1.0 : -1.0};
      }
      if (of_branch.by < nearest.by) nearest = of_branch;
    }
    if (std::isfinite(nearest.by) && nearest.by > worst.by) worst = nearest;
  }
  return worst;
}

}  // namespace

std::optional<CounterFigure> counter_figure(const std::vector<Phrase>& givens, const std::vector<Sketch>& figures,
                                            const Phrase& claim, const Budget& budget) {
  std::optional<CounterFigure> best;
  std::size_t starts = 0;
  for (const Sketch& figure : figures) {
    if (starts == most_starts || budget.exhausted()) break;
    auto mechanism = Mechanism::at(givens, figure);
    if (!mechanism) continue;
    const Layout& layout = mechanism->units().layout;
    const std::vector<Clause> clauses = clauses_of(claim, layout);
    if (shortfall(clauses, layout, mechanism->x()).by < fails) continue;
    ++starts;
    const Aim aim = [&](const std::vector<double>& x, Eigen::VectorXd* gradient) {
      const Shortfall now = shortfall(clauses, layout, x);
      if (gradient) {
        gradient->setZero();
        if (now.constraint && now.constraint->form != Form::winding) {
          Gradient slopes(layout.variables());
          evaluate(*now.constraint, layout, x.data(), &slopes);
          for (const int i : slopes.touched()) (*gradient)[i] = now.sign * slopes[i];
        }
      }
      return now.by;
    };
    climb(*mechanism, aim, budget);
    const double margin = shortfall(clauses, layout, mechanism->x()).by;
    if (best && margin < 1.05 * best->margin) continue;
    best = CounterFigure{mechanism->figure(), margin, false};
  }
  if (!best) return best;
  if (const auto existence = Existence::of(givens, best->figure)) best->exists = existence->breaks(claim);
  return best;
}

}  // namespace prover::motion
