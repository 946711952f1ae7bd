// What stands behind `undetermined`: two figures of all givens that differ in what is asked as far as they can while both
// can be read; the smallest sets of one or two further givens that would settle it; and what is asked in terms of what is
// left free, where that is linear.
//
// A set that settles is found by ranks of derivatives: with it, what is asked no longer changes along any free move. Then it
// is really tried: figures of the givens with the set are sought, and must agree; and the prover tries to prove the value.
#pragma once
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

struct SettlingSet {
  std::vector<std::string> sentences;  // as they can be pasted into the problem
  std::string says;                    // "give ∠KML; for example, with ∠KML = 40°, ∠LKM = 70°"
  bool proved = false;                 // and the value is then proved with what is taught
};

struct Undetermined {
  std::vector<AnswerFigure> figures;   // two, or none when nothing better than the figures seen so far was found
  int freedom = 0;                     // how many numbers the shape of the figure has still free
  bool by_arrangement = false;         // what is asked does not move, but differs from arrangement to arrangement
  std::vector<SettlingSet> settled_by; // the more natural first, those without a proof last
  std::vector<std::string> in_terms_of;  // "∠KML = 90° + ½∠KPL": proved and checked
};

Undetermined undetermined_evidence(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                                   const AttemptOptions& options, const Budget& budget);
// The same, put into the answer, in the place of the figures that were seen first.
void add_undetermined(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                      const AttemptOptions& options, const Budget& budget, Answer& answer);

}  // namespace prover
