// Different letters of a rule may stand for one point unless a phrase forbids it. These are the ways in which they
// can: which letters fall together, with the rule's phrases told about the points that are left. A phrase forbids it
// when it would lose its meaning: a segment or line without two ends, an angle without two arms, a flat triangle.
#pragma once
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

// Whether the phrase says something, its letters standing for the points that it names.
bool has_meaning(const Phrase& phrase);

// The phrase told about other points: `point_of` by letter.
Phrase renamed(Phrase phrase, const std::vector<int>& point_of);

struct LetterCase {
  std::vector<int> point_of;     // by letter of the rule
  Names names;                   // of the points; letters on one point share its name: "A=D"
  std::vector<Phrase> premises;  // given, then where
  std::size_t given = 0;         // how many of them are given
  std::vector<Phrase> claims;    // what the rule concludes, less what loses its meaning
};

// The rule as it is written comes first. `most_shared`: how many letters may be put on the point of another one.
std::vector<LetterCase> letter_cases(const Rule& rule, std::size_t most_shared);

}  // namespace prover
