// What a ladder is worth: how many of the listed ways still go with all that it has told. A way goes with a rung when it
// cites the theorem that the rung names, and makes the step that it tells.
#pragma once
#include <vector>

#include "prover/hints/claim_reader.hpp"
#include "prover/hints/ladder.hpp"

namespace prover {

// Whether two claims tie the same sizes or facts together: "∠VWX = ∠RVW" and "∠RVW = ∠XWV".
bool same_claim(const std::string& a, const std::string& b, ClaimReader& reader);

void count_open_ways(const std::vector<const AnswerProof*>& ways, const Catalogue& catalogue, ClaimReader& reader, Ladder& ladder);

}  // namespace prover
