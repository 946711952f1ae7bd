// Every cell of the published table of reasons (tests/rules/reasons.tsv, with its sources) is read as the rule of its row, in each of
// its forms.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "prover/marking/reason.hpp"

using namespace prover;

namespace {

struct Cell {
  std::string id, text;
  Register wording;
};

std::vector<std::string> split(const std::string& text, const std::string& mark) {
  std::vector<std::string> parts;
  std::size_t at = 0;
  while (true) {
    const std::size_t end = text.find(mark, at);
    parts.push_back(text.substr(at, end == text.npos ? end : end - at));
    if (end == text.npos) return parts;
    at = end + mark.size();
  }
}

// Notes in our own words ("– (angle sum of both)") are no phrases of a school; "…" leaves places open.
std::vector<Cell> cells() {
  std::ifstream in(std::filesystem::path(TESTS_DIR) / "rules/reasons.tsv");
  REQUIRE(in);
  std::vector<Cell> all;
  for (std::string line; std::getline(in, line);) {
    if (line.empty() || line[0] == '#') continue;
    const std::vector<std::string> columns = split(line, "\t");
    REQUIRE(columns.size() == 8);
    const Register wordings[] = {Register::us, Register::uk, Register::sa};
    for (std::size_t i = 0; i < 3; ++i)
      for (const std::string& form : split(columns[2 + 2 * i], " OR "))
        if (!form.empty() && form.rfind("–", 0) != 0 && form.find("…") == form.npos) all.push_back({columns[0], form, wordings[i]});
  }
  return all;
}

}  // namespace

TEST_CASE("every published phrase for a reason names the rule of its row", "[reason]") {
  const Catalogue& catalogue = standard_catalogue();
  Names names;
  for (char c = 'A'; c <= 'Z'; ++c) names.points.emplace_back(1, c);
  std::size_t read = 0;
  for (const Cell& cell : cells()) {
    const auto of_row = [&](RuleId rule) { return catalogue[rule].id == cell.id || catalogue[rule].family == cell.id; };
    bool known = false;
    for (std::size_t r = 0; r < catalogue.rules.size(); ++r) known = known || of_row(RuleId(static_cast<std::int64_t>(r)));
    if (!known) continue;  // rules/README.md says which rows are no rules, and why
    bool found = false;
    // What stands in brackets at the end may be a note: "3rd ∠ of Δ (sum of ∠s in Δ)".
    for (const std::string& text : {cell.text, cell.text.substr(0, cell.text.find(" ("))})
      for (const ReadReason& reason : read_reason(text, names, catalogue, cell.wording)) found = found || std::any_of(reason.rules.begin(), reason.rules.end(), of_row);
    INFO(cell.id << " (" << name_of(cell.wording) << "): " << cell.text);
    CHECK(found);
    ++read;
  }
  CHECK(read > 220);
}
