// The field `hint` of a rule file: `hint where "…"`, or `hint us kind "…"` in a register's own words; what such a sentence
// may not say; and files of sentences for rules that exist already, by which a teacher changes or translates them.
#pragma once
#include "prover/rule/fields.hpp"
#include "prover/rule/rule.hpp"
#include "prover/rule/wording.hpp"

namespace prover {

struct HintField {
  Register wording = Register::plain;
  HintRung rung = HintRung::where;
  std::string text;
  std::size_t begin = 0;  // where the sentence begins in the file
};

// Reads one field; nothing, and a mistake, when it says no rung or no sentence.
std::optional<HintField> read_hint(const Field& field, std::vector<Diagnostic>& mistakes);
void set_hint(Rule& rule, const HintField& hint);

// A sentence asks; it never tells. Refused are names that are no place of the rule, numbers and signs of equations and
// facts, and a sentence that names both angles, or both lengths, which the rule makes equal.
void lint_hint(const Rule& rule, const HintField& hint, std::vector<Diagnostic>& out);

// Files `*.hints` hold no rules, but `rule ID` with fields `hint` below it, as often as wanted. Their sentences take the
// place of the rule's own; a mistake leaves the sentence as it was.
bool holds_hints(const RuleFile& file);
void load_hints(const RuleFile& file, std::vector<Rule>& rules, std::vector<Diagnostic>& mistakes);

}  // namespace prover
