// What a pupil's lines show of each step of the way, by the policies of a scheme: stated or not, how well, on which line, and
// with its reason or not. From this alone the marks are given.
#pragma once
#include <string>
#include <vector>

#include "prover/marking/judgement.hpp"
#include "prover/marking/scheme.hpp"

namespace prover {

enum class Level {
  none,
  slip,     // the method is there, the number is wrong
  carried,  // follows from an earlier error
  full,
};

// Lines by index into the judgement; -1: none.
struct StepCredit {
  Level level = Level::none;
  int line = -1;    // that states it
  int reason = -1;  // that names its reason well enough
  int tried = -1;   // that was meant for it and does not state it
};

struct Credits {
  std::vector<StepCredit> steps;  // of the way
  std::vector<std::string> notes; // by line: the policy that decided; empty: none
  std::vector<std::string> on_the_whole;
};

Credits credits_of(const Judgement& judgement, const Scheme& scheme);  // the judgement has a way

}  // namespace prover
