// A class at a glance: how many reached each step of the way, how many gave its reason, and which wrong ideas appeared.
#pragma once
#include <string>
#include <vector>

#include "prover/marking/marks.hpp"

namespace prover {

struct TallyStep {
  std::string statement, reason;
  int reached = 0, reasoned = 0;
  bool needs_reason = true;
  bool of_all = true;  // on the way of the problem itself; else of a pupil who took another one
};

struct TallyIdea {
  std::string mistake, name;             // id and common name of the mistake
  std::vector<std::string> pupils;       // each once, in the order of the files
};

struct PupilsWork {
  std::string pupil;  // the name of the file
  const Judgement* judgement = nullptr;
  const Scheme* scheme = nullptr;
};

struct Tally {
  std::vector<TallyStep> steps;
  std::vector<TallyIdea> ideas;  // the most frequent first
};

// `own`: the way of the problem without anybody's work, whose steps come first.
Tally tally_of(const std::vector<PupilsWork>& works, const PupilsWork& own);

}  // namespace prover
