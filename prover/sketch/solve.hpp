// From a start to a figure: damped least squares, then a polish on the equations alone.
//
// Levenberg–Marquardt with Nielsen's damping (Madsen, Nielsen, Tingleff, "Methods for non-linear least squares
// problems", 2004, algorithm 3.16) on the normal equations. A figure has free degrees of freedom, and every figure
// may be moved and turned: the system is rank-deficient by nature. Damped normal equations step orthogonally to
// what is free, so the figure keeps the shape of its start where the givens allow, which is what makes different
// starts end in different sketches; a method that pivots moves a few coordinates far instead and keeps none.
// Eigen's own Levenberg–Marquardt (MINPACK's, by pivoted QR of the dense matrix) was tried on the published problems:
// twice the time to the first figure, and about fifteen times for the whole search (there without our early ends).
#pragma once
#include <optional>
#include <utility>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/sketch/constraint.hpp"

namespace prover::sketching {

// The clauses of all givens, with one branch chosen from each.
class System {
 public:
  System(const std::vector<Phrase>& givens, Layout layout);

  const Layout& layout() const { return layout_; }
  const std::vector<Clause>& clauses() const { return clauses_; }
  bool has_branches() const;  // false when some clause can never hold

  struct Row {
    const Constraint* constraint = nullptr;
    double margin = 0;  // positions: what the value should exceed
  };
  // Takes the branch of every clause that is least violated at `x`; returns the sum of squares that are left.
  double choose(const double* x);
  // A position that the search is to aim for beside the givens; it need not hold in the end.
  void wish(std::optional<Constraint> position) { wish_ = std::move(position); }
  // Points that stay where they are; by default all move.
  void pin(std::vector<bool> points) { pinned_ = std::move(points); }
  bool is_pinned(int variable) const {
    const auto point = static_cast<std::size_t>(variable / 2);
    return point < pinned_.size() && pinned_[point];
  }
  const std::vector<Row>& equations() const { return equations_; }
  const std::vector<Row>& positions() const { return positions_; }

  // Everything holds at `x`: equations to `tolerance`, positions by more than `margin`.
  bool holds(const double* x, double tolerance, double margin) const;
  double residual(const double* x) const;  // of the equations of the branches that hold best

 private:
  Layout layout_;
  std::vector<Clause> clauses_;
  std::vector<Row> equations_, positions_;
  std::optional<Constraint> wish_;
  std::vector<bool> pinned_;
};

// How far `branch` is from holding at `x`: the largest shortfall.
double violation(const Branch& branch, const Layout& layout, const double* x, double margin);

struct Solution {
  bool converged = false;
  double residual = 0;  // the largest equation
};

// Moves `x` to a nearby point where all equations are 0 and, if it can be, all positions have `margins` of their
// margin. Small margins reach narrow figures, large ones clear figures.
Solution solve(System& system, std::vector<double>& x, double margins, const Budget& budget);

}  // namespace prover::sketching
