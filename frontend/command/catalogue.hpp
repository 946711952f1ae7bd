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

// Null, with the mistakes on standard error, when a folder or a rule in it cannot be read.
CataloguePointer catalogue_with(const std::vector<std::string>& folders);

// The ids of a comma-separated list; null, with the nearest id suggested on standard error, when one is not known.
std::optional<std::vector<std::string>> rule_ids(const prover::Catalogue& catalogue,
                                                 const std::vector<std::string>& lists, const std::string& option);

std::vector<std::string> parts_of_list(const std::string& list);  // at commas, trimmed, none empty

}  // namespace frontend
