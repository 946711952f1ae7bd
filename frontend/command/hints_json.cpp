#include "frontend/command/hints_json.hpp"

namespace frontend {

namespace {

Json rung_json(const prover::Rung& rung) {
  Json json;
  json["level"] = rung.level;
  json["kind"] = prover::name_of(rung.kind);
  json["text"] = rung.text;
  json["points"] = Json::array();
  for (const std::string& point : rung.points) json["points"].push_back(point);
  if (rung.step > 0) json["step"] = rung.step;
  if (!rung.rule.empty()) json["rule"] = rung.rule;
  if (!rung.claim.empty()) json["claim"] = rung.claim;
  if (!rung.reason.empty()) json["reason"] = rung.reason;
  if (rung.line > 0) json["line"] = rung.line;
  json["steps_left"] = rung.steps_left;
  if (rung.ways_open >= 0) json["ways_open"] = rung.ways_open;
  return json;
}

Json rungs_json(const prover::Ladder& ladder, int step) {
  Json json = Json::array();
  for (const prover::Rung& rung : ladder.rungs)
    if (step == 0 || rung.level == step) json.push_back(rung_json(rung));
  return json;
}

Json ladder_json(const prover::Ladder& ladder, int step) {
  Json json;
  json["goal"] = ladder.goal;
  if (!ladder.case_name.empty()) json["case"] = ladder.case_name;
  if (ladder.way > 0) {
    json["way"] = ladder.way;
    json["ways"] = ladder.ways;
  }
  if (step == 0) json["title"] = ladder.title;
  json["length"] = ladder.rungs.size();
  json["rungs"] = rungs_json(ladder, step);
  return json;
}

Json line_json(const prover::JudgedLine& line) {
  Json json;
  json["line"] = line.number;
  json["status"] = prover::name_of(line.status);
  json["text"] = line.text;
  return json;
}

}  // namespace

Json hints_json(const prover::Hints& hints, std::string_view text, int step, bool times) {
  const Json answer = answer_json(hints.answer, text, times);
  Json json;
  json["verdict"] = answer["verdict"];
  if (hints.answer.verdict != prover::Verdict::proved) json["summary"] = answer["summary"];
  json["read_as"] = answer["read_as"];
  json["rungs"] = hints.ladders.empty() ? Json::array() : rungs_json(hints.ladders.front(), step);
  json["ladders"] = Json::array();
  for (const prover::Ladder& ladder : hints.ladders) json["ladders"].push_back(ladder_json(ladder, step));
  json["lines"] = Json::array();
  for (const prover::JudgedLine& line : hints.lines) json["lines"].push_back(line_json(line));
  json["complete"] = hints.complete;
  json["diagnostics"] = answer["diagnostics"];
  if (times) json["time_ms"] = answer["time_ms"];
  return json;
}

}  // namespace frontend
