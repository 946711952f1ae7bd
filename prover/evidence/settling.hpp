// The smallest sets of one or two further givens that would settle what is asked.
#pragma once
#include <vector>

#include "prover/evidence/undetermined.hpp"

namespace prover {

// What is asked moves in `figure`, a figure of the statement's givens. `workings`: of the attempt that did not reach it.
std::vector<SettlingSet> settling_sets(const Statement& statement, std::size_t goal, Workings& workings, const Sketch& figure, const AttemptOptions& options, const Budget& budget);

}  // namespace prover
