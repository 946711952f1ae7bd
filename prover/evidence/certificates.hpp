// Exact values for what the rules do not reach: certified by the law of sines (prover/trigonometry), for each goal and each
// case of the words. The verdict stays what it is.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// For an answer that is beyond the rules: sets `value`, `evidence` and `certificates` when every goal is certified; else
// says in `unlock` what stands in the way where that helps.
void add_certificates(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                      const AttemptOptions& options, const Budget& budget, Answer& answer);

}  // namespace prover
