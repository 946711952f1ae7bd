#include "prover/marking/scheme.hpp"

#include <algorithm>

#include "prover/marking/scheme_plan.hpp"
#include "prover/marking/scheme_words.hpp"

namespace prover {

namespace {

// From plans to marks: one place knows which code stands for what.
class SchemeWriter {
 public:
  SchemeWriter(const AnswerProof& way, const Catalogue& catalogue, const SchemePlan& plan, Scheme& scheme)
      : way_(way), catalogue_(catalogue), plan_(plan), scheme_(scheme) {}

  void write() {
    for (const RowPlan& row : plan_.rows) write_row(row);
    write_overall_reasons();
    for (const SchemeMark& mark : scheme_.marks) scheme_.total += mark.marks;
  }

 private:
  const AnswerStep& step(int n) const { return way_.steps[static_cast<std::size_t>(n) - 1]; }

  std::vector<std::vector<int>> groups(const RowPlan& row) const {
    std::vector<std::vector<int>> result;
    for (const int n : row.steps)
      if (plan_.has_reason(n)) result.push_back(plan_.like(n));
    return result;
  }

  void add(SchemeRow& row, const MarkCode& code, MarkFor earned_by, std::vector<int> states, std::vector<std::vector<int>> reasons,
           std::vector<std::size_t> needs = {}) {
    row.marks.push_back(scheme_.marks.size());
    scheme_.marks.push_back({code.code, code.marks, earned_by, std::move(states), std::move(reasons), false, std::move(needs)});
  }

  void write_row(const RowPlan& plan) {
    SchemeRow row;
    row.steps = plan.steps;
    for (const int n : plan.steps) {
      row.statement += (row.statement.empty() ? "" : "; ") + short_statement(step(n));
      if (!plan_.has_reason(n) || !(plan.reason || scheme_.policy.reasons == ReasonMarks::overall)) continue;
      row.reason += (row.reason.empty() ? "" : "; ") + short_reason(step(n));
      if (const auto rule = catalogue_.find(step(n).rule)) {
        const std::vector<std::string> words = other_words(step(n), catalogue_[*rule]);
        row.other_words.insert(row.other_words.end(), words.begin(), words.end());
        if (plan.steps.size() == 1) row.other_routes = other_routes(catalogue_[*rule], catalogue_);
      }
    }
    if (plan.statement) write_marks(plan, row);
    scheme_.rows.push_back(std::move(row));
  }

  void write_marks(const RowPlan& plan, SchemeRow& row) {
    const SchemePolicy& policy = scheme_.policy;
    const bool each = policy.reasons == ReasonMarks::each || plan_.reasons_each;
    MarkFor earned_by = plan.kind;
    const MarkCode* code = &policy.statement;
    switch (plan.kind) {
      case MarkFor::fact: code = &policy.fact; break;
      case MarkFor::answer: code = &policy.answer; break;
      case MarkFor::conclusion: code = &policy.conclusion; break;
      case MarkFor::construction: code = &policy.construction; break;
      case MarkFor::statement:
      case MarkFor::reason:
      case MarkFor::both: break;
    }
    if (plan.reason && plan.together) {
      // The answer stays the answer: it is not carried like a step on the way.
      add(row, policy.both, earned_by == MarkFor::answer ? earned_by : MarkFor::both, plan.steps, groups(plan));
      return;
    }
    std::vector<std::size_t> needs;
    if (plan.method && (earned_by == MarkFor::answer || earned_by == MarkFor::conclusion)) {
      add(row, policy.statement, MarkFor::statement, plan.steps, {});
      needs.push_back(scheme_.marks.size() - 1);
    }
    if (policy.marks_methods() && (earned_by == MarkFor::answer || earned_by == MarkFor::conclusion))
      for (std::size_t i = 0; i < scheme_.marks.size(); ++i)
        if (scheme_.marks[i].earned_by == MarkFor::statement && !std::count(needs.begin(), needs.end(), i)) needs.push_back(i);
    add(row, *code, earned_by, plan.steps, {}, needs);
    if (plan.reason && each) add(row, policy.reason, MarkFor::reason, {}, groups(plan), {scheme_.marks.size() - 1});
  }

  // One mark for a reason, one more for all; only one mark: for all.
  void write_overall_reasons() {
    if (scheme_.policy.reasons == ReasonMarks::each || plan_.reasons_each || plan_.overall == 0) return;
    std::vector<std::vector<int>> all;
    for (std::size_t i = 0; i < way_.steps.size(); ++i) {
      const int n = static_cast<int>(i) + 1;
      if (plan_.has_reason(n) && plan_.counts(n) && plan_.like(n).front() == n) all.push_back(plan_.like(n));
    }
    if (all.empty()) return;
    SchemeRow row;
    const MarkCode& code = scheme_.policy.reason;
    if (plan_.overall > 1) {
      row.statement = "a reason given";
      add(row, code, MarkFor::reason, {}, all);
      scheme_.marks.back().any_reason = true;
      scheme_.rows.push_back(row);
      row = {};
    }
    row.statement = all.size() > 1 ? "all reasons given" : "the reason given";
    add(row, code, MarkFor::reason, {}, all);
    if (plan_.overall > 1) scheme_.marks.back().needs = {scheme_.marks.size() - 2};
    scheme_.rows.push_back(row);
  }

  const AnswerProof& way_;
  const Catalogue& catalogue_;
  const SchemePlan& plan_;
  Scheme& scheme_;
};

Scheme written(const AnswerProof& way, const Catalogue& catalogue, const SchemePlan& plan, const SchemePolicy& policy,
               const SchemeRequest& request) {
  Scheme scheme;
  scheme.policy = policy;
  scheme.finds = request.finds;
  scheme.reasons_asked = request.reasons_asked;
  SchemeWriter(way, catalogue, plan, scheme).write();
  return scheme;
}

}  // namespace

Scheme scheme_of(const AnswerProof& way, const Catalogue& catalogue, const SchemePolicy& policy, const SchemeRequest& request) {
  SchemePlan plan(way, catalogue, policy, request.finds);
  Scheme scheme = written(way, catalogue, plan, policy, request);
  if (!request.total) return scheme;
  const int wanted = *request.total;
  while (scheme.total < wanted && plan.spread()) scheme = written(way, catalogue, plan, policy, request);
  while (scheme.total > wanted && plan.gather()) scheme = written(way, catalogue, plan, policy, request);
  if (scheme.total != wanted)
    scheme.note = "The question gives " + std::to_string(wanted) + (wanted == 1 ? " mark" : " marks") + "; by this scheme this way earns " +
                  std::to_string(scheme.total) + (scheme.total < wanted ? " at most." : " at least.");
  return scheme;
}

std::string codes_of(const SchemeRow& row, const Scheme& scheme) {
  std::string text;
  for (const std::size_t i : row.marks) {
    const SchemeMark& mark = scheme.marks[i];
    text += (text.empty() ? "" : " ") + mark.code;
    if (mark.marks > 1 || scheme.policy.marks_methods()) text += std::to_string(mark.marks);
  }
  return text;
}

std::string text_of(const SchemeRow& row, const Scheme& scheme) {
  const std::string codes = codes_of(row, scheme);
  return (codes.empty() ? "" : codes + " ") + row.statement + (row.reason.empty() ? "" : " (" + row.reason + ")");
}

}  // namespace prover
