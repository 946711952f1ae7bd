// A problem that was solved becomes a rule: its givens are the premises, its claims the conclusion, what the class was
// given to draw stands in `add`. The rule is written as a file like any other, and is tried before it is accepted: it
// must load without mistakes, hold in random figures (with letters on one point too), and be proved from the catalogue.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/rule/rule.hpp"

namespace prover {

struct RuleToSave {
  std::string file;                     // its text; empty when the problem cannot become a rule
  bool proved = false;
  bool may_be_assumed = false;          // not proved, and nothing speaks against it
  std::string objection;                // why it is not proved, or cannot be a rule; one sentence
  std::vector<Diagnostic> diagnostics;  // mistakes in the problem
};

// `name`: small letters, digits and hyphens. With `assume`, a rule that cannot be proved is written all the same, marked
// so by its kind; one that a figure refutes is never written.
RuleToSave rule_from_problem(const std::string& name, std::string_view problem, const Catalogue& catalogue, bool assume,
                             const Budget& budget);

}  // namespace prover
