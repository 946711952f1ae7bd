// Every wording of every rule, in every register, with its places and without, is read as that rule; so are its title, its
// synonyms and its id.
#include <algorithm>
#include <catch2/catch.hpp>

#include "prover/marking/reason.hpp"
#include "prover/marking/reason_index.hpp"
#include "prover/rule/wording.hpp"

using namespace prover;

namespace {

Names letters() {
  Names names;
  for (char c = 'A'; c <= 'Z'; ++c) names.points.emplace_back(1, c);
  return names;
}

bool names_rule(const std::vector<ReadReason>& read, RuleId rule) {
  return read.size() == 1 && std::find(read[0].rules.begin(), read[0].rules.end(), rule) != read[0].rules.end();
}

// Printed letters other than the rule's own, so that no test depends on them.
std::vector<std::string> printed(const Rule& rule) {
  std::vector<std::string> place;
  for (std::size_t i = 0; i < rule.variables.points.size(); ++i)
    place.push_back(rule.variables.points[i].size() > 1 ? "TUVW" : std::string(1, static_cast<char>('Z' - i)));
  return place;
}

}  // namespace

TEST_CASE("the tables of reasons are read without a mistake", "[reason]") {
  for (const std::string& mistake : reason_index(standard_catalogue())->mistakes()) FAIL_CHECK(mistake);
}

TEST_CASE("every wording of every rule in every register names that rule", "[reason]") {
  const Catalogue& catalogue = standard_catalogue();
  for (std::size_t r = 0; r < catalogue.rules.size(); ++r) {
    const Rule& rule = catalogue.rules[r];
    const RuleId id(static_cast<std::int64_t>(r));
    for (const auto& [wording, text] : rule.wording) {
      const std::string full = fill_wording(rule, wording, printed(rule));
      INFO(rule.id << " (" << name_of(wording) << "): " << full);
      for (const Register asked : {wording, Register::plain, Register::uk}) CHECK(names_rule(read_reason(full, letters(), catalogue, asked), id));
      if (text.find('{') == text.npos) continue;
      const std::size_t mark = text.substr(0, text.find('{')).find_last_of(",;");
      if (mark == text.npos) continue;
      INFO("without places: " << text.substr(0, mark));
      CHECK(names_rule(read_reason(text.substr(0, mark), letters(), catalogue, wording), id));
    }
  }
}

TEST_CASE("titles, synonyms and ids name the rule", "[reason]") {
  const Catalogue& catalogue = standard_catalogue();
  for (std::size_t r = 0; r < catalogue.rules.size(); ++r) {
    const Rule& rule = catalogue.rules[r];
    std::vector<std::string> names = rule.synonyms;
    names.push_back(rule.title);
    names.push_back(rule.id);
    for (const std::string& name : names) {
      INFO(rule.id << ": " << name);
      CHECK(names_rule(read_reason(name, letters(), catalogue, Register::plain), RuleId(static_cast<std::int64_t>(r))));
    }
  }
}
