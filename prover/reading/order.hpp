// The order in which a person would say the steps of a proof.
#pragma once
#include <vector>

#include "prover/rule/instance.hpp"

namespace prover {

// Each uses what was just said where it can, and equations that settle a value come as soon as they do.
// `members` must be given in some order in which premises come first.
std::vector<Instance> order_for_reading(std::vector<Instance> members);

}  // namespace prover
