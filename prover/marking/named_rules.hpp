// The reasons of one line together: which rules they name, and how well.
#pragma once
#include <string>
#include <vector>

#include "prover/language/work.hpp"
#include "prover/marking/reason.hpp"
#include "prover/marking/support.hpp"

namespace prover {

struct NamedRules {
  std::vector<ReadReason> reasons;
  std::vector<std::string> texts;   // of each, as the pupil wrote it
  std::vector<bool> named;          // by RuleId: by a reason that is taken for one, nicknames too
  bool any = false;                 // some theorem or definition is named, not merely a meaning ("common side")
  bool nickname = false, vague = false, given = false, working = false, sight = false, measured = false, unknown = false;
  bool absent() const { return reasons.empty(); }
};

NamedRules named_rules(const std::vector<WorkReason>& reasons, const Names& names, const Catalogue& catalogue, Register wording);

// A reason that no theorem is needed for, and that says so: a given, arithmetic, a definition, or something that holds
// ("LP bisects ∠KLM") and nothing beside it.
bool is_honest(const NamedRules& named, const Ground& ground);

// The lines, sides and triangles named with the reason are those at which the rule stands.
bool places_fit(const NamedRules& named, const Support& support, const Ground& ground);
// A rule about parallels was cited, and some reason says which lines are parallel; true where none was.
bool parallels_named(const NamedRules& named, const Support& support, const Ground& ground);

// One is the other's converse.
bool are_converses(RuleId a, RuleId b, const Catalogue& catalogue);

}  // namespace prover
