#include "prover/library/prove_library.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <set>

#include "prover/base/log.hpp"
#include "prover/chain/match_plan.hpp"
#include "prover/library/coverage.hpp"
#include "prover/library/theorem.hpp"
#include "prover/verdict/answer_of.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

namespace {

// Definitions of words need no place before they are used; everything else must stand earlier in the course.
std::vector<bool> allowed_before(const Catalogue& catalogue, const Course& course, std::size_t place) {
  std::vector<bool> allowed(catalogue.rules.size(), false);
  for (std::size_t i = 0; i < place; ++i) allowed[course.entries[i].rule.index()] = true;
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    if (rule.meaning || rule.builtin == Builtin::given) allowed[i] = true;
  }
  return allowed;
}

struct CaseResult {
  std::vector<AnswerProof> proofs;
  std::string why_not;
};

CaseResult prove_case(const TheoremCase& one, const AttemptOptions& options, const std::vector<bool>& names_line,
                      const Budget& budget) {
  CaseResult result;
  StageTimes times;
  double sketch_ms = 0;
  const Solved solved = solve(one.statement, options, budget, times, sketch_ms);
  if (!solved.added.objection.empty()) {
    result.why_not = solved.added.objection;
    return result;
  }
  if (!solved.added.provided.empty()) {
    result.why_not = "the lines drawn need not meet: they do if " + solved.added.provided[0];
    return result;
  }
  Answer answer;
  fill_answer({one.statement}, {solved}, options, answer);
  if (answer.verdict == Verdict::contradictory) {
    result.proofs = std::move(answer.proofs);  // the case cannot be: that is its proof
    return result;
  }
  if (answer.verdict != Verdict::proved) {
    result.why_not = answer.summary;
    return result;
  }
  for (const SolvedCase& arrangement : solved.cases)
    for (const auto& goal : arrangement.attempt.goals)
      if (goal)
        if (const std::string boundary = open_boundary(goal->proof, one.statement, names_line, budget); !boundary.empty())
          result.why_not = "not proved where " + boundary;
  result.proofs = std::move(answer.proofs);
  return result;
}

TheoremReport prove_theorem(const Catalogue& catalogue, const Course& course, std::size_t place,
                            const LibraryOptions& options) {
  TheoremReport report;
  report.rule = course.entries[place].rule;
  const Rule& rule = catalogue[report.rule];
  if (course.entries[place].taken || rule.meaning) {
    report.status = TheoremStatus::taken;
    return report;
  }
  const Theorem theorem = theorem_of(rule);
  if (!theorem.mistakes.empty()) {
    report.why_not = "its file: " + theorem.mistakes[0].message;
    return report;
  }
  const AttemptOptions attempt{catalogue, allowed_before(catalogue, course, place), Measure::classroom, options.wording, false};
  const std::vector<bool> names_line = rule.builtin ? std::vector<bool>() : make_plan(rule).names_line;
  if (const AddedLines drawn = examine_added_lines(theorem.common, options.budget); !drawn.objection.empty()) {
    report.why_not = drawn.objection;
    return report;
  } else if (!drawn.provided.empty()) {
    report.why_not = "the lines drawn need not meet: they do if " + drawn.provided[0];
    return report;
  }
  std::set<RuleId> cites;
  for (const TheoremCase& one : theorem.cases) {
    CaseResult result = prove_case(one, attempt, names_line, options.budget);
    if (!result.why_not.empty() && report.why_not.empty())
      report.why_not = (one.name.empty() ? "" : one.name + ": ") + result.why_not;
    for (AnswerProof& proof : result.proofs) {
      if (!one.name.empty()) proof.case_name = one.name + (proof.case_name.empty() ? "" : "; " + proof.case_name);
      report.steps += proof.steps.size();
      for (const std::string& id : proof.rules)
        if (const auto cited = catalogue.find(id)) cites.insert(*cited);
      report.proofs.push_back(std::move(proof));
    }
  }
  if (theorem.cases.empty()) report.why_not = "it has no example to prove";
  if (report.why_not.empty() && !theorem.by_examples) {
    const std::string gap = uncovered_figure(theorem, options.budget);
    if (!gap.empty()) report.why_not = "no case covers " + gap;
  }
  report.cites.assign(cites.begin(), cites.end());
  if (report.why_not.empty()) report.status = theorem.by_examples ? TheoremStatus::by_examples : TheoremStatus::proved;
  log::info("{}: {}", rule.id, report.why_not.empty() ? name_of(report.status) : report.why_not);
  return report;
}

}  // namespace

const char* name_of(TheoremStatus status) {
  switch (status) {
    case TheoremStatus::taken: return "taken";
    case TheoremStatus::proved: return "proved";
    case TheoremStatus::by_examples: return "examples proved";
    case TheoremStatus::not_proved: return "not proved";
  }
  return "";
}

std::vector<TheoremReport> prove_library(const Catalogue& catalogue, const Course& course, const LibraryOptions& options) {
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < course.entries.size(); ++i)
    if (options.only.empty() ||
        std::find(options.only.begin(), options.only.end(), course.entries[i].rule) != options.only.end())
      places.push_back(i);
  std::vector<TheoremReport> reports(places.size());
  tbb::parallel_for(std::size_t{0}, places.size(),
                    [&](std::size_t i) { reports[i] = prove_theorem(catalogue, course, places[i], options); });
  return reports;
}

}  // namespace prover
