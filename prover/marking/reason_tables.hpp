// The tables of rules/reasons, compiled into the program: what pupils' words mean, as data.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace prover {

struct ReasonTables {
  std::string_view words;      // words.table: what means the same
  std::string_view said;       // said.table: how pupils name a rule
  std::string_view refused;    // refused.table: nicknames, too little, by eye, given, plain working
  std::string_view converses;  // converses.table: pairs whose ids do not say it
};
const ReasonTables& builtin_reason_tables();

// The rows of a table: columns parted by '|', trimmed; comments and blank lines left out.
struct TableRow {
  int line = 0;  // from 1
  std::vector<std::string> columns;
};
std::vector<TableRow> table_rows(std::string_view table);

// `text` parted at `mark`, each part trimmed; empty parts are left out.
std::vector<std::string> parts_of(std::string_view text, char mark);

}  // namespace prover
