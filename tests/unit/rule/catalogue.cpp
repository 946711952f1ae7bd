// The catalogue as a whole: all rules load, keep their order, and know their names.
#include "prover/rule/rule.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace prover;

TEST_CASE("every rule compiled into the program loads without a mistake") {
  const LoadedCatalogue loaded = load_catalogue(builtin_rule_files());
  for (const auto& [file, mistakes] : loaded.mistakes)
    for (const Diagnostic& mistake : mistakes) FAIL_CHECK(render(mistake, file.name, file.text));
  CHECK(loaded.catalogue.rules.size() + loaded.catalogue.courses.size() == builtin_rule_files().size());
}

TEST_CASE("rules stand in the order of a course, whatever the order of the files") {
  std::vector<RuleFile> files = builtin_rule_files();
  const std::vector<std::string> ids = load_catalogue(files).catalogue.ids();
  std::reverse(files.begin(), files.end());
  CHECK(load_catalogue(files).catalogue.ids() == ids);
  const Catalogue& catalogue = standard_catalogue();
  CHECK(catalogue.find("given") < catalogue.find("vertical-angles"));
  CHECK(catalogue.find("vertical-angles") < catalogue.find("alternate-interior-angles"));
  CHECK(catalogue.find("triangle-angle-sum") < catalogue.find("congruent-sss"));
}

TEST_CASE("a rule is found by its name and by no other") {
  const Catalogue& catalogue = standard_catalogue();
  const auto id = catalogue.find("triangle-angle-sum");
  REQUIRE(id);
  CHECK(catalogue[*id].id == "triangle-angle-sum");
  CHECK(catalogue[*id].topic == "triangle");
  CHECK_FALSE(catalogue.find("triangle-angle-product"));
}

TEST_CASE("every builtin has exactly one rule file") {
  const Catalogue& catalogue = standard_catalogue();
  for (const std::string& name : builtin_names()) {
    const auto builtin = builtin_from(name);
    REQUIRE(builtin);
    const auto uses = std::count_if(catalogue.rules.begin(), catalogue.rules.end(),
                                    [&](const Rule& rule) { return rule.builtin == builtin; });
    CHECK((name + ": " + std::to_string(uses)) == name + ": 1");
  }
  CHECK_FALSE(builtin_from("angles_on_a_straight_line"));
}

TEST_CASE("a further case names a rule that exists") {
  const Catalogue& catalogue = standard_catalogue();
  for (const Rule& rule : catalogue.rules) {
    INFO(rule.id);
    if (!rule.family.empty()) CHECK(catalogue.find(rule.family));
  }
}
