#include "frontend/command/rules_lint.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "frontend/command/answer_json.hpp"
#include "frontend/command/catalogue.hpp"
#include "frontend/command/command.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/output.hpp"
#include "prover/measure/lint_rules.hpp"

namespace frontend {

namespace {

std::string_view word(prover::Severity severity) {
  switch (severity) {
    case prover::Severity::error: return "error";
    case prover::Severity::warning: return "warning";
    case prover::Severity::note: return "note";
  }
  return "";
}

struct Found {
  std::string rule;
  prover::RuleFile file;
  std::vector<prover::Diagnostic> findings;
};

Json json_of(const Found& found) {
  Json list = Json::array();
  for (const prover::Diagnostic& one : found.findings) {
    const prover::LineColumn at = prover::line_column(found.file.text, one.span.begin);
    Json entry{{"file", found.file.name}, {"line", at.line},         {"column", at.column},
               {"severity", word(one.severity)}, {"message", one.message}, {"way_out", one.way_out}};
    if (!found.rule.empty()) entry["rule"] = found.rule;
    list.push_back(std::move(entry));
  }
  return list;
}

}  // namespace

int lint_command(const std::string& id, const std::vector<std::string>& folders, bool as_json) {
  const auto added = rule_files_in(folders);
  if (!added) return status_mistake;
  std::vector<prover::RuleFile> files = prover::builtin_rule_files();
  files.insert(files.end(), added->begin(), added->end());
  const prover::LoadedCatalogue loaded = prover::load_catalogue(files);
  std::vector<Found> all;
  for (const auto& [file, mistakes] : loaded.mistakes) all.push_back({"", file, mistakes});

  prover::LintOptions options;
  if (!id.empty()) {
    const auto ids = rule_ids(loaded.catalogue, {id}, "rules");
    if (!ids) return status_mistake;
    options.ids = *ids;
  } else if (!folders.empty()) {
    const auto standard = prover::standard_catalogue().ids();
    for (const std::string& one : loaded.catalogue.ids())
      if (std::find(standard.begin(), standard.end(), one) == standard.end()) options.ids.push_back(one);
  }
  const bool none_loaded = id.empty() && !folders.empty() && options.ids.empty();
  if (!none_loaded)
    for (prover::LintedRule& linted : prover::lint_rules(loaded.catalogue, files, options))
      all.push_back({loaded.catalogue[linted.rule].id, std::move(linted.file), std::move(linted.findings)});

  std::string text;
  Json list = Json::array();
  std::size_t findings = 0;
  bool errors = false;
  for (const Found& found : all) {
    findings += found.findings.size();
    errors = errors || prover::has_error(found.findings);
    for (const prover::Diagnostic& one : found.findings) text += prover::render(one, found.file.name, found.file.text);
    for (Json& entry : json_of(found)) list.push_back(std::move(entry));
  }
  const std::size_t rules = none_loaded ? 0 : options.ids.empty() ? loaded.catalogue.rules.size() : options.ids.size();
  text += fmt::format("{} rule{} linted: {}\n", rules, rules == 1 ? "" : "s",
                      findings == 0 ? "nothing to say" : fmt::format("{} finding{}", findings, findings == 1 ? "" : "s"));
  if (!write_answer(as_json ? json_page(list) : text)) return status_mistake;
  return errors ? status_mistake : findings > 0 ? status_other : status_proved;
}

}  // namespace frontend
