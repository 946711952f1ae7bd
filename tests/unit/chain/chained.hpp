// A figure told in sentences, with all that the standard rules, or the named ones alone, make of it.
#pragma once
#include "prover/chain/saturate.hpp"
#include "prover/search/derivation.hpp"
#include "prover/rule/rule.hpp"
#include "tests/unit/statement/told.hpp"

namespace told {

struct Chained : Told {
  // `only`: ids of the rules that may be used beside givens and additions; empty: all.
  explicit Chained(std::string_view sentences, std::string_view asked = "",
                   const std::vector<std::string>& only = {}, const Budget& budget = {},
                   std::string_view numbered = "")
      : Told(sentences, asked, {}, numbered) {
    run(only, budget);
  }

  void run(const std::vector<std::string>& only, const Budget& budget) {
    const Catalogue& catalogue = standard_catalogue();
    ChainOptions options;
    options.allowed.assign(catalogue.rules.size(), only.empty());
    for (std::string id : only) {
      INFO(id);
      REQUIRE(catalogue.find(id));
      options.allowed[catalogue.find(id)->index()] = true;
    }
    for (const char* id : {"given", "angle-addition", "segment-addition"})
      options.allowed[catalogue.find(id)->index()] = true;
    // What is asked is noted first, as it is for a problem.
    for (const Goal& goal : statement.goals)
      for (const Phrase& claim : goal.claims) meaning_of(claim, figure, unknowns);
    result = saturate(statement, figure, catalogue, unknowns, {}, options, budget);
  }

  bool derives(std::string_view sentence) {
    const Meaning meaning = this->meaning(sentence);
    INFO(sentence);
    REQUIRE_FALSE(meaning.forms.empty());
    REQUIRE_FALSE(meaning.degenerate);
    return std::all_of(meaning.forms.begin(), meaning.forms.end(),
                       [&](const Form& form) { return result.closure.entails(form); });
  }
  std::size_t fired(std::string_view id) const {
    const Catalogue& catalogue = standard_catalogue();
    return static_cast<std::size_t>(
        std::count_if(result.instances.begin(), result.instances.end(),
                      [&](const Instance& instance) { return catalogue[instance.rule].id == id; }));
  }

  Saturation result;
};

}  // namespace told
