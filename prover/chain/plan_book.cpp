#include "prover/chain/plan_book.hpp"

#include <algorithm>
#include <map>
#include <mutex>

#include "prover/chain/inequalities.hpp"
#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

constexpr std::size_t kinds_of_fact = 32;  // bits of FactKinds
constexpr std::size_t kinds_of_shape = 32;

}  // namespace

PlanBook::PlanBook(const Catalogue& catalogue) : resting_on_(kinds_of_fact), shapes_(kinds_of_shape) {
  for (const Rule& rule : catalogue.rules) {
    const RuleId id(static_cast<std::int64_t>(rules_.size()));
    RulePlans& plans = rules_.emplace_back();
    if (rule.builtin) {
      RuleId& shape = shapes_[static_cast<std::size_t>(*rule.builtin)];
      if (!shape.valid()) shape = id;
      continue;
    }
    if (rule.then.empty() || speaks_of_inequalities(rule)) continue;
    MatchPlan plan = make_plan(rule);
    if (plan.two_triangles) {
      pair_rules_.push_back(id);
      plans.plans.push_back(std::move(plan));
    } else if (plan.fact_phrases.empty()) {
      figure_rules_.push_back(id);
      plans.plans.push_back(std::move(plan));
    } else {
      for (const int f : plan.fact_phrases) {
        const FactKind kind = *fact_kind_of(plan.conditions[static_cast<std::size_t>(f)]);
        if ((plans.kinds & only(kind)) == 0) resting_on_[static_cast<std::size_t>(kind)].push_back(id);
        plans.kinds |= only(kind);
        plans.plans.push_back(make_plan(rule, f));
      }
    }
    for (const MatchPlan& each : plans.plans) plans.programs.push_back(program_of(each, rule));
    plans.forms.emplace(plans.plans.front(), rule);
    std::vector<PointId> variables;
    for (std::size_t v = 0; v < rule.variables.points.size(); ++v) variables.emplace_back(static_cast<std::int64_t>(v));
    for (const Phrase& phrase : rule.where)
      for (const Position& position : positions_of(phrase, variables)) plans.where.push_back(position);
  }
}

std::vector<RuleId> PlanBook::fact_rules(FactKinds fresh, FactKinds known) const {
  std::vector<RuleId> rules;
  for (std::size_t kind = 0; kind < resting_on_.size(); ++kind) {
    if ((fresh >> kind & 1) == 0) continue;
    for (const RuleId rule : resting_on_[kind])
      if ((rules_[rule.index()].kinds & ~known) == 0) rules.push_back(rule);
  }
  std::sort(rules.begin(), rules.end());
  rules.erase(std::unique(rules.begin(), rules.end()), rules.end());
  return rules;
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
