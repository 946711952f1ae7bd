// A problem asked as a user asks it: text in, answer out, with the standard rules.
#pragma once
#include <catch2/catch.hpp>
#include <string>

#include "prover/prove.hpp"

namespace asked {

using namespace prover;

inline Answer ask(const std::string& text, const ProveOptions& options = {}) {
  const Answer answer = prove(text, standard_catalogue(), options);
  for (const Diagnostic& mistake : answer.diagnostics)
    if (mistake.severity == Severity::error) FAIL_CHECK(render(mistake, "problem", text));
  // Whatever the verdict: what is shown as a proof has passed both checks, and these agree.
  CHECK_FALSE(answer.checks_disagree);
  for (const AnswerProof& proof : answer.proofs) {
    CHECK(proof.replay);
    CHECK(proof.z3);
    CHECK_FALSE(proof.steps.empty());
  }
  if (answer.verdict == Verdict::proved) CHECK_FALSE(answer.proofs.empty());
  return answer;
}

inline bool cites(const Answer& answer, const std::string& rule) {
  for (const AnswerProof& proof : answer.proofs)
    for (const std::string& id : proof.rules)
      if (id == rule) return true;
  return false;
}

}  // namespace asked
