#include "frontend/command/rules_save.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>

#include "frontend/command/catalogue.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/status.hpp"
#include "prover/library/save_rule.hpp"

namespace frontend {

namespace {

bool is_name(const std::string& name) {
  return !name.empty() && name.front() != '-' && name.back() != '-' &&
         std::all_of(name.begin(), name.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
}

}  // namespace

int save_rule(const SaveArguments& arguments, const std::vector<std::string>& folders, Session& session) {
  if (!is_name(arguments.name)) {
    write_message("--save: a rule is named in small letters, digits and hyphens\n  try: two-laths-one-knot");
    return status_mistake;
  }
  std::vector<std::string> with_rules;  // the folder may be new and hold none yet
  for (const std::string& folder : folders)
    if (!files_below(folder, ".rule").names.empty()) with_rules.push_back(folder);
  const LoadedRules loaded = catalogue_with(with_rules);
  if (!loaded.catalogue) return status_mistake;
  const Input input = read_text(arguments.problem, session.interrupt.token());
  if (!input.text) {
    write_message(input.mistake);
    return status_mistake;
  }
  const std::filesystem::path path =
      std::filesystem::path(folders.empty() ? "." : folders.front()) / (arguments.name + ".rule");
  if (std::filesystem::exists(path) && !arguments.force) {
    write_message(path.string() + " is there already\n  try: another name, or --force to write over it");
    return status_mistake;
  }
  const prover::RuleToSave rule = prover::rule_from_problem(arguments.name, *input.text, *loaded.catalogue, arguments.assume,
                                                            prover::Budget::seconds(20, session.interrupt.token()));
  for (const prover::Diagnostic& mistake : rule.diagnostics)
    fmt::print(stderr, "{}", prover::render(mistake, arguments.problem == "-" ? "standard input" : arguments.problem, *input.text));
  if (rule.file.empty()) {
    write_message("not saved: " + rule.objection + (arguments.assume || !rule.may_be_assumed ? "" : "\n  try: --assume saves a rule that is not proved; every proof that cites it says so"));
    return prover::has_error(rule.diagnostics) ? status_mistake : status_other;
  }
  if (!write_file(path, rule.file)) return status_mistake;
  const std::string said = rule.proved ? fmt::format("Saved {}: proved from the catalogue.\n", path.string())
                                       : fmt::format("Saved {} as an assumption ({}).\n", path.string(), rule.objection);
  return write_answer(said) ? loaded.status(status_proved) : status_mistake;
}

}  // namespace frontend
