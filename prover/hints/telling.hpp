// A step in words that may be told: its claim as the class writes it, or only its relation where a number in it would give
// the answer away. "CLAIM (REASON)" and nothing else, so that it can be read back as a line of work.
#pragma once
#include <string>
#include <vector>

#include "prover/verdict/answer.hpp"

namespace prover {

struct Telling {
  std::string claim, reason;
  std::string text() const { return reason.empty() ? claim : claim + " (" + reason + ")"; }
};

// From the fullest to the barest.
std::vector<Telling> tellings_of(const AnswerStep& step);

// Several steps as one line: what is left to say together with the answer.
Telling joined_telling(const std::vector<const AnswerStep*>& steps);

// Neither a cited fact nor a line that is drawn: arithmetic, a letter for short, what stands above put together.
bool is_mere_working(const AnswerStep& step);

}  // namespace prover
