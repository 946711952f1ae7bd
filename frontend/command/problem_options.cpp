#include "frontend/command/problem_options.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdio>

#include "frontend/command/choices.hpp"
#include "frontend/command/output.hpp"

namespace frontend {

namespace {

std::string limit_mistake(const std::string& text) {
  double limit = 0;
  if (CLI::detail::lexical_cast(text, limit) && std::isfinite(limit) && limit > 0 && limit <= 86400) return "";
  return "is a number of seconds above 0 and at most 86400, not \"" + text + "\"";
}

// The list read as the line `taught:` of a problem; its mistakes are shown with their place in the list.
bool read_taught(const std::string& list, const prover::Catalogue& catalogue, prover::ProveOptions& options) {
  const std::string keyword = "taught: ";
  const prover::TaughtRules rules = prover::taught_rules(catalogue, prover::parse_problem(keyword + list).taught);
  for (prover::Diagnostic mistake : rules.diagnostics) {
    mistake.span.begin -= std::min(mistake.span.begin, keyword.size());
    mistake.span.end -= std::min(mistake.span.end, keyword.size());
    fmt::print(stderr, "{}", prover::render(mistake, "--taught", list));
  }
  if (prover::has_error(rules.diagnostics)) return false;
  options.taught.push_back(list);
  return true;
}

}  // namespace

void declare(CLI::App& app, ProblemOptions& options) {
  app.add_option("--taught", options.taught,
                 "What the class may cite: rules, topics or courses, as in a problem's line \"taught:\"")
      ->type_name("LIST");
  app.add_option("--without", options.without, "Leave out these rules and what rests on them (repeatable)")
      ->type_name("RULE")
      ->take_all()
      ->allow_extra_args(false);
  app.add_option("--without-only", options.without_only, "Leave out these rules alone (repeatable)")
      ->type_name("RULE")
      ->take_all()
      ->allow_extra_args(false);
  app.add_option("--measure", options.measure, "What makes a proof short: classroom, fewest-steps or early")
      ->type_name("MEASURE")
      ->check(one_of(measure_names()));
  app.add_option("--limit", options.limit, "Stop after this time for a problem; the default is 2")
      ->type_name("SECONDS")
      ->check(CLI::Validator(limit_mistake, ""));
  app.add_option("--wording", options.wording, "Wording of the reasons: plain, us, uk or sa")
      ->type_name("REGISTER")
      ->check(one_of(register_names()));
  app.add_option("--rules", options.rule_folders, "Add the rule files in this folder (repeatable)")
      ->type_name("FOLDER")
      ->take_all()
      ->allow_extra_args(false);
  app.add_flag("--unfold", options.unfold, "Put the proof of a rule of your own in the place of its citation");
  app.add_flag("--times", options.times, "Add the time that each stage took");
}

std::optional<Setting> setting_of(const ProblemOptions& options) {
  Setting setting;
  setting.rules = catalogue_with(options.rule_folders);
  setting.catalogue = setting.rules.catalogue;
  if (!setting.catalogue) return std::nullopt;
  auto without = rule_ids(*setting.catalogue, options.without, "--without");
  auto without_only = rule_ids(*setting.catalogue, options.without_only, "--without-only");
  const bool taught_known = options.taught.empty() || read_taught(options.taught, *setting.catalogue, setting.options);
  if (!without || !without_only || !taught_known) return std::nullopt;
  setting.options.measure = options.measure;
  setting.options.without.insert(setting.options.without.end(), without->begin(), without->end());
  setting.options.without_only = *without_only;
  setting.options.wording = register_named(options.wording);
  setting.options.unfold = options.unfold;
  setting.limit = options.limit;
  return setting;
}

prover::Answer Setting::prove(const std::string& text, std::stop_token stop) const {
  prover::ProveOptions now = options;
  now.budget = prover::Budget::seconds(limit, std::move(stop));
  return prover::prove(text, *catalogue, now);
}

}  // namespace frontend
