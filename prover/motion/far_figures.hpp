// Two figures of the same givens that differ in a quantity as far as they can while both can still be read: the
// evidence that the givens do not settle it.
#pragma once
#include <optional>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover::motion {

struct FarFigures {
  Sketch least, most;
  double least_value = 0, most_value = 0;  // as `measure` has it
  bool same_arrangement = false;  // every point on the same side of every line: one is reached from the other by moving
  int freedom = 0;                // of the figure they were moved from
};

// `figures`: of the givens, the clearest first, as `sketch` finds them. None when the quantity does not differ.
std::optional<FarFigures> far_figures(const std::vector<Phrase>& givens, const std::vector<Sketch>& figures,
                                      const Expression& quantity, const Budget& budget);

}  // namespace prover::motion
