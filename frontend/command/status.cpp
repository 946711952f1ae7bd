#include "frontend/command/status.hpp"

namespace frontend {

int status_of(const prover::Answer& answer) {
  if (answer.checks_disagree) return status_disagreement;
  if (prover::has_error(answer.diagnostics)) return status_mistake;
  return answer.verdict == prover::Verdict::proved ? status_proved : status_other;
}

}  // namespace frontend
