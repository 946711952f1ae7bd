// What a rule must have beyond being readable: its parts, variables that are bound, side conditions that
// speak of position only, wording whose places exist, and both kinds of example. What can only be measured
// (does the conclusion follow?) is measured by tests/rules.
#pragma once
#include "prover/rule/hint_fields.hpp"
#include "prover/rule/rule.hpp"

namespace prover {

// Where a part of the rule stands in its file, for the diagnostics.
struct RulePlaces {
  Span header;                                            // the id in the first line
  std::vector<std::pair<Register, std::size_t>> wording;  // where each wording's text begins
  std::vector<HintField> hints;  // those to be judged
};

std::vector<Diagnostic> lint(const Rule& rule, const RulePlaces& places);

// Where in a rule a kind of phrase may stand. `triangle` is both: drawn sides in `given`, not on one line in
// `where`.
struct RulePart {
  bool given = false, where = false, then = false;
};
RulePart part_of(Predicate predicate);

}  // namespace prover
