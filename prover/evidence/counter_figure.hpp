// What stands behind `false`: a figure of all givens in which the claim fails by the widest margin that could be found in
// a figure that can be read, and how far it fails, in words.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// In the place of the figure that was seen first.
void add_counter_figure(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const Budget& budget,
                        Answer& answer);

}  // namespace prover
