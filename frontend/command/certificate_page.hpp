// A certificate on the page: what the rules show of the angles, the condition of the law of sines, its value put in, and why
// no other value fits. Its heading says that it is no school proof.
#pragma once
#include "frontend/document/document.hpp"
#include "prover/verdict/answer.hpp"

namespace frontend {

void add_certificate(const prover::AnswerCertificate& certificate, Document& document);

}  // namespace frontend
