// The published table of reasons beside our catalogue: every row is a rule, or rules/README.md says why it is
// not one or not yet; kinds agree; a school's wording is there exactly where the table has a phrase, made of
// the words of that phrase, and marked as recalled exactly where the table has it from memory.
#include <array>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "prover/rule/rule.hpp"
#include "prover/rule/wording.hpp"

using namespace prover;

namespace {

const std::filesystem::path folder = std::filesystem::path(__FILE__).parent_path();

struct Row {
  std::string id, direction;
  std::array<std::string, 3> phrase, mark;  // us, uk, sa
};

std::vector<Row> published() {
  std::ifstream in(folder / "reasons.tsv");
  REQUIRE(in);
  std::vector<Row> rows;
  for (std::string line; std::getline(in, line);) {
    if (line.empty() || line[0] == '#') continue;
    std::istringstream cells(line);
    Row row;
    const auto cell = [&](std::string& to) { std::getline(cells, to, '\t'); };
    cell(row.id);
    cell(row.direction);
    for (std::size_t i = 0; i < 3; ++i) {
      cell(row.phrase[i]);
      cell(row.mark[i]);
    }
    rows.push_back(row);
  }
  return rows;
}

std::set<std::string> words(std::string text) {
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (std::string_view(".,;()").find(c) != std::string_view::npos) c = ' ';
  }
  std::istringstream in(text);
  std::set<std::string> out;
  for (std::string word; in >> word;) out.insert(word);
  return out;
}

constexpr std::array<Register, 3> registers = {Register::us, Register::uk, Register::sa};

}  // namespace

TEST_CASE("every published row is a rule, or the reason why not is written down") {
  std::ifstream in(folder.parent_path().parent_path() / "rules" / "README.md");
  REQUIRE(in);
  const std::string readme{std::istreambuf_iterator<char>(in), {}};
  const std::vector<Row> rows = published();
  CHECK(rows.size() == 163);
  for (const Row& row : rows) {
    INFO(row.id);
    const bool is_rule = standard_catalogue().find(row.id).has_value();
    const bool is_explained = readme.find("`" + row.id + "`") != std::string::npos;
    CHECK((is_rule || is_explained));
  }
}

TEST_CASE("kinds and wordings agree with the published rows") {
  const Catalogue& catalogue = standard_catalogue();
  for (const Row& row : published()) {
    const auto id = catalogue.find(row.id);
    if (!id) continue;
    const Rule& rule = catalogue[*id];
    INFO(row.id);
    if (rule.builtin != Builtin::join) CHECK(name_of(rule.kind) == row.direction);
    for (std::size_t i = 0; i < registers.size(); ++i) {
      const auto wording = rule.wording.find(registers[i]);
      INFO(name_of(registers[i]) << ": " << row.phrase[i]);
      CHECK((wording != rule.wording.end()) == (row.phrase[i] != "–"));
      if (wording == rule.wording.end()) continue;
      const auto recalled = rule.recalled.find(registers[i]);
      CHECK((recalled != rule.recalled.end() && recalled->second) == (row.mark[i] == "m"));
      if (row.phrase[i].find("…") != std::string::npos) continue;  // a phrase that each class completes
      const std::set<std::string> known = words(row.phrase[i]);
      for (const std::string& word : words(wording_without_places(wording->second))) {
        INFO(word);
        CHECK(known.contains(word));
      }
    }
  }
}
