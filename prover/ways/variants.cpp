#include "prover/ways/variants.hpp"

#include <algorithm>

namespace prover {

namespace {

constexpr std::size_t kMostChoices = 40;

RuleId rule_of(const GoalSearch& search, int candidate) {
  return search.instances[static_cast<std::size_t>(candidate)]->rule;
}

// The lightest proof among these candidates and the free ones.
std::optional<Variant> lightest_among(std::vector<int> candidates, const CarryingProblem& carrying,
                                      const GoalSearch& search, const Catalogue& catalogue, const Budget& budget) {
  candidates.insert(candidates.end(), carrying.free.begin(), carrying.free.end());
  std::sort(candidates.begin(), candidates.end());
  SearchProblem problem;
  problem.goal = search.problem.goal;
  for (const int c : candidates) problem.candidates.push_back(search.problem.candidates[static_cast<std::size_t>(c)]);
  auto light = lightest_set(problem, {budget, {}});
  if (!light) return std::nullopt;
  Variant variant{std::move(*light), {}};
  for (int& member : variant.light.members) {
    member = candidates[static_cast<std::size_t>(member)];
    const RuleId rule = rule_of(search, member);
    if (idea_table().role(catalogue[rule]) != IdeaRole::small_change) variant.cited.insert(rule);
  }
  return variant;
}

std::vector<int> members_of(const std::vector<int>& facts, const CarryingProblem& carrying) {
  std::vector<int> members;
  for (const int f : facts) {
    const auto& more = carrying.facts[static_cast<std::size_t>(f)].members;
    members.insert(members.end(), more.begin(), more.end());
  }
  return members;
}

}  // namespace

std::optional<Variant> lightest_variant(const std::vector<int>& facts, const CarryingProblem& carrying,
                                        const GoalSearch& search, const Catalogue& catalogue, const Budget& budget) {
  return lightest_among(members_of(facts, carrying), carrying, search, catalogue, budget);
}

std::vector<Variant> variants(const std::vector<int>& facts, const CarryingProblem& carrying, const GoalSearch& search,
                              const Catalogue& catalogue, const Budget& budget) {
  // Theorems among which there is a choice, and what each fact allows.
  std::vector<RuleId> choice;
  std::vector<std::set<RuleId>> allowed;
  for (const int f : facts) {
    std::set<RuleId> said_by;
    for (const int m : carrying.facts[static_cast<std::size_t>(f)].members) said_by.insert(rule_of(search, m));
    if (said_by.size() > 1)
      for (const RuleId r : said_by)
        if (std::find(choice.begin(), choice.end(), r) == choice.end()) choice.push_back(r);
    allowed.push_back(std::move(said_by));
  }
  std::sort(choice.begin(), choice.end());
  // Sets of theorems, small ones first, that leave every fact one that says it.
  std::vector<std::set<RuleId>> open{{}}, sets;
  for (std::size_t i = 0; i < open.size() && sets.size() < kMostChoices && i < 1000; ++i) {
    const std::set<RuleId> now = open[i];
    const bool covers = std::all_of(allowed.begin(), allowed.end(), [&](const std::set<RuleId>& said_by) {
      return said_by.size() == 1 ||
             std::any_of(said_by.begin(), said_by.end(), [&](RuleId r) { return now.contains(r); });
    });
    if (covers) sets.push_back(now);
    for (const RuleId r : choice)
      if (now.empty() || *now.rbegin() < r) {
        open.push_back(now);
        open.back().insert(r);
      }
  }
  std::vector<Variant> found;
  for (const std::set<RuleId>& set : sets) {
    if (budget.exhausted()) break;
    std::vector<int> members;
    for (const int m : members_of(facts, carrying)) {
      const RuleId r = rule_of(search, m);
      if (set.contains(r) || std::find(choice.begin(), choice.end(), r) == choice.end()) members.push_back(m);
    }
    auto variant = lightest_among(std::move(members), carrying, search, catalogue, budget);
    if (!variant) continue;
    const bool known = std::any_of(found.begin(), found.end(), [&](const Variant& v) { return v.cited == variant->cited; });
    if (!known) found.push_back(std::move(*variant));
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const Variant& a, const Variant& b) { return a.light.weight < b.light.weight; });
  return found;
}

}  // namespace prover
