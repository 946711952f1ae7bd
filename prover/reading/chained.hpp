// Equal things said one after the other, each with its reason, as one chain: "∠P = ∠Q", then "= ∠R" on the next row.
// At most three "=", one to a row (CLASSROOM.md, ruling 7.11).
#pragma once
#include "prover/reading/reading.hpp"

namespace prover {

void chain_lines(Reading& reading, const Goal& goal, const Names& names);

}  // namespace prover
