// The proofs of one idea: its carrying facts said by one theorem or another, with the lightest small change for each.
#pragma once
#include <set>
#include <vector>

#include "prover/search/lightest_set.hpp"
#include "prover/ways/carrying.hpp"

namespace prover {

struct Variant {
  LightSet light;          // members are candidates of the goal search
  std::set<RuleId> cited;  // the carrying theorems in it
};

// The lightest proof of the idea; nothing only when time is over before there is one.
std::optional<Variant> lightest_variant(const std::vector<int>& facts, const CarryingProblem& carrying,
                                        const GoalSearch& search, const Catalogue& catalogue, const Budget& budget);

// One for each choice of carrying theorems, the lightest first. A mixture of theorems counts only where it is lighter than
// doing with fewer of them.
std::vector<Variant> variants(const std::vector<int>& facts, const CarryingProblem& carrying, const GoalSearch& search,
                              const Catalogue& catalogue, const Budget& budget);

}  // namespace prover
