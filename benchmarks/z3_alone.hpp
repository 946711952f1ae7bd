// The same equations, handed to Z3 in one piece, without our elimination and without choosing any: "all of them,
// every angle between 0° and 180°, and not the goal". What a general solver takes for what we want to know.
#pragma once
#include <vector>

#include "prover/fact/unknown.hpp"

namespace prover {

enum class Decided { follows, does_not_follow, gave_up };
Decided z3_alone(const std::vector<prover::Form>& equations, const prover::Form& goal,
                 const prover::UnknownTable& unknowns, unsigned limit_ms);

}  // namespace prover
