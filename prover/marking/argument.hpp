// The argument as a whole, once each line has been judged: what rests on itself, what assumes the claim, what nobody
// needed, what the lines show in the end.
#pragma once
#include "prover/marking/judge.hpp"

namespace prover {

// What a line says, with what it was found to rest on. One for each claim of a line that stands or is wrong.
struct LineClaim {
  std::size_t line = 0;            // index into Judgement::lines
  Phrase phrase;
  bool shown = true;               // supported; false: there is a gap before it
  bool wrong = false;
  std::size_t ground = 0;          // on which it stands
  std::vector<int> instances;      // of that ground
  std::vector<int> reasoned;       // of these, those whose rule the reason names
};

void judge_argument(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, std::vector<LineClaim>& claims,
                    Judgement& judgement);

}  // namespace prover
