// What a ladder is worth: how many of the listed ways still go with all that it has told. A way goes with a rung when it
// cites the theorem that the rung names, and makes the step that it tells.
#pragma once
#include <vector>

#include "prover/hints/ladder.hpp"

namespace prover {

// Whether two claims speak of the same sizes, each once: "∠VWX = ∠RVW = 64°" and "∠RVW = ∠XWV".
bool same_claim(const std::string& a, const std::string& b, const Names& names);

void count_open_ways(const std::vector<const AnswerProof*>& ways, const Statement& statement, Ladder& ladder);

}  // namespace prover
