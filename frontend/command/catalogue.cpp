#include "frontend/command/catalogue.hpp"

#include <fmt/format.h>

#include <cstdio>

#include "frontend/command/command.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/output.hpp"

namespace frontend {

namespace {

// The rule, course and hint files of a folder; nothing when it or one of them cannot be opened.
std::optional<std::vector<prover::RuleFile>> files_of(const std::string& folder) {
  const FolderListing listing = files_below(folder, ".rule");
  std::vector<std::string> names = listing.names;
  for (const char* ending : {".course", ".hints"})
    for (const std::string& name : files_below(folder, ending).names) names.push_back(name);
  std::string mistake = listing.mistake;
  if (mistake.empty() && names.empty()) mistake = "there is no file *.rule, *.course or *.hints in " + folder;
  std::vector<prover::RuleFile> files;
  for (const std::string& name : names) {
    Input input = read_text(folder + "/" + name, {});
    if (!input.text) {
      mistake = input.mistake;
      break;
    }
    files.push_back({name, std::move(*input.text)});
  }
  if (mistake.empty()) return files;
  write_message(mistake);
  return std::nullopt;
}

}  // namespace

int LoadedRules::status(int of_the_command) const {
  return broken && of_the_command != status_disagreement ? status_mistake : of_the_command;
}

std::optional<std::vector<prover::RuleFile>> rule_files_in(const std::vector<std::string>& folders) {
  std::vector<prover::RuleFile> files;
  for (const std::string& folder : folders) {
    auto added = files_of(folder);
    if (!added) return std::nullopt;
    files.insert(files.end(), added->begin(), added->end());
  }
  return files;
}

LoadedRules catalogue_with(const std::vector<std::string>& folders) {
  if (folders.empty()) return {CataloguePointer(std::shared_ptr<void>(), &prover::standard_catalogue())};
  std::vector<prover::RuleFile> files = prover::builtin_rule_files();
  const auto added = rule_files_in(folders);
  if (!added) return {};
  files.insert(files.end(), added->begin(), added->end());
  prover::LoadedCatalogue loaded = prover::load_catalogue(files);
  LoadedRules result;
  for (const auto& [file, mistakes] : loaded.mistakes) {
    for (const prover::Diagnostic& mistake : mistakes) {
      fmt::print(stderr, "{}", prover::render(mistake, file.name, file.text));
    }
    result.broken = result.broken || prover::has_error(mistakes);
  }
  for (prover::Rule& rule : loaded.catalogue.rules) rule.assumed = !prover::standard_catalogue().find(rule.id);
  result.catalogue = std::make_shared<prover::Catalogue>(std::move(loaded.catalogue));
  return result;
}

const prover::Course* course_named(const prover::Catalogue& catalogue, const std::string& id) {
  if (const prover::Course* course = prover::find_course(catalogue, id)) return course;
  std::vector<std::string> ids;
  std::string all;
  for (const prover::Course& course : catalogue.courses) {
    ids.push_back(course.id);
    all += (all.empty() ? "" : ", ") + course.id;
  }
  const auto nearest = prover::nearest_word(id, ids);
  write_message(fmt::format("--course: there is no course \"{}\"\n  try: {}", id, nearest ? *nearest : all));
  return nullptr;
}

std::vector<std::string> parts_of_list(const std::string& list) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  while (from <= list.size()) {
    const std::size_t comma = std::min(list.find(',', from), list.size());
    const std::size_t first = list.find_first_not_of(" \t", from);
    if (first < comma) {
      const std::size_t last = list.find_last_not_of(" \t", comma - 1);
      parts.push_back(list.substr(first, last - first + 1));
    }
    from = comma + 1;
  }
  return parts;
}

std::optional<std::vector<std::string>> rule_ids(const prover::Catalogue& catalogue,
                                                 const std::vector<std::string>& lists, const std::string& option) {
  std::vector<std::string> ids;
  bool all_known = true;
  for (const std::string& list : lists) {
    for (const std::string& id : parts_of_list(list)) {
      if (catalogue.find(id)) {
        ids.push_back(id);
        continue;
      }
      all_known = false;
      const auto nearest = prover::nearest_word(id, catalogue.ids());
      write_message(fmt::format("{}: there is no rule \"{}\"\n  try: {}", option, id,
                                nearest ? *nearest : "\"anglewright rules\" lists all rules"));
    }
  }
  if (!all_known) return std::nullopt;
  return ids;
}

}  // namespace frontend
