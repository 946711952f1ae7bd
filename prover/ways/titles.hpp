// Titles that tell the proofs of one list apart: "by alternate angles", "by corresponding angles and vertically opposite
// angles", "by base angles, in triangle KLM".
#pragma once
#include <span>

#include "prover/rule/rule.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

// The first proof of each idea keeps the title of its reading as long as no other proof has it. A variant is named by
// all that it cites.
void tell_apart(std::span<AnswerProof> proofs, const Catalogue& catalogue);

}  // namespace prover
