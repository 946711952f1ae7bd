// The published table of reasons beside our catalogue: every row is a rule, or rules/README.md says why it is
// not one or not yet; kinds agree; a school's wording is there exactly where the table has a phrase, made of
// the words of that phrase, and marked as recalled exactly where the table has it from memory.
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "prover/rule/name_index.hpp"
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

void cut(std::string& text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != text.npos; at = text.find(from)) {
    const std::size_t end = text.find(to, at + from.size());
    text.erase(at, end == text.npos ? end : end + to.size() - at);
  }
}
std::vector<std::string> split(const std::string& text, const std::string& mark) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at != text.npos;) {
    const std::size_t end = text.find(mark, at);
    parts.push_back(text.substr(at, end == text.npos ? end : end - at));
    at = end == text.npos ? end : end + mark.size();
  }
  return parts;
}
// The forms of a published cell, by the conventions of the table: "[5]" counts the official lines, OR and / join
// forms, brackets hold a variant or a note, "; AB ∥ CD" stands for the lines of the proof.
std::vector<std::string> forms_of(std::string cell) {
  cut(cell, "[", "] ");
  cut(cell, "; AB ∥ CD", "");
  cut(cell, "; AB ∥ DC", "");
  cut(cell, " and converse", "");
  return split(cell, " OR ");
}
bool names(const NameIndex& index, const std::string& said, RuleId rule) {
  const Called* called = index.find(said);
  return called && called->rules.contains(rule.index());
}
// As it stands, without its brackets, the words in brackets alone, or each part between semicolons.
bool is_known(const NameIndex& index, const std::string& form, RuleId rule) {
  if (names(index, form, rule)) return true;
  std::string bare = form;
  cut(bare, " (", ")");
  cut(bare, "(", ") ");
  if (names(index, bare, rule)) return true;
  const std::size_t open = form.find('('), close = form.find(')');
  if (open != form.npos && close != form.npos && names(index, form.substr(open + 1, close - open - 1), rule)) return true;
  for (const char* mark : {"; ", " / "}) {
    const std::vector<std::string> parts = split(form, mark);
    if (parts.size() > 1 && std::all_of(parts.begin(), parts.end(),
                                        [&](const std::string& part) { return is_known(index, part, rule); }))
      return true;
  }
  return false;
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

TEST_CASE("every published form of a reason is understood as that reason") {
  const Catalogue& catalogue = standard_catalogue();
  const NameIndex index(catalogue);
  std::size_t forms = 0;
  for (const Row& row : published()) {
    const auto id = catalogue.find(row.id);
    if (!id || catalogue[*id].meaning) continue;  // a meaning is written as the phrase of the problem, "given (AB = AC)"
    for (std::size_t i = 0; i < registers.size(); ++i) {
      if (row.phrase[i] == "–") continue;
      for (const std::string& form : forms_of(row.phrase[i])) {
        // "…" is for the class to complete, "same, …" and "Converse of the above" point to the row before.
        if (form.find("…") != form.npos || form.rfind("same, ", 0) == 0 || form.find("the above") != form.npos) continue;
        INFO(row.id << ", " << name_of(registers[i]) << ": " << form);
        CHECK(is_known(index, form, *id));
        ++forms;
      }
    }
  }
  CHECK(forms > 250);
  CHECK_FALSE(is_known(index, "alt ∠s", *catalogue.find("corresponding-angles")));
  CHECK_FALSE(is_known(index, "Z angles", *catalogue.find("alternate-interior-angles")));  // refused, UK notes
}

TEST_CASE("a wording has the source that the published row has") {
  const Catalogue& catalogue = standard_catalogue();
  for (const Row& row : published()) {
    const auto id = catalogue.find(row.id);
    if (!id) continue;
    for (std::size_t i = 0; i < registers.size(); ++i) {
      if (row.phrase[i] == "–") continue;
      INFO(row.id << ", " << name_of(registers[i]));
      const std::string expected = row.mark[i] == "m" ? "from memory" : row.mark[i] == "sec" ? "secondary notes" : row.mark[i];
      CHECK(wording_source(catalogue[*id], registers[i]) == expected);
    }
  }
}
