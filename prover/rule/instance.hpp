// A rule at given places: what it needs, what it gives, and where in the figure it stands. A hypothesis of the
// problem is an instance of the rule `given`, without premises.
#pragma once
#include <vector>

#include "prover/fact/form.hpp"
#include "prover/figure/position.hpp"
#include "prover/rule/rule.hpp"

namespace prover {

struct Instance {
  RuleId rule;
  // Pattern rules: the point for each variable, by variable. Built-in shapes:
  //   given                        empty; `hypothesis` says which phrase
  //   join                         the two points; concludes the fact `joined`, which every instance that uses
  //                                the new line has among its premises
  //   angle_addition               vertex, first arm, inner rays in order …, last arm: first ∠ + … = whole ∠
  //   segment_addition             points in order along a line
  //   angles_on_a_straight_line    vertex, first end, rays in order on one side …, last end
  //   angles_at_a_point            vertex, rays in order once round
  //   polygon_…, regular_polygon_… the corners in order
  //   polygon_exterior_sum         corners in order, then for each corner the point on the side produced
  //   similar_…                    six points, letters in corresponding order
  std::vector<PointId> places;
  int hypothesis = -1;               // index into Statement::givens, for rule `given`
  std::vector<Form> premises;        // each read as "= 0"
  std::vector<Position> positions;   // what must hold of the figure
  std::vector<Form> conclusions;     // each read as "= 0"
  Rational cost;
};

}  // namespace prover
