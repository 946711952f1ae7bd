#include "frontend/command/library_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "frontend/command/answer_page.hpp"

namespace frontend {

namespace {

using prover::Ancestry;
using prover::Catalogue;
using prover::RuleId;
using prover::TheoremReport;
using prover::TheoremStatus;
using Reports = std::vector<TheoremReport>;

std::string ids(const Catalogue& catalogue, const std::vector<RuleId>& rules, const char* between) {
  std::string text;
  for (const RuleId rule : rules) text += (text.empty() ? "" : between) + catalogue[rule].id;
  return text;
}

const TheoremReport* report_of(const Reports& reports, RuleId rule) {
  const auto found = std::find_if(reports.begin(), reports.end(), [&](const TheoremReport& r) { return r.rule == rule; });
  return found == reports.end() ? nullptr : &*found;
}

struct Count {
  std::size_t taken = 0, proved = 0, by_examples = 0, not_proved = 0;
  std::size_t theorems() const { return proved + by_examples + not_proved; }
};

Count count(const Reports& reports) {
  Count counted;
  for (const TheoremReport& report : reports) switch (report.status) {
      case TheoremStatus::taken: ++counted.taken; break;
      case TheoremStatus::proved: ++counted.proved; break;
      case TheoremStatus::by_examples: ++counted.by_examples; break;
      case TheoremStatus::not_proved: ++counted.not_proved; break;
    }
  return counted;
}

std::vector<RuleId> in_circles(const Reports& reports, const Ancestry& ancestry) {
  std::vector<RuleId> bad;
  for (const TheoremReport& report : reports)
    if (ancestry.rests_on_itself(report.rule)) bad.push_back(report.rule);
  return bad;
}

std::vector<std::string> strings(const Catalogue& catalogue, const std::vector<RuleId>& rules) {
  std::vector<std::string> list;
  for (const RuleId rule : rules) list.push_back(catalogue[rule].id);
  return list;
}

// Ancestors, the deepest first, each with what it cites itself.
std::vector<RuleId> deepest_first(const Ancestry& ancestry, RuleId rule) {
  std::vector<RuleId> all = ancestry.ancestors(rule);
  std::stable_sort(all.begin(), all.end(), [&](RuleId a, RuleId b) { return ancestry.depth(a) > ancestry.depth(b); });
  return all;
}

Json report_json(const Catalogue& catalogue, const TheoremReport& report, const Ancestry& ancestry) {
  Json json;
  json["id"] = catalogue[report.rule].id;
  json["status"] = prover::name_of(report.status);
  json["steps"] = report.steps;
  json["depth"] = ancestry.depth(report.rule);
  json["cites"] = strings(catalogue, report.cites);
  json["deepest_line"] = strings(catalogue, ancestry.deepest_line(report.rule));
  if (!report.why_not.empty()) json["why_not"] = report.why_not;
  json["proofs"] = Json::array();
  for (const prover::AnswerProof& proof : report.proofs) json["proofs"].push_back(proof_json(proof));
  return json;
}

}  // namespace

Document library_page(const Catalogue& catalogue, const prover::Course& course, const Reports& reports) {
  Document page;
  const Ancestry ancestry(catalogue, reports);
  const Count counted = count(reports);
  page.blocks.push_back(Heading{1, "Every theorem of " + course.title + ", proved from the ones before it"});
  Table table{{"Theorem", "Lines", "Depth", "Deepest that it cites", "Status"}, {}};
  for (const TheoremReport& report : reports) {
    if (report.status == TheoremStatus::taken) continue;
    const std::vector<RuleId> line = ancestry.deepest_line(report.rule);
    const bool proved = report.why_not.empty();
    const int depth = ancestry.depth(report.rule);
    table.rows.push_back({catalogue[report.rule].id, proved ? std::to_string(report.steps) : "–",
                          proved && depth >= 0 ? std::to_string(depth) : "–",
                          line.empty() || !proved ? "–" : catalogue[line[0]].id,
                          proved ? prover::name_of(report.status) : "not proved: " + report.why_not});
  }
  page.blocks.push_back(std::move(table));
  std::vector<std::string> taken;
  for (const TheoremReport& report : reports)
    if (report.status == TheoremStatus::taken && catalogue[report.rule].kind != prover::RuleKind::definition &&
        !catalogue[report.rule].meaning && catalogue[report.rule].builtin != prover::Builtin::given)
      taken.push_back(catalogue[report.rule].id);
  page.blocks.push_back(Items{"Taken without proof, beside definitions", taken, false});
  page.blocks.push_back(Paragraph{fmt::format(
      "Proved {} of {} theorems{}; {} not proved.", counted.proved + counted.by_examples, counted.theorems(),
      counted.by_examples == 0 ? "" : fmt::format(", {} of them by the examples of a shape with any number of parts", counted.by_examples),
      counted.not_proved)});
  const std::vector<RuleId> circles = in_circles(reports, ancestry);
  if (!circles.empty())
    page.blocks.push_back(Paragraph{"Mistake: these rest on themselves: " + ids(catalogue, circles, ", ") + "."});
  return page;
}

Json library_json(const Catalogue& catalogue, const prover::Course& course, const Reports& reports) {
  const Ancestry ancestry(catalogue, reports);
  const Count counted = count(reports);
  Json json;
  json["course"] = course.id;
  json["proved"] = counted.proved;
  json["examples_proved"] = counted.by_examples;
  json["not_proved"] = counted.not_proved;
  json["taken"] = counted.taken;
  json["circles"] = strings(catalogue, in_circles(reports, ancestry));
  json["theorems"] = Json::array();
  for (const TheoremReport& report : reports) json["theorems"].push_back(report_json(catalogue, report, ancestry));
  return json;
}

Document theorem_page(const Catalogue& catalogue, const Reports& reports, RuleId rule) {
  Document page;
  const Ancestry ancestry(catalogue, reports);
  const TheoremReport* report = report_of(reports, rule);
  page.blocks.push_back(Heading{1, "What " + catalogue[rule].id + " rests on"});
  page.blocks.push_back(Paragraph{catalogue[rule].says});
  if (report == nullptr || report->status == TheoremStatus::taken) {
    page.blocks.push_back(Paragraph{"This course takes it without proof."});
    return page;
  }
  if (!report->why_not.empty()) page.blocks.push_back(Paragraph{"Not proved: " + report->why_not});
  for (const prover::AnswerProof& proof : report->proofs) {
    page.blocks.push_back(Heading{2, "Proof" + (proof.case_name.empty() ? "" : " where " + proof.case_name) + " " + proof.title});
    page.blocks.push_back(proof_lines(proof));
    if (!proof.seen_in_figure.empty()) page.blocks.push_back(Items{"Seen in the figure", proof.seen_in_figure, true});
  }
  const std::vector<RuleId> all = deepest_first(ancestry, rule);
  page.blocks.push_back(Heading{2, "It rests on"});
  Table table{{"Rule", "Depth", "Cites"}, {}};
  std::vector<std::string> trust;
  for (const RuleId ancestor : all) {
    const TheoremReport* below = report_of(reports, ancestor);
    const bool taken = below == nullptr || below->status == TheoremStatus::taken;
    const bool missing = !taken && below->status == TheoremStatus::not_proved;
    table.rows.push_back({catalogue[ancestor].id, std::to_string(std::max(0, ancestry.depth(ancestor))),
                          missing ? "not proved" : taken ? std::string(prover::name_of(catalogue[ancestor].kind)) : ids(catalogue, below->cites, ", ")});
    if (taken || missing) trust.push_back(catalogue[ancestor].id);
  }
  page.blocks.push_back(std::move(table));
  if (!trust.empty()) page.blocks.push_back(Items{"On trust", trust, false});
  return page;
}

Json theorem_json(const Catalogue& catalogue, const Reports& reports, RuleId rule) {
  const Ancestry ancestry(catalogue, reports);
  Json json;
  const TheoremReport* report = report_of(reports, rule);
  if (report != nullptr) json = report_json(catalogue, *report, ancestry);
  json["rests_on"] = Json::array();
  for (const RuleId ancestor : deepest_first(ancestry, rule)) {
    const TheoremReport* below = report_of(reports, ancestor);
    json["rests_on"].push_back({{"id", catalogue[ancestor].id},
                                {"depth", std::max(0, ancestry.depth(ancestor))},
                                {"status", prover::name_of(below ? below->status : TheoremStatus::taken)},
                                {"cites", strings(catalogue, ancestry.cites(ancestor))}});
  }
  return json;
}

std::string theorem_dot(const Catalogue& catalogue, const Reports& reports, RuleId rule) {
  const Ancestry ancestry(catalogue, reports);
  std::vector<RuleId> all = ancestry.ancestors(rule);
  all.push_back(rule);
  std::string text = "digraph rests_on {\n  rankdir=TB;\n  node [shape=box, fontname=\"sans-serif\"];\n";
  for (const RuleId one : all) {
    const bool on_trust = ancestry.cites(one).empty();
    text += fmt::format("  \"{}\" [label=\"{}\"{}];\n", catalogue[one].id, catalogue[one].title.empty() ? catalogue[one].id : catalogue[one].title,
                        on_trust ? ", style=dashed" : one == rule ? ", penwidth=2" : "");
  }
  for (const RuleId one : all)
    for (const RuleId cited : ancestry.cites(one))
      text += fmt::format("  \"{}\" -> \"{}\";\n", catalogue[one].id, catalogue[cited].id);
  return text + "}\n";
}

}  // namespace frontend
