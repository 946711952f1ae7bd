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
  bool variants = false;    // of the ways: every variant in full
  bool report = false;      // the verdict and its evidence: of a proof only what it is and what it needs
};

// "41/20" as a person writes it: 2.05. Where the decimals would not end soon, the fraction stays.
std::string decimal(const std::string& exact);
// What is known of shorter proofs, and within what: where no points had to be joined, only the lines drawn were looked at.
std::string how_short(const prover::AnswerProof& proof);
std::string rule_titles(const std::vector<std::string>& ids, const prover::Catalogue& catalogue);
std::string check_sentence(const prover::AnswerProof& proof);

// A proof under a heading, as far as the lines and what they read from the figure.
void add_proof(const prover::AnswerProof& proof, Heading heading, const prover::Catalogue& catalogue,
               const PageOptions& options, Document& document);

ProofLines proof_lines(const prover::AnswerProof& proof);
Document answer_page(const prover::Answer& answer, const prover::Catalogue& catalogue, const PageOptions& options);

}  // namespace frontend
