#include "frontend/command/rule_page.hpp"

#include <algorithm>

#include "frontend/command/choices.hpp"

namespace frontend {

namespace {

using prover::Rule;

std::string kind_of(const Rule& rule) { return std::string(prover::name_of(rule.kind)); }

// "{AB} ∥ {CD}" as a person reads it: the letters stand for any points.
std::string without_braces(std::string text) {
  std::erase_if(text, [](char c) { return c == '{' || c == '}'; });
  return text;
}

std::string reason(const Rule& rule, prover::Register wording) {
  const auto found = rule.wording.find(wording);
  return found == rule.wording.end() ? "–" : without_braces(found->second);
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

}  // namespace

Document rule_list_page(const RuleList& rules, const std::vector<prover::Register>& wordings) {
  Document page;
  std::vector<std::string> topics;
  for (const Rule* rule : rules) {
    if (std::find(topics.begin(), topics.end(), rule->topic) == topics.end()) topics.push_back(rule->topic);
  }
  for (const std::string& topic : topics) {
    Table table{{"Rule", "Kind", "Weight", wordings.size() == 1 ? "Reason" : "Reasons"}, {}};
    for (const Rule* rule : rules) {
      if (rule->topic != topic) continue;
      if (wordings.size() == 1) {
        table.rows.push_back({rule->id, kind_of(*rule), rule->cost.to_string(), reason(*rule, wordings[0])});
        continue;
      }
      bool first = true;
      for (const NamedRegister& named : registers()) {
        if (!rule->wording.contains(named.wording)) continue;
        table.rows.push_back({first ? rule->id : std::string(), first ? kind_of(*rule) : std::string(),
                              first ? rule->cost.to_string() : std::string(),
                              std::string(named.name) + ": " + reason(*rule, named.wording)});
        first = false;
      }
      if (first) table.rows.push_back({rule->id, kind_of(*rule), rule->cost.to_string(), "–"});
    }
    page.blocks.push_back(Heading{2, "Topic " + topic});
    page.blocks.push_back(std::move(table));
  }
  return page;
}

Document rule_page(const Rule& rule) {
  Document page;
  page.blocks.push_back(Heading{1, rule.id});
  page.blocks.push_back(Paragraph{without_braces(rule.says)});
  page.blocks.push_back(
      Table{{}, {{"Topic", rule.topic}, {"Kind", kind_of(rule)}, {"Weight", rule.cost.to_string()}}});
  const auto add = [&](const char* lead, std::vector<std::string> items) {
    if (!items.empty()) page.blocks.push_back(Items{lead, std::move(items), true});
  };
  add("Given", sentences(rule.given, rule));
  add("Where", sentences(rule.where, rule));
  add("Then", sentences(rule.then, rule));
  Table reasons{{"Reason for", "Wording"}, {}};
  for (const NamedRegister& named : registers()) {
    const auto recalled = rule.recalled.find(named.wording);
    const bool from_memory = recalled != rule.recalled.end() && recalled->second;
    reasons.rows.push_back({named.reader, reason(rule, named.wording) + (from_memory ? " (from memory)" : "")});
  }
  page.blocks.push_back(std::move(reasons));
  if (!rule.why.empty()) page.blocks.push_back(Paragraph{"Why: " + without_braces(rule.why)});
  std::vector<std::string> fires, silent;
  for (const prover::RuleExample& example : rule.examples) {
    (example.fires ? fires : silent).push_back(example_sentence(example));
  }
  add("Where it applies", fires);
  add("Where it does not", silent);
  add("Sources", rule.sources);
  return page;
}

Json rule_json(const Rule& rule) {
  Json json;
  json["id"] = rule.id;
  json["topic"] = rule.topic;
  json["title"] = rule.title;
  json["kind"] = kind_of(rule);
  json["weight"] = rule.cost.to_string();
  json["statement"] = without_braces(rule.says);
  json["given"] = sentences(rule.given, rule);
  json["where"] = sentences(rule.where, rule);
  json["then"] = sentences(rule.then, rule);
  json["reasons"] = Json::object();
  json["from_memory"] = Json::array();
  for (const NamedRegister& named : registers()) {
    if (rule.wording.contains(named.wording)) json["reasons"][named.name] = reason(rule, named.wording);
    const auto recalled = rule.recalled.find(named.wording);
    if (recalled != rule.recalled.end() && recalled->second) json["from_memory"].push_back(named.name);
  }
  json["why"] = without_braces(rule.why);
  json["examples"] = Json::array();
  for (const prover::RuleExample& example : rule.examples) {
    json["examples"].push_back(
        {{"fires", example.fires}, {"givens", example.givens}, {"conclusion", example.conclusion}});
  }
  json["sources"] = rule.sources;
  return json;
}

}  // namespace frontend
