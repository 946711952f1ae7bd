// Rules that speak by "greater" and "less" (larger side opposite the larger angle, the triangle inequality), and the
// inequalities that the text gives. An inequality is an equation with an excess (fact/unknown.hpp). As a premise it holds
// when the two sides differ by a sum that is positive by what is known, and the premise of the instance is the equation
// that says so. They are matched only on request: few problems need them, and every drawn triangle has them.
#pragma once
#include <array>
#include <vector>

#include "prover/chain/knowledge.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

bool has_inequality(const Phrase& phrase);
bool speaks_of_inequalities(const Rule& rule);  // such a rule is matched here and nowhere else
// The differences that a given says are positive: of "<" and ">", and of an acute triangle.
std::vector<Form> given_differences(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns);

class Inequalities {
 public:
  Inequalities(const Catalogue& catalogue, const std::vector<bool>& allowed, Knowledge& knowledge);
  // Offers what holds by now; `triangles`: the drawn ones, each in every order.
  void match(const std::vector<std::array<PointId, 3>>& triangles);

 private:
  struct Pattern {
    RuleId rule;
    std::vector<std::array<std::size_t, 3>> triangles;  // variables of its triangles
    std::vector<std::size_t> others;                    // further variables
  };
  void place_triangles(const Pattern& pattern, std::size_t next, std::vector<PointId>& places);
  void place_others(const Pattern& pattern, std::size_t next, std::vector<PointId>& places);
  void offer(const Pattern& pattern, const std::vector<PointId>& places);
  bool add_premises(const Phrase& phrase, const std::vector<PointId>& places, Instance& instance) const;
  bool equalities_hold(const Pattern& pattern, const std::vector<PointId>& places) const;

  const Catalogue& catalogue_;
  Knowledge& knowledge_;
  std::vector<Pattern> patterns_;
  const std::vector<std::array<PointId, 3>>* drawn_ = nullptr;
};

}  // namespace prover
