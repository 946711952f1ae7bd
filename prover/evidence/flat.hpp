// Where no figure was found: whether a flat one meets the givens, and what falls together in it.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// Adds a sentence to the summary, and the flat figure. Only for a verdict that rests on no figure being found.
void add_flat_figure(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const Budget& budget,
                     Answer& answer);

}  // namespace prover
