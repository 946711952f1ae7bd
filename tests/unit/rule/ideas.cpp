#include "prover/rule/ideas.hpp"

#include <catch2/catch.hpp>

using namespace prover;

TEST_CASE("the table of ideas speaks of rules that there are, each in one role") {
  CHECK(idea_table().mistakes().empty());
  const Catalogue& catalogue = standard_catalogue();
  for (const std::string& name : idea_table().names()) {
    INFO(name);
    CHECK(catalogue.find(name));
  }
}

TEST_CASE("a theorem carries, a definition is small change, and alternate angles are one fact with corresponding ones") {
  const Catalogue& catalogue = standard_catalogue();
  const auto rule = [&](const char* id) -> const Rule& { return catalogue[*catalogue.find(id)]; };
  const IdeaTable& table = idea_table();
  CHECK(table.role(rule("isosceles-base-angles")) == IdeaRole::carries);
  CHECK(table.role(rule("vertical-angles")) == IdeaRole::small_change);
  CHECK(table.role(rule("congruent-parts")) == IdeaRole::small_change);
  CHECK(table.role(rule("triangle-angle-sum")) == IdeaRole::quiet);
  CHECK(table.role(rule("line-through-two-points-both")) == IdeaRole::small_change);  // by its family
  CHECK(table.fact(rule("alternate-interior-angles")) == table.fact(rule("corresponding-angles")));
  CHECK(table.fact(rule("alternate-interior-angles")) != table.fact(rule("alternate-interior-angles-converse")));
  CHECK(table.fact(rule("isosceles-base-angles")) == "isosceles-base-angles");
}

TEST_CASE("what the table does not understand is kept as a mistake") {
  CHECK(IdeaTable("quiet a\nsmall-change a").mistakes().size() == 1);
  CHECK(IdeaTable("one-fact alone").mistakes().size() == 1);
  CHECK(IdeaTable("shouted a").mistakes().size() == 1);
  CHECK(IdeaTable("# nothing\nquiet a\n      b").mistakes().empty());
}
