// A ladder of hints: rungs from least to most, each adding one thing, given only when asked for. First what is asked and
// what the givens mean; then, step by step of one proof in the order of reading: where to look, which kind of relation,
// the theorem's name, the exact places, and the step itself. Nothing below the last rung gives the answer away
// (`leak.hpp` reads every rung back). The grades follow the research named in the published table of reasons, "Graded
// help": point to the feature, then the principle, then the step (VanLehn 2006); ask before telling (Polya, from memory).
#pragma once
#include <set>
#include <string>
#include <vector>

#include "prover/marking/judgement.hpp"
#include "prover/statement/statement.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

enum class RungKind {
  your_line,   // about a line of the pupil's that is not right, or not enough
  look_again,  // what is asked, what the givens mean
  where,       // where in the figure to look
  kind,        // which kind of relation
  fact,        // the theorem's name
  places,      // the exact places
  step,        // the step: "CLAIM (REASON)" and nothing else
  answer,      // the last step, likewise
};
const char* name_of(RungKind kind);  // "look-again"

struct Rung {
  int level = 0;                    // from 1
  RungKind kind = RungKind::look_again;
  std::string text;
  std::vector<std::string> points;  // that it speaks of
  int step = 0;                     // of the proof; 0: of none in particular
  std::string rule;                 // the rule it names or tells, by id
  std::string claim, reason;        // step, answer
  int line = 0;                     // your_line: of the pupil's lines
  int steps_left = 0;               // cited steps still to be made once this is known
  int ways_open = -1;               // of the listed ways, those that go with all that has been told so far; -1: not asked
};

struct Ladder {
  std::string goal, case_name;
  std::string title;                // of the proof: "by alternate angles"
  int way = 0;                      // its number where ways were asked for, from 1
  int ways = 0;                     // how many were listed; 0: not asked
  std::vector<Rung> rungs;          // the last is the answer
};

// What a ladder is made from.
struct Climb {
  const Statement& statement;
  const Goal& goal;
  const Answer& answer;             // its value and figures
  const AnswerProof& way;
  const Catalogue& catalogue;
  Register wording = Register::plain;
  std::set<int> done;               // steps of the way that the pupil has shown
  std::vector<JudgedLine> lines;    // the pupil's
};

Ladder ladder_of(const Climb& climb);

// Rungs renumbered, their points filled in, and how many cited steps are left after each.
void finish_rungs(const Climb& climb, Ladder& ladder);

}  // namespace prover
