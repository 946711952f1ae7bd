// A theorem of the catalogue as a problem like any other: its premises and side conditions are the givens, its
// conclusion is to be proved, its `add` and `case` fields say what is drawn in which case. A rule with a built-in shape
// has no finite statement; its examples that fire stand for it, one problem each.
//
// Letters stand for different points here. Where letters of a rule coincide, tests/rules draws it.
#pragma once
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

struct TheoremCase {
  std::string name;         // "C, O, A lie on a line in this order"; empty when there is one case
  Statement statement;
  std::vector<Phrase> when; // what makes the case
};

struct Theorem {
  Statement common;                // the premises with what is drawn in all cases; no goal. Empty for a built-in shape
  std::vector<TheoremCase> cases;
  bool by_examples = false;        // a built-in shape
  std::vector<Diagnostic> mistakes;
};

Theorem theorem_of(const Rule& rule);

// The same with its points called otherwise: `names` for the letters of the rule, free capital letters for what is drawn.
void rename_points(TheoremCase& one, const std::vector<std::string>& names);

}  // namespace prover
