#include "frontend/command/rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

#include "frontend/command/catalogue.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/library_page.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/rule_page.hpp"

namespace frontend {

namespace {

struct RulesArguments {
  std::string id;
  std::string topic;
  std::string wording = "plain";
  std::string format = "text";
  std::vector<std::string> folders;
  std::string course;
  bool prove_all = false;
  std::string from;
  bool json = false;
};

std::vector<std::string> topics_of(const prover::Catalogue& catalogue) {
  std::vector<std::string> topics;
  for (const prover::Rule& rule : catalogue.rules) {
    if (std::find(topics.begin(), topics.end(), rule.topic) == topics.end()) topics.push_back(rule.topic);
  }
  return topics;
}

std::vector<prover::Register> wordings_of(const std::string& name) {
  if (name != "all") return {register_named(name)};
  std::vector<prover::Register> all;
  for (const NamedRegister& named : registers()) all.push_back(named.wording);
  return all;
}

int show_one(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  const auto ids = rule_ids(catalogue, {arguments.id}, "rules");
  if (!ids) return status_mistake;
  const prover::Rule& rule = catalogue[*catalogue.find(arguments.id)];
  const std::string text = arguments.json ? json_page(rule_json(rule))
                                          : renderer_named(arguments.format)->render(rule_page(rule), {});
  return write_answer(text) ? status_proved : status_mistake;
}

int show_list(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  RuleList rules;
  for (const prover::Rule& rule : catalogue.rules) {
    if (arguments.topic.empty() || rule.topic == arguments.topic) rules.push_back(&rule);
  }
  if (rules.empty() && !arguments.topic.empty()) {
    const auto nearest = prover::nearest_word(arguments.topic, topics_of(catalogue));
    std::string all;
    for (const std::string& topic : topics_of(catalogue)) all += (all.empty() ? "" : ", ") + topic;
    write_message(fmt::format("--topic: there is no topic \"{}\"\n  try: {}", arguments.topic,
                              nearest ? *nearest : all));
    return status_mistake;
  }
  std::string text;
  if (arguments.json) {
    Json list = Json::array();
    for (const prover::Rule* rule : rules) list.push_back(rule_json(*rule));
    text = json_page(list);
  } else {
    text = renderer_named(arguments.format)->render(rule_list_page(rules, wordings_of(arguments.wording)), {});
  }
  return write_answer(text) ? status_proved : status_mistake;
}

// The theorems of a course proved from the ones before, all or one with what it rests on.
int show_proved(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  const prover::Course* course = arguments.course.empty() ? &prover::default_course(catalogue)
                                                          : prover::find_course(catalogue, arguments.course);
  if (course == nullptr) {
    std::string all;
    for (const prover::Course& one : catalogue.courses) all += (all.empty() ? "" : ", ") + one.id;
    write_message(fmt::format("--course: there is no course \"{}\"\n  try: {}", arguments.course, all));
    return status_mistake;
  }
  prover::LibraryOptions options;
  const auto reports = prover::prove_library(catalogue, *course, options);
  std::string text;
  if (arguments.from.empty()) {
    text = arguments.json ? json_page(library_json(catalogue, *course, reports))
                          : renderer_named(arguments.format)->render(library_page(catalogue, *course, reports), {});
  } else {
    const auto ids = rule_ids(catalogue, {arguments.from}, "--from");
    if (!ids) return status_mistake;
    const prover::RuleId rule = *catalogue.find(arguments.from);
    text = arguments.json             ? json_page(theorem_json(catalogue, reports, rule))
           : arguments.format == "dot" ? theorem_dot(catalogue, reports, rule)
                                       : renderer_named(arguments.format)->render(theorem_page(catalogue, reports, rule), {});
  }
  return write_answer(text) ? status_proved : status_mistake;
}

}  // namespace

Run declare_rules(CLI::App& app) {
  auto arguments = std::make_shared<RulesArguments>();
  std::vector<std::string> wordings = register_names();
  wordings.emplace_back("all");
  app.add_option("ID", arguments->id, "Show all about this rule")->type_name("");
  app.add_option("--topic", arguments->topic, "Only the rules of this topic")->type_name("TOPIC");
  app.add_option("--wording", arguments->wording, "Wording of the reasons: plain, us, uk, sa or all")
      ->type_name("REGISTER")
      ->check(one_of(wordings));
  app.add_option("--format", arguments->format, "The page as text or markdown")
      ->type_name("FORMAT")
      ->check(one_of(format_names()));
  app.add_option("--rules", arguments->folders, "Add the rule files in this folder (repeatable)")
      ->type_name("FOLDER")
      ->take_all()
      ->allow_extra_args(false);
  app.add_flag("--prove-all", arguments->prove_all, "Prove every theorem from those taught before it");
  app.add_option("--from", arguments->from, "What this rule rests on: its proof and its ancestors")->type_name("ID");
  app.add_option("--course", arguments->course, "The course whose order counts")->type_name("COURSE");
  app.add_flag("--json", arguments->json, "As JSON");
  return [arguments](Session&) {
    const CataloguePointer catalogue = catalogue_with(arguments->folders);
    if (!catalogue) return status_mistake;
    if (arguments->prove_all || !arguments->from.empty()) return show_proved(*arguments, *catalogue);
    return arguments->id.empty() ? show_list(*arguments, *catalogue) : show_one(*arguments, *catalogue);
  };
}

}  // namespace frontend
