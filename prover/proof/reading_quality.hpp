// Which of two proofs of equal cost reads better (CLASSROOM.md, rulings 7.13): no construction, then fewer different
// theorems, then theorems from earlier in the course, then fewer angles that are not in the question. What is left is
// told apart by the rules and places themselves, so that the choice is the same on every machine.
#pragma once
#include <compare>
#include <set>
#include <vector>

#include "prover/fact/unknown.hpp"
#include "prover/rule/instance.hpp"

namespace prover {

struct ReadingQuality {  // less is better
  int constructions = 0;      // lines drawn
  int theorems = 0;           // different rules cited, families once; free steps and givens not counted
  int latest = 0;             // place in the default course of the last one taught; own rules after all others
  int taught = 0;             // sum of the places
  int strange_angles = 0;     // angles spoken of that are not in the question
  std::vector<int> fixed;     // rules and places, sorted
  friend auto operator<=>(const ReadingQuality&, const ReadingQuality&) = default;
};

// The angles that givens and goal speak of.
std::set<UnknownId> angles_of(const std::vector<Form>& forms, const UnknownTable& unknowns);

// `in_question`: as from `angles_of`, for the forms of the givens and the goal.
ReadingQuality reading_quality(const std::vector<const Instance*>& members, const std::set<UnknownId>& in_question,
                               const UnknownTable& unknowns, const Catalogue& catalogue);

}  // namespace prover
