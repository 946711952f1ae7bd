// What is wrong with a rule that its file alone does not show: it is drawn, matched and compared with the others. The
// mistakes that a file shows by itself (letters used once, a missing example …) are told when it is loaded
// (prover/rule/lint.hpp).
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/rule/rule.hpp"

namespace prover {

struct LintOptions {
  std::size_t figures = 300;             // drawn for each rule
  std::size_t most_steps = 200'000;      // of matching on the crowded figure; beyond them a rule is too general
  std::uint64_t seed = 1;
  std::vector<std::string> ids;          // these rules alone; empty: all
};

struct LintedRule {
  RuleId rule;
  RuleFile file;
  std::vector<Diagnostic> findings;  // errors: the rule is wrong; warnings: it could be better
};

// Rules with findings, in catalogue order. `files`: those from which the catalogue was loaded.
std::vector<LintedRule> lint_rules(const Catalogue& catalogue, const std::vector<RuleFile>& files,
                                   const LintOptions& options = {}, const Budget& budget = {});

// What it costs to look for the places of a rule: steps of matching on a standard crowded figure, a lattice of sixteen
// points with its parallels and diagonals, in which every position is known.
std::size_t matching_cost(const Rule& rule, std::size_t most_steps);

}  // namespace prover
