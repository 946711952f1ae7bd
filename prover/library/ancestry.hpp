// Who rests on whom: the graph of citations between the theorems of a course.
#pragma once
#include <vector>

#include "prover/library/prove_library.hpp"

namespace prover {

class Ancestry {
 public:
  Ancestry(const Catalogue& catalogue, const std::vector<TheoremReport>& reports);

  // 0 for what is taken; a theorem is one deeper than the deepest that its proofs cite; −1 inside a circle.
  int depth(RuleId rule) const { return depth_[rule.index()]; }
  // From the rule down, each the deepest of those that the one before cites; ends with one that is taken.
  std::vector<RuleId> deepest_line(RuleId rule) const;
  // All that the rule rests on, the rule itself not included unless it does; in catalogue order.
  std::vector<RuleId> ancestors(RuleId rule) const;
  const std::vector<RuleId>& cites(RuleId rule) const { return cites_[rule.index()]; }
  bool rests_on_itself(RuleId rule) const;
  // Ancestors (and the rule itself) that were not proved.
  std::vector<RuleId> not_proved_below(RuleId rule) const;

 private:
  std::vector<std::vector<RuleId>> cites_;
  std::vector<int> depth_;
  std::vector<bool> proved_;
};

}  // namespace prover
