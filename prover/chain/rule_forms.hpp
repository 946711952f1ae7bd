// What the phrases of a rule come to at given places: the same forms as `meaning_of` gives, from a table that is made
// once for each rule. Matching builds them into an instance that is used again and again; only an instance that is
// new is copied from it.
#pragma once
#include <optional>
#include <vector>

#include "prover/chain/knowledge.hpp"
#include "prover/chain/match_plan.hpp"

namespace prover {

class RuleForms {
 public:
  RuleForms(const MatchPlan& plan, const Rule& rule);

  // Puts premises and conclusions at the places into `instance`. False where the rule says nothing: an angle that is not
  // drawn, a line named twice.
  bool fill_forms(const std::vector<PointId>& places, Knowledge& knowledge, Instance& instance) const;
  void fill_positions(const std::vector<PointId>& places, Instance& instance) const;

 private:
  struct Part {  // a term of an equation
    enum class Kind { constant, angle, length, number } kind = Kind::constant;
    Rational factor;
    std::size_t a = 0, b = 0, c = 0;  // variables; angle: arm, vertex, arm
    std::string name;
  };
  struct Clause {
    enum class Kind { equations, lines, points, other } kind = Kind::other;
    std::vector<std::vector<Part>> equations;  // each a sum that is zero
    FactKind fact = FactKind::parallel;
    Phrase phrase;
  };
  static Clause clause_of(const Phrase& phrase);
  static void add_parts(const Expression& expression, const Rational& factor, std::vector<Part>& parts);
  bool add_forms(const Clause& clause, const std::vector<PointId>& places, Knowledge& knowledge, bool given,
                 std::vector<Form>& forms, std::size_t& count) const;

  std::vector<Clause> given_, then_;
  std::vector<Position> positions_;                      // over variables
  std::vector<std::pair<PointId, PointId>> lines_used_;  // likewise
};

}  // namespace prover
