// What a set of rules reaches, asked of one attempt with the whole catalogue: a rule less is only its instances less. So
// "which rules would do?" is a question about derivations and needs no new chaining.
#pragma once
#include <optional>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/search/closure.hpp"
#include "prover/verdict/attempt.hpp"

namespace prover {

class RuleReach {
 public:
  // `full`: an attempt that reaches every goal; `further`: forms that may be told beside the givens. Throws RowOverflow
  // when the numbers do not fit (search/row.hpp).
  explicit RuleReach(const Attempt& full, const std::vector<Form>& further = {});

  bool reaches(const std::vector<bool>& allowed);  // by RuleId
  // With one of the further forms told, and perhaps without a given (index into Statement::givens, or −1).
  bool reaches_when_told(const std::vector<bool>& allowed, std::size_t further, int without_given);
  // The rules that can matter: instances of theirs are connected with the goal.
  const std::vector<RuleId>& rules() const { return rules_; }

  // Every set of fewest further rules that reaches the goal, in the order of the rules, at most `most_rules` in each and
  // `most_sets` of them. Sets found by cuts: rules of which each set needs one.
  std::vector<std::vector<RuleId>> smallest_additions(const std::vector<bool>& allowed, std::size_t most_rules,
                                                      std::size_t most_sets, const Budget& budget);

 private:
  SearchProblem problem_;
  std::vector<RuleId> rule_of_;  // by candidate; behind these come the further forms
  std::vector<int> given_of_;    // by candidate: the given that it is, or −1
  std::vector<RuleId> rules_;
  std::optional<FlatProblem> flat_;
  std::optional<Closure> closure_;
};

}  // namespace prover
