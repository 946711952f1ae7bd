#include "prover/marking/reason_tables.hpp"

#include <algorithm>

namespace prover {
namespace {

std::string trimmed(std::string_view text) {
  const std::size_t begin = text.find_first_not_of(" \t\r");
  if (begin == text.npos) return {};
  return std::string(text.substr(begin, text.find_last_not_of(" \t\r") - begin + 1));
}

}  // namespace

std::vector<std::string> parts_of(std::string_view text, char mark) {
  std::vector<std::string> parts;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(mark), text.size());
    if (std::string part = trimmed(text.substr(0, end)); !part.empty()) parts.push_back(std::move(part));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return parts;
}

std::vector<TableRow> table_rows(std::string_view table) {
  std::vector<TableRow> rows;
  int number = 0;
  while (!table.empty()) {
    ++number;
    const std::size_t end = std::min(table.find('\n'), table.size());
    std::string_view line = table.substr(0, end);
    table.remove_prefix(std::min(end + 1, table.size()));
    if (line.starts_with('#')) continue;
    if (TableRow row{number, parts_of(line, '|')}; !row.columns.empty()) rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace prover
