// A pupil's work, judged line by line, and the way it takes. A suggestion to the teacher, who decides.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/verdict/answer.hpp"

namespace prover {

enum class LineStatus {
  right,
  right_no_reason,      // no reason, or not enough of one
  wrong_reason,         // the line follows, but not by the reason named
  reason_not_accepted,  // the reason is understood, in words that are not accepted
  unsupported,          // true or not known to be false, but it does not follow from what stands before: a gap
  false_line,           // breaks in a figure that meets the givens
  arithmetic_slip,      // the numbers beside each other are not equal
  follows_from_error,   // false, but it follows from an earlier wrong line
  circular,             // rests on itself
  assumes_the_claim,    // starts from what is to be shown
  given,                // repeats what the problem says
  construction,         // draws a line that exists
  not_needed,           // right, but nothing after it uses it and it is not asked
  not_taught,           // right by a theorem that this class has not been taught
  one_example,          // a number put in where all are meant
  ambiguous_name,       // a name in it could mean several angles
  remark,               // says nothing of the figure
  crossed_out,
  unread,               // could not be read
};
const char* name_of(LineStatus status);  // "right", "right-no-reason", …, "false"

// What keeps a reason from being accepted: some schemes forgive one or the other (rules/schemes).
enum class ReasonLack {
  nothing,
  absent,     // no reason was given
  lines,      // the right reason, but which lines are parallel is not said
  relation,   // the bare name, without "equal" or the sum
  nickname,   // "Z angles"
  vague,      // too little to tell which fact is meant
  other,      // it does not give the line
};

struct JudgedLine {
  int number = 0;                      // of the pupil's lines, from 1
  std::string text;                    // as the pupil wrote it
  std::string read_as;                 // as it was understood; empty where it was not
  LineStatus status = LineStatus::unread;
  std::string remark;                  // a sentence to the pupil; gives nothing away that the line did not ask
  bool stated = false;                 // the statement stands (right, or by an earlier error)
  bool reasoned = false;               // its reason is accepted, or none is needed
  ReasonLack lacks = ReasonLack::nothing;  // why it is not
  std::vector<std::string> would_do;   // reasons that would give it, as the register words them
  int gap = 0;                         // unsupported: so many steps are missing …
  std::vector<std::string> bridge;     // … these: "∠KLP = 70° (alternate angles, KL ∥ MN)"
  std::string mistake, mistake_name;   // id of a classic mistake or of the converse, and its common name
  std::string ask;                     // of a classic mistake: a question that leads the pupil to see it
  std::string value;                   // false: the value it should have, where the givens force one: "70°"
  std::optional<AnswerFigure> figure;  // false: a figure that meets the givens and breaks it
  std::vector<int> uses;               // earlier lines it rests on, by number
  std::vector<int> steps;              // of `Judgement::way`, those that it states or passes through, by number
  std::vector<int> reasoned_steps;     // of these, those whose reason is named well enough
};

struct Judgement {
  Answer problem;                      // the problem's own answer: verdict, reading, diagnostics
  std::vector<JudgedLine> lines;
  std::optional<AnswerProof> way;      // the lightest proof when what the pupil has shown costs nothing; none where the
                                       // problem has no proof
  bool complete = false;               // the pupil's own lines reach what is asked
  std::string proves;                  // what the lines show, where it is not what is asked
  std::string assumed;                 // what they take without showing it
  std::string first_break;             // where the argument breaks first, a sentence; empty: nowhere
};

}  // namespace prover
