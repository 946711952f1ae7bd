#include "benchmarks/search/cross_check.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "benchmarks/search/brute_force.hpp"
#include "benchmarks/search/child.hpp"
#include "benchmarks/search/peers.hpp"
#include "benchmarks/search/random_problem.hpp"
#include "prover/search/lightest_set.hpp"

namespace prover {

namespace {

std::vector<int> sorted(std::vector<int> members) {
  std::sort(members.begin(), members.end());
  return members;
}

// Members that cost something. Weightless ones are always at hand, so sets that differ in them alone count as one, and
// what is not needed when all of them are there is no further set.
std::vector<int> dear(const SearchProblem& problem, std::vector<int> members) {
  std::erase_if(members, [&](int i) { return problem.candidates[static_cast<std::size_t>(i)].weight == 0; });
  std::sort(members.begin(), members.end());
  return members;
}

std::set<std::vector<int>> minimal_dear(const SearchProblem& problem, const std::vector<MinimalSet>& all) {
  std::set<std::vector<int>> different, minimal;
  for (const MinimalSet& set : all) different.insert(dear(problem, set.members));
  for (const auto& set : different) {
    const bool contains_another = std::any_of(different.begin(), different.end(), [&](const auto& other) {
      return other != set && std::includes(set.begin(), set.end(), other.begin(), other.end());
    });
    if (!contains_another) minimal.insert(set);
  }
  return minimal;
}

// What is wrong with the list, or nothing.
std::string fault_of(const SearchProblem& problem, const LightSets& ours, const std::vector<MinimalSet>& all) {
  std::set<std::vector<int>> listed, minimal;
  for (const MinimalSet& set : all) minimal.insert(set.members);
  for (const LightSet& set : ours.sets) {
    if (!listed.insert(dear(problem, set.members)).second) return "a set is listed twice";
    if (minimal.count(sorted(set.members)) == 0) return "a listed set is not minimal";
  }
  if (ours.stop != StopReason::saturated) return fmt::format("the list stops: {}", name_of(ours.stop));
  if (const auto expected = minimal_dear(problem, all); listed != expected)
    return fmt::format("{} sets are listed, {} by brute force", listed.size(), expected.size());
  return "";
}

}  // namespace

int cross_check(int problems) {
  const bool with_cbc = is_installed("cbc");
  if (!with_cbc) fmt::print("cbc is not installed: compared with brute force only\n");
  int wrong = 0, flat = 0, sets = 0;
  for (int i = 0; i < 2 * problems; ++i) {
    const bool nested = i % 2 == 1;
    const SearchInstance instance = random_problem(static_cast<std::uint64_t>(i / 2), nested);
    const auto all = all_minimal_sets(instance.problem);
    sets += static_cast<int>(all.size());
    std::string fault;
    SearchLimits limits;
    limits.budget = Budget::seconds(10);
    const auto light = lightest_set(instance.problem, limits);
    if (!light || all.empty() || light->weight != all[0].weight || !light->proved_lightest ||
        light->lower_bound != light->weight)
      fault = fmt::format("lightest {} and {} by brute force", light ? std::to_string(light->weight) : "none",
                          all.empty() ? "none" : std::to_string(all[0].weight));
    else if (std::none_of(all.begin(), all.end(), [&](const auto& set) { return set.members == sorted(light->members); }))
      fault = "the lightest set is not minimal";
    if (fault.empty()) {
      SeveralLimits several;
      several.search = limits;
      several.most_sets = 5000;
      fault = fault_of(instance.problem, lightest_sets(instance.problem, several), all);
    }
    if (const auto columns = with_cbc && !nested && light ? columns_of(instance) : std::nullopt) {
      ++flat;
      const PeerRun cbc = cbc_optimum({instance, *columns, multipliers_of(instance, light->members), 10, 0});
      if (cbc.state != PeerState::solved || cbc.answer != light->weight)
        fault += fmt::format(" lightest {} and {} by CBC", light->weight, cbc.answer);
    }
    if (fault.empty()) continue;
    ++wrong;
    fmt::print("{}: {}\n", instance.name, fault);
  }
  fmt::print("{} random problems with {} minimal sets: compared with brute force, {} of them with CBC; {} differ\n",
             2 * problems, sets, flat, wrong);
  return wrong;
}

}  // namespace prover
