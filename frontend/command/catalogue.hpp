// The rules in force: those compiled in, and those of the folders that the user adds. Opening files is done here;
// reading them is the prover's.
#pragma once
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"

namespace frontend {

using CataloguePointer = std::shared_ptr<const prover::Catalogue>;

// All rules that can be read. The mistakes in those that cannot are on standard error, and the command that goes on
// without them ends with status 2.
struct LoadedRules {
  CataloguePointer catalogue;  // null when a folder or a file in it cannot be opened
  bool broken = false;         // a rule or course was left out
  int status(int of_the_command) const;  // what the command would end with without them
};
LoadedRules catalogue_with(const std::vector<std::string>& folders);

// Null, with the nearest name suggested on standard error, when there is no such course.
const prover::Course* course_named(const prover::Catalogue& catalogue, const std::string& id);

// The rule files of the folders; nothing, with a message on standard error, when one cannot be opened.
std::optional<std::vector<prover::RuleFile>> rule_files_in(const std::vector<std::string>& folders);

// The ids of a comma-separated list; null, with the nearest id suggested on standard error, when one is not known.
std::optional<std::vector<std::string>> rule_ids(const prover::Catalogue& catalogue,
                                                 const std::vector<std::string>& lists, const std::string& option);

std::vector<std::string> parts_of_list(const std::string& list);  // at commas, trimmed, none empty

}  // namespace frontend
