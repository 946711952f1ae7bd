#include "frontend/command/mark_page.hpp"

#include <fmt/format.h>

namespace frontend {

namespace {

using prover::LineStatus;

std::string counted(int n, const char* one, const char* more) { return fmt::format("{} {}", n, n == 1 ? one : more); }

// "1 of 1 (S/R)"; a line that can earn nothing has a dash.
std::string marks_in_words(const prover::LineMarks& marks) {
  if (marks.possible == 0) return "–";
  std::string codes;
  for (const prover::GivenMark& mark : marks.marks) codes += (codes.empty() ? "" : " ") + mark.code;
  return fmt::format("{} of {} ({})", marks.awarded, marks.possible, codes);
}

std::string joined(const std::vector<std::string>& parts, const char* between) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : between) + part;
  return text;
}

std::string sentence(std::string text) {
  if (!text.empty() && text.back() != '.' && text.back() != '?' && text.back() != '!') text += '.';
  return text;
}

struct Page {
  const Marked& marked;
  const MarkPageOptions& options;
  Document document;

  void add(Block block) { document.blocks.push_back(std::move(block)); }

  void add_lines() {
    const auto& lines = marked.judgement.lines;
    if (lines.empty()) {
      add(Paragraph{"There is no work to mark: it stands behind work: in the problem, or in a file of its own (--work)."});
      return;
    }
    Table table{{"", "Line", "Marks", "Remark"}, {}, true};
    for (std::size_t i = 0; i < lines.size(); ++i) {
      // The remark often begins as the status does: then it says both.
      const std::string status = in_words(lines[i]);
      const std::string first = status.substr(0, status.find_first_of(" ,."));
      std::string remark = lines[i].remark.starts_with(first) ? lines[i].remark : sentence(status);
      if (!lines[i].remark.empty() && !lines[i].remark.starts_with(first)) remark += " " + lines[i].remark;
      table.rows.push_back({std::to_string(lines[i].number), lines[i].text, marks_in_words(marked.marks.lines[i]), std::move(remark)});
    }
    add(std::move(table));
  }

  void add_sum() {
    const prover::Judgement& judgement = marked.judgement;
    if (marked.marks.possible > 0)
      add(Paragraph{fmt::format("Marks: {} of {} (scheme \"{}\").", marked.marks.awarded, marked.marks.possible, marked.scheme.policy.id)});
    std::vector<std::string> whole;
    if (judgement.complete && judgement.first_break.empty()) whole.push_back("The lines reach what is asked.");
    for (const std::string* text : {&judgement.first_break, &judgement.proves, &judgement.assumed})
      if (!text->empty()) whole.push_back(sentence(*text));
    if (!whole.empty()) add(Items{"On the whole", std::move(whole), true});
  }

  // What stands beside a line for the teacher alone.
  void add_for_the_teacher() {
    std::vector<std::string> items;
    const auto& lines = marked.judgement.lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const prover::JudgedLine& line = lines[i];
      std::vector<std::string> said;
      if (!line.mistake_name.empty()) said.push_back("mistake: " + line.mistake_name);
      if (!line.value.empty()) said.push_back("the givens make it " + line.value);
      if (!line.would_do.empty() && line.gap == 0) said.push_back("would do: " + joined(line.would_do, "; or "));
      if (!line.bridge.empty() && line.gap > 0) said.push_back(counted(line.gap, "step is", "steps are") + " missing: " + joined(line.bridge, "; then "));
      if (!marked.marks.lines[i].note.empty()) said.push_back(marked.marks.lines[i].note);
      if (!said.empty()) items.push_back(fmt::format("line {}: {}", line.number, joined(said, "; ")));
    }
    if (!items.empty()) add(Items{"For the teacher", std::move(items), true});
    std::vector<std::string> missing;
    for (const prover::GivenMark& mark : marked.marks.missing)
      missing.push_back(fmt::format("{} {}{}", mark.code, mark.what, mark.possible > 1 ? fmt::format(", {} marks", mark.possible) : ""));
    if (!missing.empty() && !lines.empty()) add(Items{"Missing", std::move(missing), true});
    for (const std::string& note : marked.marks.notes) add(Paragraph{note});
  }

  void add_scheme() {
    const prover::Scheme& scheme = marked.scheme;
    if (scheme.rows.empty()) return;
    add(Heading{2, fmt::format("Scheme \"{}\", {}: {}", scheme.policy.id, scheme.policy.title, counted(scheme.total, "mark", "marks"))});
    Table table{{"Mark", "Statement", "Reason"}, {}, true};
    for (const prover::SchemeRow& row : scheme.rows) {
      std::string reason = row.reason;
      if (!row.other_words.empty()) reason += "; also: " + joined(row.other_words, " / ");
      if (!row.other_routes.empty()) reason += "; " + row.other_routes;
      const std::string codes = prover::codes_of(row, scheme);
      table.rows.push_back({codes.empty() ? "–" : codes, row.statement, std::move(reason)});
    }
    add(std::move(table));
    add(Note{scheme.policy.says});
    if (!options.policies) return;
    Table policies{{"Policy", "Says", "From"}, {}, true};
    for (const prover::SchemePolicy::Row& row : scheme.policy.rows) policies.rows.push_back({row.name, row.value, row.source});
    add(std::move(policies));
  }
};

}  // namespace

std::string in_words(const prover::JudgedLine& line) {
  switch (line.status) {
    case LineStatus::right: return "Right";
    case LineStatus::right_no_reason:
      return line.lacks == prover::ReasonLack::lines      ? "Right, but which lines are parallel?"
             : line.lacks == prover::ReasonLack::relation ? "Right, but the reason is too short"
             : line.lacks == prover::ReasonLack::vague    ? "Right, but the reason does not say which fact"
                                                          : "Right, the reason is missing";
    case LineStatus::wrong_reason: return "Not by this reason";
    case LineStatus::reason_not_accepted: return "Right, but the reason is not accepted in these words";
    case LineStatus::unsupported: return "Does not follow yet";
    case LineStatus::false_line: return "Not true";
    case LineStatus::arithmetic_slip: return "A slip in the arithmetic";
    case LineStatus::follows_from_error: return "Follows from an earlier error";
    case LineStatus::circular: return "Goes in a circle";
    case LineStatus::assumes_the_claim: return "Takes for granted what is to be shown";
    case LineStatus::given: return "Given";
    case LineStatus::construction: return "A line drawn";
    case LineStatus::not_needed: return "Right, and not needed";
    case LineStatus::not_taught: return "Right, by a theorem that was not taught";
    case LineStatus::one_example: return "One example only";
    case LineStatus::ambiguous_name: return "Which angle is meant?";
    case LineStatus::remark: return "No statement";
    case LineStatus::crossed_out: return "Crossed out";
    case LineStatus::unread: return "Could not be read";
  }
  return "";
}

Document mark_page(const Marked& marked, const MarkPageOptions& options) {
  Page page{marked, options, {}};
  if (marked.judgement.problem.verdict != prover::Verdict::proved)
    page.add(Paragraph{"The problem itself: " + marked.judgement.problem.summary});
  page.add_lines();
  page.add_sum();
  if (options.for_teacher) {
    page.add_for_the_teacher();
    page.add_scheme();
  }
  page.add(Note{prover::suggestion_note});
  return std::move(page.document);
}

}  // namespace frontend
