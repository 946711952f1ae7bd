// A sketch and the solver's variables: the same figure in the units of the text and about 2 wide.
#pragma once
#include <vector>

#include "prover/sketch/sketch.hpp"
#include "prover/sketch/units.hpp"

namespace prover::sketching {

inline constexpr double drawn_diameter = 10;  // of a sketch without lengths in units

std::vector<double> variables_of(const Sketch& sketch, const Units& units);
Sketch sketch_of(const std::vector<double>& x, const Units& units);  // its residual is left at 0

}  // namespace prover::sketching
