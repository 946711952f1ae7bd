// Small random search problems, by number: the same on every machine.
#pragma once
#include <cstdint>

#include "benchmarks/search/instance.hpp"

namespace prover {

// Up to twelve candidates over four to seven unknowns. All forms vanish at one random point, so no candidates contradict
// each other. With `nested`, about half of them have a premise. The goal follows from all of them together.
SearchInstance random_problem(std::uint64_t number, bool nested);

}  // namespace prover
