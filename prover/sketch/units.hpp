// What the givens need beside points: the unknown numbers, a point of each circle, the size of the text's units.
#pragma once
#include <vector>

#include "prover/sketch/constraint.hpp"

namespace prover::sketching {

struct Units {
  Layout layout;
  bool measured = false;  // a length is given in units, so a figure cannot be scaled
};

Units units_of(const std::vector<Phrase>& givens, std::size_t points);

}  // namespace prover::sketching
