// The givens as a system of equations and positions.
#include <algorithm>
#include <cmath>
#include <limits>

#include "prover/sketch/solve.hpp"

namespace prover::sketching {
namespace {

// How clear a position should be in a figure that is to be looked at: about 7 degrees, or a twentieth of a length.
double clear_margin(Form form) {
  switch (form) {
    case Form::orientation: return 0.12;
    case Form::opening: return 0.1;
    case Form::angles: return 0.08;
    case Form::lengths: return 0.05;
    case Form::numbers: return 0.01;
    case Form::turn:
    case Form::linear:
    case Form::winding: return 0;
  }
  return 0;
}

}  // namespace

double violation(const Branch& branch, const Layout& layout, const double* x, double margin) {
  double worst = 0;
  for (const Constraint& constraint : branch) {
    const double value = evaluate(constraint, layout, x);
    worst = std::max(worst, constraint.equation ? std::fabs(value) : margin - value);
  }
  return worst;
}

System::System(const std::vector<Phrase>& givens, Layout layout) : layout_(std::move(layout)) {
  for (const Phrase& phrase : givens)
    for (Clause& clause : clauses_of(phrase, layout_)) clauses_.push_back(std::move(clause));
}

bool System::has_branches() const {
  return std::none_of(clauses_.begin(), clauses_.end(), [](const Clause& c) { return c.branches.empty(); });
}

double System::choose(const double* x) {
  double total = 0;
  equations_.clear();
  positions_.clear();
  for (const Clause& clause : clauses_) {
    const Branch* best = &clause.branches.front();
    double least = std::numeric_limits<double>::infinity();
    for (const Branch& branch : clause.branches) {
      double sum = 0;  // of squares, as the solver will see it
      for (const Constraint& constraint : branch) {
        const double value = evaluate(constraint, layout_, x);
        const double shortfall = constraint.equation ? value : std::max(0.0, clear_margin(constraint.form) - value);
        sum += shortfall * shortfall;
      }
      if (sum < least) {
        least = sum;
        best = &branch;
      }
    }
    total += least;
    for (const Constraint& constraint : *best) {
      if (constraint.form == Form::winding) continue;  // has no slope to follow
      if (constraint.equation) equations_.push_back({&constraint, 0});
      else positions_.push_back({&constraint, clear_margin(constraint.form)});
    }
  }
  if (wish_) positions_.push_back({&*wish_, clear_margin(wish_->form)});
  return total;
}

bool System::holds(const double* x, double tolerance, double margin) const {
  return std::all_of(clauses_.begin(), clauses_.end(), [&](const Clause& clause) {
    return clause.steers || std::any_of(clause.branches.begin(), clause.branches.end(), [&](const Branch& branch) {
             return std::all_of(branch.begin(), branch.end(), [&](const Constraint& constraint) {
               const double value = evaluate(constraint, layout_, x);
               return constraint.equation ? std::fabs(value) <= tolerance : value > margin;
             });
           });
  });
}

double System::residual(const double* x) const {
  double worst = 0;
  for (const Clause& clause : clauses_) {
    double best = std::numeric_limits<double>::infinity();
    for (const Branch& branch : clause.branches) best = std::min(best, violation(branch, layout_, x, 0));
    if (!clause.steers) worst = std::max(worst, best);
  }
  return worst;
}

}  // namespace prover::sketching
