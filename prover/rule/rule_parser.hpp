// One rule file, from text to value. Every mistake of the file is told at once; a rule with an error is not
// used.
#pragma once
#include "prover/rule/rule.hpp"

namespace prover {

struct ParsedRule {
  Rule rule;
  Span id_span;
  std::vector<Diagnostic> diagnostics;
};
ParsedRule parse_rule(const RuleFile& file, Examples examples = Examples::checked);

}  // namespace prover
