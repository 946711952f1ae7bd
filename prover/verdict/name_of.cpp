#include "prover/verdict/answer.hpp"

namespace prover {

const char* name_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::proved:
      return "proved";
    case Verdict::false_claim:
      return "false";
    case Verdict::undetermined:
      return "undetermined";
    case Verdict::contradictory:
      return "contradictory";
    case Verdict::depends_on_figure:
      return "depends-on-figure";
    case Verdict::beyond_rules:
      return "beyond-rules";
    case Verdict::unknown:
      return "unknown";
  }
  return "";
}

}  // namespace prover
