// An answer as a page for people: the verdict in a sentence, what was understood, the proof, and what a teacher
// wants to know about it.
#pragma once
#include "frontend/document/document.hpp"
#include "prover/rule/rule.hpp"
#include "prover/verdict/answer.hpp"

namespace frontend {

struct PageOptions {
  bool for_teacher = true;  // a pupil's copy does not say what was seen in the figure
  bool times = false;
};

ProofLines proof_lines(const prover::AnswerProof& proof);
Document answer_page(const prover::Answer& answer, const prover::Catalogue& catalogue, const PageOptions& options);

}  // namespace frontend
