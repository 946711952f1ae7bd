// Rule instances in words: the reason as a register words it, and the step with its claim. For what is missing in a line.
#pragma once
#include <string>
#include <vector>

#include "prover/marking/ground.hpp"

namespace prover {

// "alternate angles, KL ∥ MN, cut by LP", one for each of the instances.
std::vector<std::string> reasons_of(const Ground& ground, const std::vector<int>& instances);
// "∠KLP = ∠LPM (alternate angles, KL ∥ MN, cut by LP)".
std::vector<std::string> steps_of(const Ground& ground, const std::vector<int>& instances);

}  // namespace prover
