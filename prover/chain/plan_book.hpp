// The match plans of a catalogue, worked out once and kept: a batch of problems and every keystroke use the same.
#pragma once
#include <memory>
#include <vector>

#include "prover/chain/match_plan.hpp"

namespace prover {

struct RulePlans {
  std::vector<MatchPlan> plans;  // one for each fact condition, or one; empty for built-in shapes and mere wordings
};

class PlanBook {
 public:
  explicit PlanBook(const Catalogue& catalogue);
  const RulePlans& operator[](RuleId rule) const { return rules_[rule.index()]; }

  // Kept by the catalogue's serial number; safe to call from several threads.
  static std::shared_ptr<const PlanBook> of(const Catalogue& catalogue);

 private:
  std::vector<RulePlans> rules_;
};

}  // namespace prover
