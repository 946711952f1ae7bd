// A changed problem solved again: with other givens, or with other rules. Nothing is kept of the first solution, so what
// comes of a trial is as good as any answer: what it calls proved has passed both checks.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// A trial asks whether, not how briefly: it need not look long for the shortest proof.
Budget for_a_trial(const Budget& budget);

Answer try_again(const std::vector<Statement>& statements, const AttemptOptions& options, const Budget& budget);

}  // namespace prover
