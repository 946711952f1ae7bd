// A certificate in words: the condition with the open angle and with its value put in, as a textbook sets products of
// sines, and why no other value fits.
#pragma once
#include "prover/trigonometry/certify.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

AnswerCertificate certificate_text(const CertifiedCase& one, const Statement& statement);

}  // namespace prover
