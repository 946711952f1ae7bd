// The self-proving library: every theorem of a course, proved by the prover itself from what stands before it in that
// course. A theorem holds only when all its cases are proved, when the cases cover every figure of its premises, and
// when no proof reads from the figures a position that could also be a boundary ("on the line").
//
// A later theorem may rest on one that could not be proved here; `Ancestry` tells (ancestry.hpp).
#pragma once
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/rule/course.hpp"
#include "prover/rule/rule.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

enum class TheoremStatus {
  taken,        // a postulate or definition of the course, or mere wording
  proved,
  by_examples,  // a built-in shape: its examples are proved, the general statement is not one problem
  not_proved,
};
const char* name_of(TheoremStatus status);  // "taken", "proved", "examples proved", "not proved"

struct TheoremReport {
  RuleId rule;
  TheoremStatus status = TheoremStatus::not_proved;
  std::vector<AnswerProof> proofs;   // one for each case and each arrangement of it
  std::size_t steps = 0;             // lines of all of them
  std::vector<RuleId> cites;         // each once, in catalogue order
  std::string why_not;               // for not_proved: one sentence
};

struct LibraryOptions {
  Register wording = Register::plain;
  Budget budget;                     // for all together
  std::vector<RuleId> only;          // empty: all
};

// In the order of the course. Theorems are independent of each other and shared out to all cores.
std::vector<TheoremReport> prove_library(const Catalogue& catalogue, const Course& course, const LibraryOptions& options);

}  // namespace prover
