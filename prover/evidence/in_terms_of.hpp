// What is asked in terms of what is left free: "∠KML = 90° + ½∠KPL". Angles that the text names come first as
// parameters, and one is better than two. The linear closure of the attempt finds the equation; a proof of it that passes
// both checks stands behind every one that is told.
#pragma once
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/attempt.hpp"

namespace prover {

std::vector<std::string> in_terms_of(const Statement& statement, std::size_t goal, Workings& workings,
                                     const Sketch& figure, const AttemptOptions& options, const Budget& budget);

}  // namespace prover
