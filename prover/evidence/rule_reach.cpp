#include "prover/evidence/rule_reach.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "prover/proof/proof_graph.hpp"

namespace prover {

RuleReach::RuleReach(const Attempt& full, const std::vector<Form>& further) {
  for (const GoalForms& goal : full.workings->goals) problem_.goal.insert(problem_.goal.end(), goal.forms.begin(), goal.forms.end());
  const std::vector<Instance>& instances = full.workings->saturation.instances;
  std::set<RuleId> rules;
  for (const int i : ProofGraph(instances).relevant_to(problem_.goal)) {
    const Instance& instance = instances[static_cast<std::size_t>(i)];
    problem_.candidates.push_back({instance.premises, instance.conclusions, 1});
    rule_of_.push_back(instance.rule);
    given_of_.push_back(instance.hypothesis);
    rules.insert(instance.rule);
  }
  for (const Form& form : further) problem_.candidates.push_back({{}, {form}, 1});
  rules_.assign(rules.begin(), rules.end());
  flat_.emplace(problem_);
  closure_.emplace(*flat_);
}

bool RuleReach::reaches(const std::vector<bool>& allowed) {
  closure_->clear();
  for (std::size_t i = 0; i < rule_of_.size() && !closure_->reached(); ++i)
    if (allowed[rule_of_[i].index()]) closure_->add(static_cast<int>(i));
  return closure_->reached();
}

bool RuleReach::reaches_when_told(const std::vector<bool>& allowed, std::size_t further, int without_given) {
  closure_->clear();
  closure_->add(static_cast<int>(rule_of_.size() + further));
  for (std::size_t i = 0; i < rule_of_.size() && !closure_->reached(); ++i)
    if (allowed[rule_of_[i].index()] && (without_given < 0 || given_of_[i] != without_given)) closure_->add(static_cast<int>(i));
  return closure_->reached();
}

std::vector<std::vector<RuleId>> RuleReach::smallest_additions(const std::vector<bool>& allowed, std::size_t most_rules,
                                                               std::size_t most_sets, const Budget& budget) {
  std::vector<RuleId> further;
  for (const RuleId rule : rules_)
    if (!allowed[rule.index()]) further.push_back(rule);
  const auto with = [&](const std::vector<RuleId>& more) {
    std::vector<bool> all = allowed;
    for (const RuleId rule : more) all[rule.index()] = true;
    return all;
  };
  std::vector<std::vector<RuleId>> found;
  if (!reaches(with(further))) return found;
  std::vector<std::vector<RuleId>> cuts;
  // From a set that does not reach the goal to a largest one: what is left out is a cut.
  const auto cut_beside = [&](const std::vector<RuleId>& chosen) {
    std::vector<bool> inside = with(chosen);
    std::vector<RuleId> outside;
    for (const RuleId rule : further) {
      if (inside[rule.index()]) continue;
      inside[rule.index()] = true;
      if (!reaches(inside)) continue;
      inside[rule.index()] = false;
      outside.push_back(rule);
    }
    return outside;
  };
  std::set<std::vector<RuleId>> tried;
  for (std::size_t size = 1; size <= most_rules && found.empty(); ++size) {
    // All sets of this size that hit every cut known; a set that misses adds a cut, and the walk goes on with it.
    std::function<void(std::vector<RuleId>)> walk = [&](std::vector<RuleId> chosen) {
      if (budget.exhausted() || found.size() >= most_sets) return;
      const auto open = std::find_if(cuts.begin(), cuts.end(), [&](const std::vector<RuleId>& cut) {
        return std::none_of(cut.begin(), cut.end(),
                            [&](RuleId rule) { return std::find(chosen.begin(), chosen.end(), rule) != chosen.end(); });
      });
      if (open == cuts.end()) {
        std::sort(chosen.begin(), chosen.end());
        if (!tried.insert(chosen).second) return;
        if (reaches(with(chosen))) {
          if (std::find(found.begin(), found.end(), chosen) == found.end()) found.push_back(chosen);
          return;
        }
        cuts.push_back(cut_beside(chosen));
        if (chosen.size() < size) walk(chosen);
        return;
      }
      if (chosen.size() >= size) return;
      const std::vector<RuleId> cut = *open;
      for (const RuleId rule : cut) {
        std::vector<RuleId> more = chosen;
        more.push_back(rule);
        walk(std::move(more));
      }
    };
    walk({});
  }
  std::sort(found.begin(), found.end());
  return found;
}

}  // namespace prover
