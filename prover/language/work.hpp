// What a pupil wrote, line by line, as phrases: `∠KLP = 70° (alt ∠s)`, `angle x = 180 - 2(40) = 100, isosceles`,
// `Draw MR ∥ KL`. The lines stand behind `work:` in the problem, or come from a file of their own. No line is ever dropped:
// what cannot be read is kept and says why. Whether a line is right is the business of prover/marking; whether a reason is
// one, too: here it is only cut off and kept as it was written.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/problem_text.hpp"

namespace prover {

enum class WorkKind {
  claim,         // says something: `claims`
  construction,  // draws something: `drawn`; it may also claim ("Draw MR ∥ KL" claims the parallels)
  naming,        // "let x = ∠KLM": from here on the letter stands for the angle
  remark,        // says nothing of the figure: "Proof:", "QED", "so that's it"
  crossed_out,   // ~~between tildes~~, or "crossed out:" before it; read no further
  unread,        // `trouble` says why
};

struct WorkReason {
  std::string text;  // as written, without brackets, commas and "because"
  Span span;
};

struct WorkLine {
  int number = 0;                    // from 1, as the pupil's lines are counted; blank lines do not count
  Span span;                         // in the text it was read from
  std::string text;                  // as written, trimmed
  WorkKind kind = WorkKind::unread;
  // A chain of equalities stays one phrase, with plain arithmetic among its expressions: "∠KPL = 180 − 2(40) = 100" has
  // three. Several claims in one line ("KL = KM and LP = PM") are several phrases.
  std::vector<Phrase> claims;
  std::vector<WorkReason> reasons;   // in the order written; empty: none was given
  std::vector<std::size_t> drawn;    // construction: indices into `added` of PupilWork::problem
  bool similarly = false;            // the reason is that of the line before, at other places
  bool concludes = false;            // begins with "so", "hence", "∴": rests on what stands just before
  std::string trouble;               // unread: a sentence, "There is no point Z in this figure."
  bool unknown_point = false;        // it speaks of points that do not exist
  bool ambiguous = false;            // a name in it could mean several angles
};

struct PupilWork {
  ProblemText problem;               // with what the pupil drew among its `added` lines, and its new points
  std::vector<WorkLine> lines;
};

// `problem`: the text of the problem, with or without `work:` lines; `work`: further lines, one a line of text, after
// those. Mistakes of the problem itself are in `problem.diagnostics`, as from `parse_problem`; a pupil's line never makes one.
PupilWork read_work(std::string_view problem, std::string_view work = {});

}  // namespace prover
