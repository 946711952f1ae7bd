#include "prover/search/lightest_set.hpp"

#include <algorithm>

#include "prover/base/log.hpp"
#include "prover/search/branch_and_bound.hpp"
#include "prover/search/first_set.hpp"
#include "prover/search/minimal_set.hpp"

namespace prover {

namespace {

LightSet set_of(const FlatProblem& problem, const std::vector<int>& members) {
  LightSet set;
  set.members = members;
  for (const int i : members) set.weight += problem.weight(i);
  return set;
}

// Where machine words do not suffice: a light set without a bound.
std::optional<LightSet> unjudged(const SearchProblem& problem) {
  LightSet set;
  set.members = first_set(problem);
  if (set.members.empty()) return std::nullopt;
  for (const int i : set.members) set.weight += problem.candidates[static_cast<std::size_t>(i)].weight;
  return set;
}

}  // namespace

std::optional<LightSet> lightest_set(const SearchProblem& problem, const SearchLimits& limits) {
  try {
    const FlatProblem flat(problem);
    BranchAndBound search(flat, limits.budget, [&](const std::vector<int>& members, std::int64_t) {
      if (limits.on_better) limits.on_better(set_of(flat, firing_order(flat, members)));
    });
    search.minimise();
    if (!search.follows()) return std::nullopt;
    if (limits.certificate)
      for (const Cut& cut : search.certificate()) {
        CutCertificate one{cut.members, {}};
        std::sort(one.members.begin(), one.members.end());
        for (const Row& dual : cut.duals) one.duals.push_back(flat.form(dual));
        limits.certificate->push_back(std::move(one));
      }
    std::vector<int> best = search.best();
    if (best.empty() && search.stopped()) best = first_set(problem);
    LightSet set = set_of(flat, firing_order(flat, best));
    set.lower_bound = std::min(search.lower_bound(), set.weight);
    set.proved_lightest = set.lower_bound == set.weight;
    return set;
  } catch (const RowOverflow&) {
    log::info("search: coefficients outgrew machine words; the lightest set is not looked for");
    return unjudged(problem);
  }
}

LightSets lightest_sets(const SearchProblem& problem, const SeveralLimits& limits) {
  LightSets all;
  try {
    const FlatProblem flat(problem);
    BranchAndBound search(flat, limits.search.budget, [](const std::vector<int>&, std::int64_t) {});
    search.minimise();
    search.enumerate(limits.most_sets, limits.heaviest);
    for (const std::vector<int>& members : search.sets()) all.sets.push_back(set_of(flat, members));
    if (all.sets.empty() && !search.best().empty() && search.best_weight() <= limits.heaviest)
      all.sets.push_back(set_of(flat, firing_order(flat, search.best())));
    all.complete_below = search.complete_below();
    all.stop = search.exhausted()       ? StopReason::saturated
               : search.stopped()       ? limits.search.budget.reason()
                                        : StopReason::instance_limit;
    std::stable_sort(all.sets.begin(), all.sets.end(),
                     [](const LightSet& a, const LightSet& b) { return a.weight < b.weight; });
    for (LightSet& set : all.sets) {
      set.lower_bound = std::min(search.lower_bound(), set.weight);
      set.proved_lightest = set.lower_bound == set.weight;
    }
  } catch (const RowOverflow&) {
    log::info("search: coefficients outgrew machine words; other sets are not looked for");
    if (auto one = unjudged(problem)) all.sets.push_back(std::move(*one));
    all.stop = StopReason::instance_limit;
  }
  return all;
}

}  // namespace prover
