#include "frontend/command/mark_json.hpp"

namespace frontend {

namespace {

Json scheme_json(const prover::Scheme& scheme) {
  Json json;
  json["id"] = scheme.policy.id;
  json["title"] = scheme.policy.title;
  json["total"] = scheme.total;
  json["rows"] = Json::array();
  for (const prover::SchemeRow& row : scheme.rows) {
    Json one;
    one["steps"] = row.steps;
    one["codes"] = Json::array();
    one["marks"] = 0;
    for (const std::size_t i : row.marks) {
      one["codes"].push_back(scheme.marks[i].code);
      one["marks"] = one["marks"].get<int>() + scheme.marks[i].marks;
    }
    one["statement"] = row.statement;
    if (!row.reason.empty()) one["reason"] = row.reason;
    if (!row.other_words.empty()) one["other_words"] = row.other_words;
    if (!row.other_routes.empty()) one["other_routes"] = row.other_routes;
    json["rows"].push_back(std::move(one));
  }
  if (!scheme.note.empty()) json["note"] = scheme.note;
  return json;
}

Json mark_of(const prover::GivenMark& mark, bool for_teacher) {
  Json json;
  json["code"] = mark.code;
  json["awarded"] = mark.awarded;
  json["possible"] = mark.possible;
  if (for_teacher) json["what"] = mark.what;
  return json;
}

Json line_json(const prover::JudgedLine& line, const prover::LineMarks& marks, bool for_teacher) {
  Json json;
  json["line"] = line.number;
  json["status"] = prover::name_of(line.status);
  json["text"] = line.text;
  if (!line.read_as.empty()) json["read_as"] = line.read_as;
  json["remark"] = line.remark;
  json["stated"] = line.stated;
  json["reasoned"] = line.stated && line.reasoned;
  json["awarded"] = marks.awarded;
  json["possible"] = marks.possible;
  json["marks"] = Json::array();
  for (const prover::GivenMark& mark : marks.marks) json["marks"].push_back(mark_of(mark, for_teacher));
  if (!line.mistake.empty()) json["mistake"] = line.mistake;
  if (!line.mistake_name.empty()) json["mistake_name"] = line.mistake_name;
  if (!line.uses.empty()) json["uses"] = line.uses;
  if (!for_teacher) return json;
  if (!line.would_do.empty()) json["would_do"] = line.would_do;
  if (line.gap > 0) json["gap"] = line.gap;
  if (!line.bridge.empty()) json["bridge"] = line.bridge;
  if (!line.value.empty()) json["value"] = line.value;
  if (line.figure) json["figure"] = figure_json(*line.figure);
  if (!line.steps.empty()) json["steps"] = line.steps;
  if (!marks.note.empty()) json["note"] = marks.note;
  return json;
}

}  // namespace

Json mark_json(const Marked& marked, std::string_view problem, bool for_teacher) {
  const prover::Judgement& judgement = marked.judgement;
  Json json;
  json["verdict"] = prover::name_of(judgement.problem.verdict);
  json["awarded"] = marked.marks.awarded;
  json["possible"] = marked.marks.possible;
  json["complete"] = judgement.complete;
  json["proves"] = judgement.proves;
  json["assumed"] = judgement.assumed;
  json["first_break"] = judgement.first_break;
  json["lines"] = Json::array();
  for (std::size_t i = 0; i < judgement.lines.size(); ++i)
    json["lines"].push_back(line_json(judgement.lines[i], marked.marks.lines[i], for_teacher));
  if (for_teacher) {
    json["missing"] = Json::array();
    for (const prover::GivenMark& mark : marked.marks.missing) json["missing"].push_back(mark_of(mark, true));
    json["scheme"] = scheme_json(marked.scheme);
    json["notes"] = marked.marks.notes;
  } else {
    json["scheme"] = {{"id", marked.scheme.policy.id}, {"title", marked.scheme.policy.title}, {"total", marked.scheme.total}};
  }
  json["diagnostics"] = Json::array();
  for (const prover::Diagnostic& diagnostic : judgement.problem.diagnostics)
    json["diagnostics"].push_back(diagnostic_json(diagnostic, problem));
  json["note"] = prover::suggestion_note;
  return json;
}

}  // namespace frontend
