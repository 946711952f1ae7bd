// The marks for a pupil's work: what each line earns by a scheme, and what the steps that are missing would have earned.
// What the lines and the missing steps could earn is the scheme's total, whatever the pupil wrote. A suggestion: the teacher
// decides.
#pragma once
#include <string>
#include <vector>

#include "prover/marking/judgement.hpp"
#include "prover/marking/scheme.hpp"

namespace prover {

struct GivenMark {
  std::string code;
  int awarded = 0, possible = 0;
  std::string what;           // the row of the scheme: "∠LKQ = 52° (alternate angles, KL ∥ PQ)"
  std::vector<int> steps;     // of the way
};

struct LineMarks {
  int awarded = 0, possible = 0;
  std::vector<GivenMark> marks;
  std::string note;           // to the teacher, where a policy of the scheme decided
};

struct Marks {
  std::vector<LineMarks> lines;     // by the lines of the judgement
  std::vector<GivenMark> missing;   // marks that no line tried for
  int awarded = 0, possible = 0;
  std::vector<std::string> notes;   // to the teacher, on the whole
};

Marks marks_of(const Judgement& judgement, const Scheme& scheme);

// What the teacher reads above or below every marked page.
inline constexpr const char* suggestion_note =
    "A suggestion: the teacher decides. Pupils' work stays on this computer; no names are needed.";

}  // namespace prover
