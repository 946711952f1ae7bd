// From instances in order to a proof: for every premise and the goal the exact multipliers by which it follows from
// what stands before it.
#pragma once
#include <vector>

#include "prover/figure/arrangement.hpp"
#include "prover/proof/proof.hpp"

namespace prover {

// Asserts that the instances give the goal; empty goal: a proof that the givens contradict each other.
Proof assemble(std::vector<Instance> ordered, std::vector<Form> goal, const UnknownTable& unknowns,
               const Arrangement& arrangement);

// Lists the order of a line's points, as far as figures show it and the text does not, among what a proof read
// from them: an angle named by another point of the same ray rests on it.
void cite_line_order(LineId line, const Arrangement& arrangement, Proof& proof);

}  // namespace prover
