// An equation that follows from many lines, worked out step by step: each step puts at most three lines together, and
// what comes of it is as short as can be. "Substituting" four or more equations at once is more than a reader follows.
#pragma once
#include <vector>

#include "prover/algebra/linear_system.hpp"

namespace prover {

struct WorkedOut {
  std::vector<int> from;  // indices of summands; from their number on, results of earlier steps in order
  Form result;            // the sum, with what the givens make equal written as one
};

constexpr std::size_t kAtOnce = 3;  // equations that one step puts together

// The last step gives the whole sum. `given`: what the givens say. Shortest intermediate equations up to nine summands,
// beyond that the shortest next one each time.
std::vector<WorkedOut> work_out(const std::vector<Form>& summands, const LinearSystem& given);

}  // namespace prover
