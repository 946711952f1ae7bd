// The rules as a list by topic, and the table of their wordings.
#include <fmt/format.h>

#include <algorithm>

#include "frontend/command/catalogue.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/command.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/rule_page.hpp"
#include "frontend/command/rules_arguments.hpp"

namespace frontend {

namespace {

using RuleList = std::vector<const prover::Rule*>;

std::vector<std::string> topics_of(const prover::Catalogue& catalogue) {
  std::vector<std::string> topics;
  for (const prover::Rule& rule : catalogue.rules) {
    if (std::find(topics.begin(), topics.end(), rule.topic) == topics.end()) topics.push_back(rule.topic);
  }
  return topics;
}

Table list_of(const RuleList& rules, prover::Register wording) {
  Table table{{"Rule", "Kind", "Weight", "Reason"}, {}};
  for (const prover::Rule* rule : rules) {
    table.rows.push_back({rule->id, std::string(prover::name_of(rule->kind)), rule->cost.to_string(),
                          reason_pattern(*rule, wording)});
  }
  return table;
}

// A wide page has a column for each school; a terminal has no room for that, there they stand below each other.
Table wordings_of(const RuleList& rules, bool wide) {
  Table table;
  if (wide) {
    table.header = {"Rule"};
    for (const NamedRegister& named : registers()) table.header.emplace_back(named.title);
    table.header.emplace_back("Marks");
  } else {
    table.header = {"Rule", "School", "Reason", "Source"};
  }
  for (const prover::Rule* rule : rules) {
    std::vector<std::string> row = {rule->id};
    std::string marks;
    for (const NamedRegister& named : registers()) {
      const std::string source = prover::wording_source(*rule, named.wording);
      if (wide) {
        row.push_back(reason_pattern(*rule, named.wording));
        if (!source.empty()) marks += fmt::format("{}{}: {}", marks.empty() ? "" : "; ", named.name, source);
      } else if (rule->wording.contains(named.wording)) {
        const bool first = table.rows.empty() || row[0] == rule->id;
        table.rows.push_back(
            {first ? rule->id : std::string(), named.name, reason_pattern(*rule, named.wording), source});
        row[0].clear();
      }
    }
    row.push_back(marks);
    if (wide) table.rows.push_back(row);
  }
  return table;
}

}  // namespace

int show_rules(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  const std::vector<std::string> topics = topics_of(catalogue);
  if (!arguments.topic.empty() && std::find(topics.begin(), topics.end(), arguments.topic) == topics.end()) {
    const auto nearest = prover::nearest_word(arguments.topic, topics);
    std::string all;
    for (const std::string& topic : topics) all += (all.empty() ? "" : ", ") + topic;
    write_message(fmt::format("--topic: there is no topic \"{}\"\n  try: {}", arguments.topic,
                              nearest ? *nearest : all));
    return status_mistake;
  }
  Document page;
  Json list = Json::array();
  for (const std::string& topic : topics) {
    if (!arguments.topic.empty() && arguments.topic != topic) continue;
    RuleList rules;
    for (const prover::Rule& rule : catalogue.rules) {
      if (rule.topic != topic) continue;
      rules.push_back(&rule);
      if (arguments.json) list.push_back(rule_json(rule, catalogue));
    }
    page.blocks.push_back(Heading{2, "Topic " + topic});
    page.blocks.push_back(arguments.wording == "all" ? wordings_of(rules, arguments.format != "text")
                                                     : list_of(rules, register_named(arguments.wording)));
  }
  const std::string text = arguments.json ? json_page(list) : renderer_named(arguments.format)->render(page, {});
  return write_answer(text) ? status_proved : status_mistake;
}

}  // namespace frontend
