#include "frontend/command/rule_page.hpp"

#include "frontend/command/catalogue.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/command.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/rules_arguments.hpp"
#include "prover/rule/wording.hpp"

namespace frontend {

namespace {

using prover::Rule;

std::string kind_of(const Rule& rule) { return std::string(prover::name_of(rule.kind)); }

// "{AB} ∥ {CD}" as a person reads it: the letters stand for any points.
std::string without_braces(std::string text) {
  std::erase_if(text, [](char c) { return c == '{' || c == '}'; });
  return text;
}

std::vector<std::string> sentences(const std::vector<prover::Phrase>& phrases, const Rule& rule) {
  std::vector<std::string> result;
  for (const prover::Phrase& phrase : phrases) result.push_back(prover::describe(phrase, rule.variables));
  return result;
}

std::string example_sentence(const prover::RuleExample& example) {
  return (example.fires ? "From " : "Not from ") + example.givens + (example.fires ? ": " : ": that ") +
         example.conclusion;
}

Items courses_of(const Rule& rule, const prover::Catalogue& catalogue) {
  Items items{"Courses", {}, true};
  for (const prover::Course& course : catalogue.courses) {
    if (const auto place = course.place_of(*catalogue.find(rule.id)))
      items.items.push_back(course.id + ": " + (course.entries[*place].taken ? "taken without proof" : "taught"));
  }
  return items;
}

constexpr prover::HintRung hint_rungs[] = {prover::HintRung::where, prover::HintRung::kind, prover::HintRung::places};

// What a pupil is asked before this step, as a ladder has it; another school's words only where they differ.
std::vector<std::string> questions(const Rule& rule) {
  std::vector<std::string> asked;
  for (const NamedRegister& named : registers()) {
    const auto found = rule.hints.find(named.wording);
    if (found == rule.hints.end()) continue;
    for (const prover::HintRung rung : hint_rungs)
      if (const std::string& text = prover::sentence_of(found->second, rung); !text.empty())
        asked.push_back((named.wording == prover::Register::plain ? std::string() : std::string(named.name) + ": ") + without_braces(text));
  }
  return asked;
}

Document rule_page(const Rule& rule, const prover::Catalogue& catalogue) {
  Document page;
  page.blocks.push_back(Heading{1, rule.id});
  page.blocks.push_back(Paragraph{without_braces(rule.says)});
  page.blocks.push_back(
      Table{{}, {{"Topic", rule.topic}, {"Kind", kind_of(rule)}, {"Weight", rule.cost.to_string()}}});
  if (rule.assumed) page.blocks.push_back(Paragraph{"Assumed without proof: each proof that uses it says so."});
  const auto add = [&](const char* lead, std::vector<std::string> items) {
    if (!items.empty()) page.blocks.push_back(Items{lead, std::move(items), true});
  };
  add("Given", sentences(rule.given, rule));
  add("Where", sentences(rule.where, rule));
  add("Then", sentences(rule.then, rule));
  Table reasons{{"Reason for", "Wording", "Source"}, {}};
  for (const NamedRegister& named : registers()) {
    reasons.rows.push_back(
        {named.reader, reason_pattern(rule, named.wording), prover::wording_source(rule, named.wording)});
  }
  page.blocks.push_back(std::move(reasons));
  add("Also called", rule.synonyms);
  add("To ask a pupil", questions(rule));
  if (!rule.why.empty()) page.blocks.push_back(Paragraph{"Why: " + without_braces(rule.why)});
  std::vector<std::string> fires, silent;
  for (const prover::RuleExample& example : rule.examples) {
    (example.fires ? fires : silent).push_back(example_sentence(example));
  }
  add("Where it applies", fires);
  add("Where it does not", silent);
  add("Sources", rule.sources);
  if (Items courses = courses_of(rule, catalogue); !courses.items.empty()) page.blocks.push_back(std::move(courses));
  return page;
}

}  // namespace

std::string reason_pattern(const Rule& rule, prover::Register wording) {
  const auto found = rule.wording.find(wording);
  return found == rule.wording.end() ? "–" : without_braces(found->second);
}

Json rule_json(const Rule& rule, const prover::Catalogue& catalogue) {
  Json json;
  json["id"] = rule.id;
  json["topic"] = rule.topic;
  json["family"] = rule.family;
  json["title"] = rule.title;
  json["kind"] = kind_of(rule);
  json["weight"] = rule.cost.to_string();
  json["statement"] = without_braces(rule.says);
  json["given"] = sentences(rule.given, rule);
  json["where"] = sentences(rule.where, rule);
  json["then"] = sentences(rule.then, rule);
  json["assumed"] = rule.assumed;
  json["shape"] = rule.meaning ? "meaning" : rule.builtin ? "builtin" : "pattern";
  json["reasons"] = Json::object();
  json["reason_sources"] = Json::object();
  json["from_memory"] = Json::array();
  for (const NamedRegister& named : registers()) {
    if (!rule.wording.contains(named.wording)) continue;
    json["reasons"][named.name] = reason_pattern(rule, named.wording);
    const std::string source = prover::wording_source(rule, named.wording);
    if (!source.empty()) json["reason_sources"][named.name] = source;
    const auto recalled = rule.recalled.find(named.wording);
    if (recalled != rule.recalled.end() && recalled->second) json["from_memory"].push_back(named.name);
  }
  json["hints"] = Json::object();
  for (const NamedRegister& named : registers()) {
    const auto found = rule.hints.find(named.wording);
    if (found == rule.hints.end()) continue;
    for (const prover::HintRung rung : hint_rungs)
      if (const std::string& text = prover::sentence_of(found->second, rung); !text.empty())
        json["hints"][named.name][std::string(prover::name_of(rung))] = without_braces(text);
  }
  json["also"] = rule.synonyms;
  json["why"] = without_braces(rule.why);
  json["examples"] = Json::array();
  for (const prover::RuleExample& example : rule.examples) {
    json["examples"].push_back(
        {{"fires", example.fires}, {"givens", example.givens}, {"conclusion", example.conclusion}});
  }
  json["sources"] = rule.sources;
  json["courses"] = Json::array();
  for (const prover::Course& course : catalogue.courses) {
    if (const auto place = course.place_of(*catalogue.find(rule.id)))
      json["courses"].push_back(
          {{"course", course.id}, {"place", *place + 1}, {"taken", course.entries[*place].taken}});
  }
  return json;
}

int show_rule(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  const auto ids = rule_ids(catalogue, {arguments.id}, "rules");
  if (!ids) return status_mistake;
  const Rule& rule = catalogue[*catalogue.find(arguments.id)];
  const std::string text = arguments.json
                               ? json_page(rule_json(rule, catalogue))
                               : renderer_named(arguments.format)->render(rule_page(rule, catalogue), {});
  return write_answer(text) ? status_proved : status_mistake;
}

}  // namespace frontend
