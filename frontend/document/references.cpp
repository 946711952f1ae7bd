#include "frontend/document/references.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace frontend {

namespace {

// The lines just above, with nothing between: {3, 4} for line 5, but not {2, 4}.
bool are_just_above(const std::set<int>& uses, int number) {
  return uses.empty() || (*uses.rbegin() == number - 1 && *uses.begin() == number - static_cast<int>(uses.size()));
}

}  // namespace

References references_of(const ProofLines& proof) {
  References result;
  std::set<int> named;
  for (const ProofLine& line : proof.lines) {
    const std::set<int> uses(line.uses.begin(), line.uses.end());
    if (are_just_above(uses, line.number)) {
      result.named.emplace_back();
    } else {
      result.named.emplace_back(uses.begin(), uses.end());
      named.insert(uses.begin(), uses.end());
    }
  }
  for (const ProofLine& line : proof.lines) result.numbered.push_back(named.contains(line.number));
  result.any = !named.empty();
  return result;
}

std::vector<std::string> rows_of_claim(const ProofLine& line) {
  std::vector<std::string> rows = line.rows;
  if (!line.closing) return rows;
  const auto relation =
      std::find_if(rows.rbegin(), rows.rend(), [](const std::string& row) { return !row.starts_with('='); });
  if (relation == rows.rend()) return rows;  // a chain that ends with the claim goes on as it is
  if (relation->starts_with("so ")) relation->erase(0, 3);
  relation->insert(0, "∴ ");
  return rows;
}

std::string enumerate(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 == parts.size() ? " and " : ", ";
    text += parts[i];
  }
  return text;
}

std::string with_references(const std::string& reason, const std::vector<int>& named) {
  if (named.empty()) return reason;
  std::vector<std::string> numbers;
  for (const int number : named) numbers.push_back(fmt::format("({})", number));
  if (reason.empty()) return "from " + enumerate(numbers);
  // "substituting (1) and (3)" reads on; after places a comma is needed.
  return reason + (reason == "substituting" ? " " : ", from ") + enumerate(numbers);
}

}  // namespace frontend
