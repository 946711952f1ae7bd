// Forward chaining: from the givens of a statement, apply rules wherever they fit until nothing is new, a limit
// is hit, or (where asked) the goal is reached. What comes out is every rule instance that fires, with all
// derivations of a fact kept, and the closed linear system.
//
// Rules whose places depend on the figure alone are matched once; their instances wait until their premises
// follow. Rules that rest on facts (parallel lines, kinds of polygon) are matched against new facts only. Pairs
// of triangles meet through hashes of the normal forms of their parts.
#pragma once
#include <vector>

#include "prover/algebra/linear_system.hpp"
#include "prover/base/budget.hpp"
#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"
#include "prover/rule/instance.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

struct Saturation {
  std::vector<Instance> instances;  // those that fire, in an order in which premises come first
  LinearSystem closure;
  StopReason stop = StopReason::none;
  bool contradictory = false;       // the conclusions exclude each other, or force an angle out of 0° … 180°
  bool zero_is_one = false;          // the equations alone conflict
  std::vector<Form> impossible;  // each alone: a value that no angle or length can have, or a sum that cannot be 0
  int rounds = 0;
  std::size_t matches = 0;          // instances tried
  std::size_t tried = 0;            // steps of match plans: what looking for places of rules with a pattern has cost
};

struct ChainOptions {
  std::vector<bool> allowed;        // by RuleId
  bool stop_at_goal = false;
  bool inequalities = false;        // also those of the text and the rules about them (chain/inequalities.hpp)
  std::size_t most_tried = static_cast<std::size_t>(-1);  // steps of matching for one rule, to measure what it costs
};

Saturation saturate(const Statement& statement, const Arrangement& arrangement, const Catalogue& catalogue,
                    UnknownTable& unknowns, const std::vector<Form>& goal, const ChainOptions& options,
                    const Budget& budget);

}  // namespace prover
