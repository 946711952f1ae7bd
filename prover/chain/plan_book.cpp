#include "prover/chain/plan_book.hpp"

#include <map>
#include <mutex>

namespace prover {

PlanBook::PlanBook(const Catalogue& catalogue) {
  for (const Rule& rule : catalogue.rules) {
    RulePlans plans;
    if (!rule.builtin && !rule.then.empty()) {
      MatchPlan plan = make_plan(rule);
      if (plan.fact_phrases.empty() || plan.two_triangles)
        plans.plans.push_back(std::move(plan));
      else
        for (const int f : plan.fact_phrases) plans.plans.push_back(make_plan(rule, f));
    }
    rules_.push_back(std::move(plans));
  }
}

std::shared_ptr<const PlanBook> PlanBook::of(const Catalogue& catalogue) {
  if (catalogue.serial == 0) return std::make_shared<const PlanBook>(catalogue);
  constexpr std::size_t most_kept = 8;
  static std::mutex guard;
  static std::map<std::uint64_t, std::shared_ptr<const PlanBook>> kept;
  const std::lock_guard lock(guard);
  auto& book = kept[catalogue.serial];
  if (!book) {
    book = std::make_shared<const PlanBook>(catalogue);
    if (kept.size() > most_kept && kept.begin()->first != catalogue.serial) kept.erase(kept.begin());
  }
  return kept[catalogue.serial];
}

}  // namespace prover
