// All minimal sets that give the goal, by trying every set: the measure for cleverer methods. The closure is written anew
// here and shares only the arithmetic with them.
#pragma once
#include <cstdint>
#include <vector>

#include "prover/search/search_problem.hpp"

namespace prover {

struct MinimalSet {
  std::vector<int> members;  // sorted
  std::int64_t weight = 0;
};
// For up to twenty candidates and one or more goals. Lightest first.
std::vector<MinimalSet> all_minimal_sets(const SearchProblem& problem);

}  // namespace prover
