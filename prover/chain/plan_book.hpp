// The match plans of a catalogue, worked out once and kept: a batch of problems and every keystroke use the same.
// It also knows which rules can fit at all: a rule that asks for facts is looked at only when facts of each of those
// kinds are known, so rules about circles cost a figure without circles nothing.
#pragma once
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "prover/chain/match_program.hpp"
#include "prover/chain/rule_forms.hpp"

namespace prover {

using FactKinds = std::uint32_t;  // a set of kinds of fact
constexpr FactKinds only(FactKind kind) { return FactKinds{1} << static_cast<unsigned>(kind); }

struct RulePlans {
  std::vector<MatchPlan> plans;  // one for each fact condition, or one; empty for built-in shapes and mere wordings
  std::vector<MatchProgram> programs;  // one for each plan
  std::optional<RuleForms> forms;      // none where there are no plans
  std::vector<Position> where;         // the positions of its side conditions, over variables
  FactKinds kinds = 0;                 // of its fact conditions
};

class PlanBook {
 public:
  explicit PlanBook(const Catalogue& catalogue);
  const RulePlans& operator[](RuleId rule) const { return rules_[rule.index()]; }

  // In catalogue order.
  const std::vector<RuleId>& figure_rules() const { return figure_rules_; }  // places depend on the figure alone
  const std::vector<RuleId>& pair_rules() const { return pair_rules_; }      // two triangles tied by equal parts
  // Those that rest on facts, when facts of the kinds `fresh` came to those of the kinds `known` (which hold `fresh`).
  std::vector<RuleId> fact_rules(FactKinds fresh, FactKinds known) const;
  RuleId shape(Builtin kind) const { return shapes_[static_cast<std::size_t>(kind)]; }  // not valid when absent

  // Kept by the catalogue's serial number; safe to call from several threads.
  static std::shared_ptr<const PlanBook> of(const Catalogue& catalogue);

 private:
  std::vector<RulePlans> rules_;
  std::vector<RuleId> figure_rules_, pair_rules_;
  std::vector<std::vector<RuleId>> resting_on_;  // by kind of fact: the rules that ask for one
  std::vector<RuleId> shapes_;                   // by builtin
};

}  // namespace prover
