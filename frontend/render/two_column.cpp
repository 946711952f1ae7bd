#include "frontend/render/two_column.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "frontend/document/references.hpp"
#include "frontend/render/width.hpp"

namespace frontend {

namespace {

constexpr std::size_t widest_claim = 56;  // a longer row pushes its reason to the next line
constexpr std::size_t gap = 3;

// The rows of a claim as they stand in the left column: "=" under "=", also where a line goes on with the one before,
// whose sign stands at `indent`.
std::vector<std::string> rows_in_column(const ProofLine& line, std::size_t& indent) {
  std::vector<std::string> rows = rows_of_claim(line);
  if (!rows.empty() && !rows.front().starts_with('=')) indent = 4;
  for (std::string& row : rows) {
    if (row.starts_with('=')) {
      row.insert(0, indent, ' ');
    } else {
      const std::size_t sign = row.find('=');
      indent = sign == std::string::npos ? 4 : display_width(row.substr(0, sign));
    }
  }
  return rows;
}

std::string without_trailing_spaces(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

}  // namespace

std::vector<std::string> two_column_lines(const ProofLines& proof, std::size_t width) {
  const References references = references_of(proof);
  std::vector<std::vector<std::string>> claims;
  std::size_t claim_width = 0, indent = 4;
  for (const ProofLine& line : proof.lines) {
    claims.push_back(rows_in_column(line, indent));
    for (const std::string& row : claims.back()) {
      const std::size_t row_width = display_width(row);
      if (row_width <= widest_claim) claim_width = std::max(claim_width, row_width);
    }
  }
  const std::size_t numbers =
      references.any ? std::string("()  ").size() + std::to_string(proof.lines.back().number).size() : 0;
  const std::size_t reason_column = numbers + claim_width + gap;
  const std::size_t reason_width = width > reason_column + 20 ? width - reason_column : 20;

  std::vector<std::string> result;
  for (std::size_t i = 0; i < proof.lines.size(); ++i) {
    const std::string number = references.numbered[i] ? fmt::format("({})", proof.lines[i].number) : "";
    std::vector<std::string> left;
    for (std::size_t row = 0; row < claims[i].size(); ++row) {
      left.push_back(padded(row == 0 ? number : "", numbers) + claims[i][row]);
    }
    const std::string reason = with_references(proof.lines[i].reason, references.named[i]);
    std::vector<std::string> right = reason.empty() ? std::vector<std::string>{} : wrapped_at_commas(reason, reason_width);
    // A wide row must not run into a reason: the reason starts below it.
    std::size_t wide = 0;
    for (std::size_t row = 0; row < left.size() && row < right.size() + wide; ++row) {
      if (display_width(left[row]) + gap > reason_column) wide = row + 1;
    }
    right.insert(right.begin(), right.empty() ? 0 : wide, "");
    for (std::size_t row = 0; row < std::max(left.size(), right.size()); ++row) {
      const std::string claim = row < left.size() ? left[row] : "";
      const std::string why = row < right.size() ? right[row] : "";
      result.push_back(without_trailing_spaces(why.empty() ? claim : padded(claim, reason_column) + why));
    }
  }
  return result;
}

}  // namespace frontend
