// The judge: each of a pupil's lines, on its own merits and on what stands before it; then the argument as a whole, and the
// way to the goal that goes on from what the pupil has shown.
#pragma once
#include <vector>

#include "prover/language/work.hpp"
#include "prover/marking/grounds.hpp"
#include "prover/marking/judgement.hpp"

namespace prover {

struct JudgeTask {
  const PupilWork& work;
  const Statement& statement;           // its goals: those of the problem, then every claim of the pupil
  std::size_t goals = 0;                // so many of them are the problem's own
  std::vector<std::string> refused;     // by line: why what it draws cannot be drawn; empty: it can
  std::vector<bool> refused_points;     // by point: drawn by such a line only
  std::vector<std::string> set_aside;   // the theorem that the claim merely states: nothing that rests on it may be cited
};

void judge(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, Judgement& judgement);

}  // namespace prover
