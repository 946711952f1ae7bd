#include "prover/library/own_rules.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "prover/library/theorem.hpp"
#include "prover/verdict/answer_of.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

namespace {

// The default course, then the own rules up to and with this one.
Course course_with(const Catalogue& catalogue, RuleId rule) {
  Course course = default_course(catalogue);
  std::erase_if(course.entries, [&](const CourseEntry& e) { return catalogue[e.rule].assumed; });
  for (std::size_t i = 0; i <= rule.index(); ++i)
    if (catalogue.rules[i].assumed) course.entries.push_back({RuleId(static_cast<std::int64_t>(i)), false, {}});
  return course;
}

// The rule's own proof in the letters of the place where it is cited; nothing when it has several cases there, or when
// two of its letters stand for one point.
std::vector<AnswerStep> own_steps(const Catalogue& catalogue, RuleId rule, const std::vector<std::string>& places,
                                  Register wording, const Budget& budget) {
  Theorem theorem = theorem_of(catalogue[rule]);
  const std::set<std::string> different(places.begin(), places.end());
  if (theorem.cases.size() != 1 || different.size() != places.size() ||
      places.size() != catalogue[rule].variables.points.size())
    return {};
  TheoremCase& one = theorem.cases[0];
  rename_points(one, places);
  std::vector<bool> allowed(catalogue.rules.size(), true);
  for (std::size_t i = 0; i < allowed.size(); ++i) allowed[i] = !catalogue.rules[i].assumed || i < rule.index();
  StageTimes times;
  double sketch_ms = 0;
  const AttemptOptions options{catalogue, allowed, Measure::classroom, wording, false};
  Answer answer;
  fill_answer({one.statement}, {solve(one.statement, options, budget, times, sketch_ms)}, options, answer);
  if (answer.verdict != Verdict::proved || answer.proofs.size() != 1) return {};
  return answer.proofs[0].steps;
}

void splice(std::vector<AnswerStep>& steps, std::size_t at, std::vector<AnswerStep> inner) {
  const AnswerStep cited = steps[at];
  const int before = static_cast<int>(at), longer = static_cast<int>(inner.size()) - 1;
  for (AnswerStep& step : inner) {
    step.n += before;
    for (int& use : step.uses) use += before;
  }
  AnswerStep& last = inner.back();
  last.closing = cited.closing;
  last.claim = cited.claim;  // as it stood, so that what follows reads on
  last.rows = cited.rows;
  last.uses.insert(last.uses.begin(), cited.uses.begin(), cited.uses.end());
  steps.erase(steps.begin() + before);
  steps.insert(steps.begin() + before, inner.begin(), inner.end());
  for (std::size_t i = at + inner.size(); i < steps.size(); ++i) {
    steps[i].n += longer;
    for (int& use : steps[i].uses)
      if (use > before) use += longer;
  }
}

}  // namespace

TheoremReport prove_own_rule(const Catalogue& catalogue, RuleId rule, Register wording, const Budget& budget) {
  LibraryOptions options;
  options.wording = wording;
  options.budget = budget;
  options.only = {rule};
  auto reports = prove_library(catalogue, course_with(catalogue, rule), options);
  return reports.empty() ? TheoremReport{} : std::move(reports[0]);
}

void settle_own_rules(const Catalogue& catalogue, bool unfold, Register wording, const Budget& budget, AnswerProof& proof) {
  std::map<std::string, bool> proved;
  std::vector<std::string> open = proof.assumed;  // with the own rules that these rest on
  std::set<std::string> assumed;
  while (!open.empty()) {
    const std::string id = open.back();
    open.pop_back();
    if (proved.contains(id)) continue;
    const TheoremReport report = prove_own_rule(catalogue, *catalogue.find(id), wording, budget);
    proved[id] = report.status == TheoremStatus::proved;
    if (!proved[id]) assumed.insert(id);
    for (const RuleId cited : report.cites)
      if (proved[id] && catalogue[cited].assumed) open.push_back(catalogue[cited].id);
  }
  proof.assumed.assign(assumed.begin(), assumed.end());
  if (!unfold) return;
  for (std::size_t i = 0; i < proof.steps.size(); ++i) {
    const auto known = proved.find(proof.steps[i].rule);
    if (known == proved.end() || !known->second) continue;
    auto inner = own_steps(catalogue, *catalogue.find(known->first), proof.steps[i].places, wording, budget);
    if (!inner.empty()) splice(proof.steps, i, std::move(inner));
  }
}

}  // namespace prover
