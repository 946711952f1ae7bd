#include <mutex>

#include "prover/marking/reason.hpp"
#include "prover/marking/reason_tables.hpp"

namespace prover {
namespace {

constexpr std::string_view ending = "-converse";

// The pairs of the table by id, both ways.
const std::map<std::string, std::string, std::less<>>& irregular() {
  static const auto pairs = [] {
    std::map<std::string, std::string, std::less<>> made;
    for (const TableRow& row : table_rows(builtin_reason_tables().converses)) {
      const std::vector<std::string> pair = parts_of(row.columns[0], ' ');
      if (pair.size() != 2) continue;
      made.emplace(pair[0], pair[1]);
      made.emplace(pair[1], pair[0]);
    }
    return made;
  }();
  return pairs;
}

std::optional<RuleId> by_id(const std::string& id, const Catalogue& catalogue) {
  // The ending may stand inside: "tangent-chord-angle-converse-circumcircle".
  if (const std::size_t at = id.find(ending); at != id.npos)
    if (const auto found = catalogue.find(id.substr(0, at) + id.substr(at + ending.size()))) return found;
  if (const auto found = catalogue.find(id + std::string(ending))) return found;
  if (const auto pair = irregular().find(id); pair != irregular().end()) return catalogue.find(pair->second);
  return std::nullopt;
}

}  // namespace

std::optional<RuleId> converse_of(RuleId rule, const Catalogue& catalogue) {
  const Rule& asked = catalogue[rule];
  if (const auto found = by_id(asked.id, catalogue)) return found;
  if (asked.family.empty()) return std::nullopt;
  if (const auto found = by_id(asked.family, catalogue)) return found;
  return std::nullopt;
}

}  // namespace prover
