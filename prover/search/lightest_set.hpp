// The lightest set of candidates that gives the goal, and the next ones, by weight. Only minimal sets are reported:
// without any one member the goal is lost.
#pragma once
#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/search/search_problem.hpp"

namespace prover {

struct LightSet {
  std::vector<int> members;      // indices into the problem's candidates, in an order in which premises come first
  std::int64_t weight = 0;
  std::int64_t lower_bound = 0;  // no proof set is lighter than this
  bool proved_lightest = false;
};

// What stands behind "none is lighter": a subspace of forms that misses a goal, so that every proof set has one of
// `members` – the candidates whose premises lie inside and of whose conclusions one does not. A form lies inside when
// its product with each dual (unknown by unknown, and constant by constant) is zero. The lightest set that hits all
// these cuts weighs as much as the lightest proof set.
struct CutCertificate {
  std::vector<int> members;
  std::vector<Form> duals;
};

struct SearchLimits {
  Budget budget;
  // Called with each better set as it is found, the first included: for whoever wants to show the best so far.
  std::function<void(const LightSet&)> on_better;
  std::vector<CutCertificate>* certificate = nullptr;  // filled when given
};

// Nothing when the goal does not follow from all candidates.
std::optional<LightSet> lightest_set(const SearchProblem& problem, const SearchLimits& limits);

struct SeveralLimits {
  SearchLimits search;
  std::size_t most_sets = 1000;
  std::int64_t heaviest = std::numeric_limits<std::int64_t>::max();
  bool only_lightest = false;          // those of least weight
};
// Sets that differ in members without weight only count as one.
struct LightSets {
  std::vector<LightSet> sets;          // minimal, each once, lightest first; among equals in a fixed order
  std::int64_t complete_below = 0;     // every minimal set lighter than this is among `sets`
  StopReason stop = StopReason::none;  // why there may be more: a limit; `saturated` when there are no others at all
};
// Whatever the limit, there is at least one set when the goal follows and `heaviest` allows it.
LightSets lightest_sets(const SearchProblem& problem, const SeveralLimits& limits);

}  // namespace prover
