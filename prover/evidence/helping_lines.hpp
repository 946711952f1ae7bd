// An auxiliary line that would help: candidates of the kinds that a class draws – a midpoint, a perpendicular from a point, a
// parallel through one, a meeting point, a length laid off on a ray, an isosceles or equilateral triangle, a bisector, a
// mirror image –, those first that show most in the drawn figures (lengths that become equal, points in line, right
// angles), each tried. What is returned was solved with the line added, and the proof passed both checks.
#pragma once
#include <string>
#include <vector>

#include "prover/verdict/solve.hpp"

namespace prover {

struct HelpingLine {
  std::string sentence;  // to be put behind `add:`
  std::string words;     // the same as a teacher says it
  std::string value;     // what is then found, when a value is asked for
};

// How far to look: numbers of trials and not times, so that answers are the same on every machine.
struct LineEffort {
  std::size_t most_tried = 16;
  std::size_t most_matches = 120'000;  // of all trials together; large figures cost more each
  std::size_t wanted = 1;
};

// The best candidates first; none when those tried did not help.
std::vector<HelpingLine> helping_lines(const Statement& statement, const Solved& solved, const AttemptOptions& options,
                                       const LineEffort& effort, const Budget& budget);

}  // namespace prover
