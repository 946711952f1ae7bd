// The ways to each claim, put into an answer that has its verdict: in the place of its proofs come those of the ways, case
// by case. Every one has passed both checks.
#pragma once
#include <vector>

#include "prover/verdict/answer_of.hpp"

namespace prover {

struct WaysAsked {
  std::size_t most = 6;        // ideas for each claim
  std::size_t most_alike = 2;  // of ideas that cite the same theorems, at other places
  std::size_t most_steps = 0;  // of a proof; 0: as many as it takes
  std::vector<RuleId> with;    // every proof cites these
};

// Does nothing to an answer whose verdict has no proofs of the claim.
void add_ways(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
              const WaysAsked& asked, const Budget& budget, StageTimes& times, double& sketch_ms, Answer& answer);

}  // namespace prover
