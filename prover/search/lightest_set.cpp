#include "prover/search/lightest_set.hpp"

#include <algorithm>

#include "prover/base/log.hpp"
#include "prover/search/branch_and_bound.hpp"
#include "prover/search/derivation.hpp"
#include "prover/search/first_set.hpp"
#include "prover/search/minimal_set.hpp"
#include "prover/search/plain_first_set.hpp"

namespace prover {

namespace {

LightSet set_of(const FlatProblem& problem, const std::vector<int>& members) {
  LightSet set;
  set.members = members;
  for (const int i : members) set.weight += problem.weight(i);
  return set;
}

void judge(LightSet& set, const BranchAndBound& search) {
  set.lower_bound = std::min(search.lower_bound(), set.weight);
  set.proved_lightest = set.lower_bound == set.weight;
}

// Where machine words do not suffice: a light set without a bound.
std::optional<LightSet> unjudged(const SearchProblem& problem) {
  LightSet set;
  set.members = first_set(problem);
  if (set.members.empty() && !derive(problem, {}).reached) return std::nullopt;
  for (const int i : set.members) set.weight += problem.candidates[static_cast<std::size_t>(i)].weight;
  return set;
}

// The best set known; the search may have had no time to find one.
std::optional<LightSet> best_of(const BranchAndBound& search, const SearchProblem& problem, const FlatProblem& flat) {
  if (!search.follows()) return std::nullopt;
  if (search.best_weight() >= BranchAndBound::kInfinite) {
    if (!search.stopped()) return std::nullopt;
    return unjudged(problem);
  }
  LightSet set = set_of(flat, firing_order(flat, search.best()));
  judge(set, search);
  return set;
}

BranchAndBound::Options options_for(const SearchProblem& problem, const FlatProblem& flat, const SearchLimits& limits) {
  BranchAndBound::Options options;
  options.first = [&] { return is_plain(flat) ? plain_first_set(flat) : first_set(problem); };
  if (limits.on_better)
    options.on_better = [&](const std::vector<int>& members, std::int64_t) {
      limits.on_better(set_of(flat, firing_order(flat, members)));
    };
  options.with_certificate = limits.certificate != nullptr;
  return options;
}

}  // namespace

std::optional<LightSet> lightest_set(const SearchProblem& problem, const SearchLimits& limits) {
  try {
    const FlatProblem flat(problem);
    BranchAndBound search(flat, limits.budget, options_for(problem, flat, limits));
    search.minimise();
    for (const Cut& cut : search.certificate()) {
      CutCertificate one{cut.members, {}};
      std::sort(one.members.begin(), one.members.end());
      for (const Row& dual : cut.duals) one.duals.push_back(flat.form(dual));
      limits.certificate->push_back(std::move(one));
    }
    return best_of(search, problem, flat);
  } catch (const RowOverflow&) {
    log::info("search: coefficients outgrew machine words; the lightest set is not looked for");
    return unjudged(problem);
  }
}

LightSets lightest_sets(const SearchProblem& problem, const SeveralLimits& limits) {
  LightSets all;
  try {
    const FlatProblem flat(problem);
    BranchAndBound search(flat, limits.search.budget, options_for(problem, flat, limits.search));
    search.minimise();
    const auto best = best_of(search, problem, flat);
    if (best && !search.stopped())
      search.enumerate(limits.most_sets,
                       limits.only_lightest ? std::min(limits.heaviest, best->weight) : limits.heaviest);
    for (const std::vector<int>& members : search.sets()) all.sets.push_back(set_of(flat, members));
    if (all.sets.empty() && best && best->weight <= limits.heaviest) all.sets.push_back(*best);
    all.complete_below = best && !search.stopped() ? search.complete_below() : search.lower_bound();
    all.stop = !best || search.exhausted() ? StopReason::saturated
               : search.stopped()          ? limits.search.budget.reason()
                                           : StopReason::instance_limit;
    std::stable_sort(all.sets.begin(), all.sets.end(),
                     [](const LightSet& a, const LightSet& b) { return a.weight < b.weight; });
    for (LightSet& set : all.sets) judge(set, search);
  } catch (const RowOverflow&) {
    log::info("search: coefficients outgrew machine words; other sets are not looked for");
    if (auto one = unjudged(problem)) all.sets.push_back(std::move(*one));
    all.stop = StopReason::instance_limit;
  }
  return all;
}

}  // namespace prover
