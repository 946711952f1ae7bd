// A goal as equations, once the chain has run: for `find`, the asked quantity minus the value that the closure
// gives it (or minus an expression in the quantities named); for `prove`, the claims' own equations, together
// with the positions that they speak of.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/algebra/linear_system.hpp"
#include "prover/figure/arrangement.hpp"
#include "prover/fact/unknown.hpp"
#include "prover/language/problem_text.hpp"

namespace prover {

struct GoalForms {
  bool reached = false;             // every form follows and every position is known
  bool unsupported = false;         // the goal says something that this version cannot prove, such as "<"
  std::vector<Form> forms;
  std::vector<Position> positions;
  std::string value;                // find: exact, "62" or "90 + 1/2 ∠BAC"
  std::optional<Rational> number;   // find: when it is a number
  std::vector<Form> positive;       // differences that are to be more than 0: `forms` shows each equal to a positive sum
  bool open_comparison = false;     // one of them is not known to be
  std::string missing_position;     // a position of the claim that is not known, in words
};

GoalForms goal_forms(const Goal& goal, const LinearSystem& closure, const Arrangement& arrangement,
                     UnknownTable& unknowns, const Names& names);

// Interns what the goal names, so that the chain knows its unknowns.
void note_goal(const Goal& goal, const Arrangement& arrangement, UnknownTable& unknowns);

}  // namespace prover
