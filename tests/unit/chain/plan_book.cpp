// Which rules are looked at when facts of some kinds become known.
#include <catch2/catch.hpp>

#include <algorithm>

#include "prover/chain/inequalities.hpp"
#include "prover/chain/plan_book.hpp"

using namespace prover;

namespace {

bool looked_at(const char* id, FactKinds fresh, FactKinds known) {
  const Catalogue& catalogue = standard_catalogue();
  INFO(id);
  REQUIRE(catalogue.find(id));
  const auto rules = PlanBook::of(catalogue)->fact_rules(fresh, known);
  CHECK(std::is_sorted(rules.begin(), rules.end()));
  return std::count(rules.begin(), rules.end(), *catalogue.find(id)) == 1;
}

}  // namespace

TEST_CASE("a rule is looked at when a fact that it asks for is new, and all others are there") {
  const FactKinds parallel = only(FactKind::parallel), perpendicular = only(FactKind::perpendicular);
  CHECK(looked_at("alternate-interior-angles", parallel, parallel));
  CHECK_FALSE(looked_at("alternate-interior-angles", perpendicular, perpendicular));
  CHECK_FALSE(looked_at("alternate-interior-angles", perpendicular, parallel | perpendicular));
  CHECK_FALSE(looked_at("kite-sides", parallel, parallel));
  CHECK(looked_at("kite-sides", only(FactKind::kite), parallel | only(FactKind::kite)));
  // It asks for a perpendicular and a parallel: neither alone will do, and the last to come brings it in.
  CHECK_FALSE(looked_at("perpendicular-to-parallel", parallel, parallel));
  CHECK_FALSE(looked_at("perpendicular-to-parallel", perpendicular, perpendicular));
  CHECK(looked_at("perpendicular-to-parallel", perpendicular, parallel | perpendicular));
  CHECK(looked_at("perpendicular-to-parallel", parallel, parallel | perpendicular));
}

TEST_CASE("every rule with a pattern is matched in one way") {
  const Catalogue& catalogue = standard_catalogue();
  const auto book = PlanBook::of(catalogue);
  const FactKinds all = ~FactKinds{0};
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    const RuleId id(static_cast<std::int64_t>(i));
    INFO(rule.id);
    std::size_t ways = 0;
    for (const auto& rules : {book->figure_rules(), book->pair_rules(), book->fact_rules(all, all)})
      ways += static_cast<std::size_t>(std::count(rules.begin(), rules.end(), id));
    CHECK(ways == (rule.builtin || rule.then.empty() || speaks_of_inequalities(rule) ? 0u : 1u));
  }
}
