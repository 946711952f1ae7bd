#include "frontend/command/worksheet_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "frontend/command/answer_page.hpp"
#include "prover/rule/course.hpp"

namespace frontend {

namespace {

using prover::Answer;
using prover::AnswerProof;
using prover::Verdict;

std::string in_plain_words(const Answer& answer) {
  switch (answer.verdict) {
    case Verdict::proved: return answer.value.empty() ? "true" : "solvable";
    case Verdict::false_claim: return "false";
    case Verdict::undetermined: return "not determined";
    case Verdict::contradictory: return "contradictory";
    case Verdict::depends_on_figure: return "several answers";
    case Verdict::beyond_rules: return "beyond what is taught";
    case Verdict::unknown: return "not decided";
  }
  return "";
}

std::string values_of(const Answer& answer) {
  if (!answer.value.empty()) return answer.value;
  std::vector<std::string> values;
  for (const prover::AnswerCase& one : answer.cases)
    if (!one.value.empty() && std::find(values.begin(), values.end(), one.value) == values.end()) values.push_back(one.value);
  std::string text;
  for (const std::string& value : values) text += (text.empty() ? "" : " or ") + value;
  return text;
}

// Lines with a reason, in the longest of the proofs shown.
std::string steps_of(const Answer& answer) {
  if (answer.verdict != Verdict::proved && answer.verdict != Verdict::depends_on_figure) return "";
  std::ptrdiff_t most = 0;
  for (const AnswerProof& proof : answer.proofs)
    most = std::max(most, std::count_if(proof.steps.begin(), proof.steps.end(),
                                        [](const prover::AnswerStep& step) { return !step.rule.empty(); }));
  return std::to_string(most);
}

// The chapter of the course after which a class can do it, with its last theorem needed.
std::string chapter_of(const Answer& answer, const prover::Catalogue& catalogue) {
  if (answer.verdict != Verdict::proved && answer.verdict != Verdict::depends_on_figure) return "";
  std::vector<prover::RuleId> cited;
  for (const AnswerProof& proof : answer.proofs)
    for (const std::string& id : proof.rules)
      if (const auto rule = catalogue.find(id); rule && !catalogue[*rule].meaning) cited.push_back(*rule);
  const auto needed = prover::chapter_needed(prover::default_course(catalogue), cited);
  if (!needed) return "";
  const std::string theorem = rule_titles({catalogue[needed->rule].id}, catalogue);
  return needed->chapter.empty() ? theorem : needed->chapter + ": " + theorem;
}

std::string listed(const std::vector<std::string>& items) {
  std::string text;
  for (std::string item : items) {
    if (item.ends_with('.')) item.pop_back();
    text += (text.empty() ? "" : "; ") + item;
  }
  return text;
}

// Worst first: what keeps the problem from being handed out, then what only wastes ink.
std::string remarks_of(const Answer& answer) {
  std::vector<std::string> remarks;
  bool cases_told = false;
  for (const auto& entry : answer.answer_book) {
    if (entry.outcome != "agrees") remarks.push_back(entry.text);
    cases_told |= entry.outcome == "one-case";
  }
  for (const prover::Diagnostic& d : answer.diagnostics)
    if (d.severity == prover::Severity::error) {
      remarks.push_back(d.message);
      break;
    }
  if (!answer.conflict.empty()) remarks.push_back("these exclude each other: " + listed(answer.conflict));
  const auto mended = std::find_if(answer.repair.begin(), answer.repair.end(), [](const auto& r) { return !r.instead.empty(); });
  if (mended != answer.repair.end()) remarks.push_back("for example, " + mended->text);
  if (answer.verdict == Verdict::depends_on_figure && !cases_told) {
    std::string cases;
    for (const auto& one : answer.cases)
      if (!one.value.empty()) cases += (cases.empty() ? "" : "; ") + one.value + " if " + one.name;
    if (!cases.empty()) remarks.push_back(cases);
  }
  if (!answer.missing.empty()) remarks.push_back("for example, " + answer.missing.front());
  if (!answer.unlock.empty() && answer.verdict != Verdict::proved) remarks.push_back(answer.unlock.front());
  if (answer.verdict == Verdict::unknown && remarks.empty()) remarks.push_back(answer.summary);
  if (answer.verdict == Verdict::proved) {
    std::vector<std::string> lines;
    for (const AnswerProof& proof : answer.proofs) lines.insert(lines.end(), proof.constructions.begin(), proof.constructions.end());
    if (!lines.empty()) remarks.push_back("lines to draw: " + listed(lines));
    if (answer.proofs.size() == 1 && !answer.proofs[0].givens_not_needed.empty())
      remarks.push_back("not needed: " + listed(answer.proofs[0].givens_not_needed));
  }
  return listed(remarks);
}

}  // namespace

WorksheetRow worksheet_row(const std::string& problem, const Answer& answer, const prover::Catalogue& catalogue) {
  WorksheetRow row;
  row.problem = problem;
  row.verdict = answer.verdict;
  row.understood = !prover::has_error(answer.diagnostics);
  row.fine = row.understood && answer.verdict == Verdict::proved &&
             std::all_of(answer.answer_book.begin(), answer.answer_book.end(), [](const auto& entry) { return entry.outcome == "agrees"; });
  row.cells = {row.understood ? in_plain_words(answer) : "not understood", values_of(answer), steps_of(answer),
               chapter_of(answer, catalogue), remarks_of(answer)};
  return row;
}

Document worksheet_page(const std::vector<WorksheetRow>& rows) {
  Document document;
  std::size_t fine = 0;
  for (const WorksheetRow& row : rows) fine += row.fine;
  document.blocks.push_back(Paragraph{fmt::format("{} of {} can be handed out as {}.", fine, rows.size(), rows.size() == 1 ? "it is" : "they are")});
  Table table{{"Problem", "Verdict", "Answer", "Steps", "Chapter"}, {}};
  std::vector<std::string> remarks;
  for (const WorksheetRow& row : rows) {
    table.rows.push_back({row.problem, row.cells[0], row.cells[1], row.cells[2], row.cells[3]});
    if (!row.cells[4].empty()) remarks.push_back(row.problem + ": " + row.cells[4]);
  }
  document.blocks.push_back(std::move(table));
  if (!remarks.empty()) document.blocks.push_back(Items{"To know before handing them out", std::move(remarks), true});
  return document;
}

}  // namespace frontend
