#include "frontend/command/answer_json.hpp"

namespace frontend {

namespace {

const char* name_of(prover::Severity severity) {
  switch (severity) {
    case prover::Severity::error: return "error";
    case prover::Severity::warning: return "warning";
    case prover::Severity::note: return "note";
  }
  return "";
}

Json list(const std::vector<std::string>& items) {
  Json result = Json::array();
  for (const std::string& item : items) result.push_back(item);
  return result;
}

Json step_json(const prover::AnswerStep& step) {
  Json json;
  json["n"] = step.n;
  json["claim"] = step.claim;
  json["rows"] = step.rows.empty() ? list({step.claim}) : list(step.rows);
  json["rule"] = step.rule;
  json["reason"] = step.reason;
  json["uses"] = Json::array();
  for (const int use : step.uses) json["uses"].push_back(use);
  json["closing"] = step.closing;
  return json;
}

}  // namespace

Json figure_json(const prover::AnswerFigure& figure) {
  Json json;
  json["name"] = figure.name;
  json["points"] = Json::object();
  for (const auto& [name, place] : figure.points) json["points"][name] = {place.first, place.second};
  if (figure.value) json["value"] = *figure.value;
  json["exists"] = figure.exists;
  if (!figure.words.empty()) json["words"] = figure.words;
  return json;
}

namespace {

Json repair_json(const prover::AnswerRepair& repair) {
  Json json;
  json["given"] = repair.given;
  if (!repair.instead.empty()) json["instead"] = repair.instead;
  json["text"] = repair.text;
  json["exact"] = repair.exact;
  if (!repair.low.empty()) json["above"] = repair.low;
  if (!repair.high.empty()) json["below"] = repair.high;
  return json;
}

Json case_json(const prover::AnswerCase& one) {
  Json json;
  json["name"] = one.name;
  json["verdict"] = prover::name_of(one.verdict);
  if (!one.value.empty()) json["value"] = one.value;
  if (!one.selects.empty()) json["selects"] = one.selects;
  return json;
}

Json checks_json(const prover::AnswerProof& proof) { return {{"replay", proof.replay}, {"z3", proof.z3}}; }

Json steps_json(const std::vector<prover::AnswerStep>& steps) {
  Json json = Json::array();
  for (const prover::AnswerStep& step : steps) json.push_back(step_json(step));
  return json;
}

Json plausible_json(const prover::AnswerPlausible& argument) {
  Json json;
  json["goal"] = argument.goal;
  json["mistake"] = argument.mistake;
  json["name"] = argument.name;
  json["instead"] = argument.instead;
  json["missing"] = argument.missing;
  json["why"] = argument.why;
  json["steps"] = steps_json(argument.steps);
  json["wrong_step"] = argument.wrong_step;
  return json;
}

Json superfluous_json(const prover::AnswerSuperfluous& superfluous) {
  Json json;
  json["not_needed"] = list(superfluous.not_needed);
  json["consequences"] = Json::array();
  for (const prover::AnswerConsequence& one : superfluous.consequences) {
    Json consequence;
    consequence["given"] = one.given;
    consequence["from"] = list(one.from);
    if (one.proof) {
      consequence["title"] = one.proof->title;
      consequence["steps"] = steps_json(one.proof->steps);
      consequence["seen_in_figure"] = list(one.proof->seen_in_figure);
      consequence["checks"] = checks_json(*one.proof);
    }
    json["consequences"].push_back(std::move(consequence));
  }
  json["sufficient"] = Json::array();
  for (const std::vector<std::string>& set : superfluous.sufficient) json["sufficient"].push_back(list(set));
  json["stop"] = superfluous.stop;
  return json;
}

Json certificate_json(const prover::AnswerCertificate& certificate) {
  Json json;
  json["goal"] = certificate.goal;
  if (!certificate.case_name.empty()) json["case"] = certificate.case_name;
  if (!certificate.value.empty()) json["value"] = certificate.value;
  json["relations"] = list(certificate.relations);
  json["steps"] = Json::array();
  for (const prover::AnswerCertificateStep& step : certificate.steps) {
    Json one;
    one["letter"] = step.letter;
    one["angle"] = step.angle;
    if (!step.value.empty()) one["value"] = step.value;
    one["measured"] = step.measured;
    one["triangles"] = list(step.triangles);
    one["condition"] = step.condition;
    if (!step.with_value.empty()) one["with_value"] = step.with_value;
    one["only_one"] = step.only_one;
    one["between"] = {step.low, step.high};
    json["steps"].push_back(std::move(one));
  }
  json["identities"] = list(certificate.identities);
  json["conclusion"] = certificate.conclusion;
  json["seen_in_figure"] = list(certificate.seen_in_figure);
  return json;
}

Json unlock_json(const prover::AnswerUnlock& unlock) {
  Json json;
  json["text"] = unlock.text;
  if (!unlock.rules.empty()) json["rules"] = list(unlock.rules);
  if (!unlock.course.empty()) json["course"] = unlock.course;
  if (!unlock.chapter.empty()) json["chapter"] = unlock.chapter;
  if (!unlock.up_to.empty()) json["up_to"] = unlock.up_to;
  if (!unlock.lines.empty()) json["lines"] = list(unlock.lines);
  return json;
}

// A bound is there when there may be others; without it there are none.
Json extent_json(const std::string& complete_below, const std::string& stop) {
  Json json;
  json["complete"] = complete_below.empty();
  if (!complete_below.empty()) json["complete_below"] = complete_below;
  json["stop"] = stop;
  return json;
}

Json ways_json(const prover::AnswerWays& ways) {
  Json json;
  json["goal"] = ways.goal;
  if (!ways.case_name.empty()) json["case"] = ways.case_name;
  json["ideas"] = ways.ideas;
  json["more"] = ways.more;
  json["elsewhere"] = ways.elsewhere;
  json["left_out"] = ways.left_out;
  json["lines_drawn"] = extent_json(ways.complete_below, ways.stop);
  if (ways.joined_tried) json["points_joined"] = extent_json(ways.joined_complete_below, ways.joined_stop);
  return json;
}

Json contribution_json(const prover::AnswerContribution& one) {
  Json json;
  json["rule"] = one.rule;
  json["needed"] = one.needed;
  if (!one.needed) json["more"] = one.more;
  return json;
}

Json book_json(const prover::AnswerBookEntry& entry) {
  Json json;
  json["goal"] = entry.goal;
  json["given"] = entry.given;
  json["outcome"] = entry.outcome;
  json["text"] = entry.text;
  if (!entry.only_if.empty()) json["only_if"] = list(entry.only_if);
  return json;
}

}  // namespace

Json diagnostic_json(const prover::Diagnostic& diagnostic, std::string_view text) {
  const prover::LineColumn place = prover::line_column(text, diagnostic.span.begin);
  Json json;
  json["line"] = place.line;
  json["column"] = place.column;
  json["severity"] = name_of(diagnostic.severity);
  json["message"] = diagnostic.message;
  json["way_out"] = diagnostic.way_out;
  return json;
}

Json proof_json(const prover::AnswerProof& proof) {
  Json json;
  json["goal"] = proof.goal;
  if (!proof.case_name.empty()) json["case"] = proof.case_name;
  if (proof.idea > 0) json["idea"] = proof.idea;
  json["title"] = proof.title;
  json["cost"] = proof.cost;
  json["measure"] = proof.measure;
  json["shortest"] = proof.shortest;
  json["lower_bound"] = proof.lower_bound;
  if (proof.idea > 0) {
    json["in_full"] = proof.in_full;
    json["cited"] = proof.cited;
    if (!proof.deepest.empty()) json["deepest"] = proof.deepest;
    json["to_be_taught"] = list(proof.to_be_taught);
  }
  json["rules"] = list(proof.rules);
  json["constructions"] = list(proof.constructions);
  json["set_aside"] = list(proof.set_aside);
  json["assumed"] = list(proof.assumed);
  json["steps"] = steps_json(proof.steps);
  json["seen_in_figure"] = list(proof.seen_in_figure);
  json["givens_used"] = list(proof.givens_used);
  json["givens_not_needed"] = list(proof.givens_not_needed);
  json["checks"] = checks_json(proof);
  return json;
}

Json answer_json(const prover::Answer& answer, std::string_view text, bool times) {
  Json json;
  if (!answer.id.empty()) json["id"] = answer.id;
  json["verdict"] = prover::name_of(answer.verdict);
  json["summary"] = answer.summary;
  if (!answer.value.empty()) json["value"] = answer.value;
  if (!answer.evidence.empty()) json["evidence"] = answer.evidence;
  if (!answer.certificates.empty()) {
    json["certificates"] = Json::array();
    for (const prover::AnswerCertificate& one : answer.certificates) json["certificates"].push_back(certificate_json(one));
  }
  json["read_as"] = list(answer.read_as);
  json["proofs"] = Json::array();
  for (const prover::AnswerProof& proof : answer.proofs) json["proofs"].push_back(proof_json(proof));
  if (!answer.ways.empty()) {
    json["ways"] = Json::array();
    for (const prover::AnswerWays& ways : answer.ways) json["ways"].push_back(ways_json(ways));
  }
  json["figures"] = Json::array();
  for (const prover::AnswerFigure& figure : answer.figures) json["figures"].push_back(figure_json(figure));
  json["conflict"] = list(answer.conflict);
  if (!answer.conflict_shown_by.empty()) json["conflict_shown_by"] = answer.conflict_shown_by;
  if (!answer.repair.empty()) {
    json["repair"] = Json::array();
    for (const prover::AnswerRepair& repair : answer.repair) json["repair"].push_back(repair_json(repair));
  }
  json["missing"] = list(answer.missing);
  json["settled_by"] = Json::array();
  for (const auto& sentences : answer.settled_by) json["settled_by"].push_back(list(sentences));
  json["in_terms_of"] = list(answer.in_terms_of);
  json["unlock"] = list(answer.unlock);
  if (!answer.unlocked_by.empty()) {
    json["unlocked_by"] = Json::array();
    for (const prover::AnswerUnlock& one : answer.unlocked_by) json["unlocked_by"].push_back(unlock_json(one));
  }
  json["cases"] = Json::array();
  for (const prover::AnswerCase& one : answer.cases) json["cases"].push_back(case_json(one));
  if (!answer.contributions.empty()) {
    json["contributions"] = Json::array();
    for (const auto& one : answer.contributions) json["contributions"].push_back(contribution_json(one));
  }
  if (!answer.answer_book.empty()) {
    json["answer_book"] = Json::array();
    for (const auto& entry : answer.answer_book) json["answer_book"].push_back(book_json(entry));
  }
  if (answer.plausible) json["plausible"] = plausible_json(*answer.plausible);
  if (answer.superfluous) json["superfluous"] = superfluous_json(*answer.superfluous);
  json["stop"] = answer.stop;
  json["checks_disagree"] = answer.checks_disagree;
  json["diagnostics"] = Json::array();
  for (const auto& diagnostic : answer.diagnostics) json["diagnostics"].push_back(diagnostic_json(diagnostic, text));
  if (times) {
    json["time_ms"] = Json::object();
    for (const auto& [stage, time] : answer.time_ms) json["time_ms"][stage] = time;
  }
  return json;
}

std::string json_line(const Json& json) { return json.dump(-1, ' ', false, Json::error_handler_t::replace); }
std::string json_page(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

}  // namespace frontend
