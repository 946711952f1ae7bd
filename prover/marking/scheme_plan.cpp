#include "prover/marking/scheme_plan.hpp"

#include <algorithm>

#include "prover/marking/scheme_words.hpp"
#include "prover/rule/ideas.hpp"

namespace prover {

SchemePlan::SchemePlan(const AnswerProof& way, const Catalogue& catalogue, const SchemePolicy& policy, bool finds) : policy_(policy) {
  for (const AnswerStep& step : way.steps) plan_step(step, catalogue, finds);
  waive_sum_of_answer(way, catalogue);
  if (rows.empty()) return;
  const auto earlier = std::count_if(rows.begin(), rows.end() - 1, [](const RowPlan& r) { return r.statement; });
  if (policy_.marks_methods() && earlier == 0) rows.back().method = true;
  int groups = 0;
  for (const RowPlan& row : rows) groups += has_reason(row.steps[0]) && counts(row.steps[0]) && like(row.steps[0]).front() == row.steps[0];
  overall = std::min(2, groups);
}

void SchemePlan::plan_step(const AnswerStep& step, const Catalogue& catalogue, bool finds) {
  RowPlan row;
  row.steps = {static_cast<int>(keys_.size()) + 1};
  const auto found = catalogue.find(step.rule);
  const Rule* rule = found ? &catalogue[*found] : nullptr;
  const bool construction = rule != nullptr && rule->kind == RuleKind::construction;
  const bool algebra = rule == nullptr || rule->meaning;
  const bool definition = !algebra && (rule->free_step || rule->kind == RuleKind::definition || rule->kind == RuleKind::hypothesis);
  const bool reasoned = !construction && (!algebra || (policy_.algebra_reason == Need::needed && !step.reason.empty()));
  std::string key;
  if (reasoned) key = rule == nullptr ? step.rule : rule->family.empty() ? rule->id : rule->family;
  const bool again = !key.empty() && std::count(keys_.begin(), keys_.end(), key) > 0;
  keys_.push_back(key);

  row.slight = algebra || definition;
  if (construction)
    row.kind = MarkFor::construction;
  else if (step.closing && finds)
    row.kind = MarkFor::answer;
  else if (step.closing && (algebra || policy_.marks_methods()))
    row.kind = MarkFor::conclusion;
  else if (policy_.marks_methods() && step.uses.empty())
    row.kind = MarkFor::fact;
  row.reason = reasoned && (!again || policy_.repeated_reason == Repeated::each_time);
  if (!step.closing && !construction) {
    const bool unmarked = step.rule == "let" || (algebra && !gives_value(step)) || (definition && policy_.definitions == Rows::unmarked);
    if (definition && policy_.definitions == Rows::unmarked) row.reason = false;
    // A number that is worked out on the way is a statement, however small the step.
    row.statement = !unmarked || (definition && gives_value(step));
  }
  row.together = row.reason && policy_.award == Award::together;
  rows.push_back(row);
}

// The line with the answer is told by its numbers where it only adds up, if something else has asked for a reason.
void SchemePlan::waive_sum_of_answer(const AnswerProof& way, const Catalogue& catalogue) {
  if (policy_.answer_reason == AnswerReason::asked || rows.empty() || rows.back().kind != MarkFor::answer) return;
  const auto rule = catalogue.find(way.steps.back().rule);
  const bool sum = rule && idea_table().role(catalogue[*rule]) != IdeaRole::carries;
  const bool others = std::any_of(rows.begin(), rows.end() - 1, [](const RowPlan& row) { return row.reason; });
  if (sum && others) rows.back().reason = rows.back().together = false;
}

bool SchemePlan::counts(int step) const {
  for (const RowPlan& row : rows)
    if (std::count(row.steps.begin(), row.steps.end(), step)) return row.statement || !row.slight;
  return false;
}

std::vector<int> SchemePlan::like(int step) const {
  std::vector<int> same;
  for (std::size_t i = 0; i < keys_.size(); ++i)
    if (keys_[i] == keys_[index(step)] && (policy_.repeated_reason == Repeated::once || i == index(step)))
      same.push_back(static_cast<int>(i) + 1);
  return same;
}

bool SchemePlan::spread() {
  for (RowPlan& row : rows)
    if (row.statement && row.reason && row.together) {
      row.together = false;
      return true;
    }
  if (policy_.reasons == ReasonMarks::overall && !reasons_each) {
    const auto reasons = std::count_if(rows.begin(), rows.end(), [](const RowPlan& r) { return r.statement && r.reason; });
    if (reasons > overall) return reasons_each = true;
  }
  if (policy_.marks_methods() && !rows.empty() && !rows.back().method && !rows.back().slight) return rows.back().method = true;
  for (auto row = rows.rbegin(); row != rows.rend(); ++row)
    if (row->statement && !row->reason && !row->slight && has_reason(row->steps[0]) &&
        (policy_.reasons == ReasonMarks::each || reasons_each))
      return row->reason = true;
  for (RowPlan& row : rows)
    if (!row.statement) return row.statement = true;
  return false;
}

bool SchemePlan::gather() {
  if (policy_.award == Award::apart && policy_.both.code.empty()) {
    if (reasons_each) {
      reasons_each = false;
      return true;
    }
    if (overall > 1) {
      overall = 1;
      return true;
    }
  } else {
    for (auto row = rows.rbegin(); row != rows.rend(); ++row)
      if (row->statement && row->reason && !row->together) return row->together = true;
  }
  if (!rows.empty() && rows.back().method && policy_.marks_methods() && rows.size() > 1) {
    rows.back().method = false;
    return true;
  }
  for (std::size_t i = 0; i + 1 < rows.size(); ++i)
    if (rows[i].statement && rows[i].slight && !rows[i].reason) {
      rows[i].statement = false;
      return true;
    }
  // Two rows become one: first those on the way, at last the line with the answer.
  std::vector<std::size_t> marked;
  for (std::size_t i = 0; i < rows.size(); ++i)
    if (rows[i].statement) marked.push_back(i);
  if (marked.size() > 1) {
    RowPlan& first = rows[marked[0]];
    RowPlan& second = rows[marked[1]];
    second.steps.insert(second.steps.begin(), first.steps.begin(), first.steps.end());
    second.reason = second.reason || first.reason;
    second.together = second.reason && !policy_.both.code.empty();
    second.slight = false;
    rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(marked[0]));
    return true;
  }
  if (policy_.reasons == ReasonMarks::overall && overall > 0 && marked.size() == 1) {
    overall = 0;
    return true;
  }
  return false;
}

}  // namespace prover
