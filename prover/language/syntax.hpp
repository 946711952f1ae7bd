// What the grammar hands to the reader: a tree of parts. Only what carries meaning is kept (points, numbers,
// which sentence form it was); words have done their work when they matched.
#pragma once
#include <cstdint>
#include <string_view>
#include <vector>

#include "prover/language/phrase.hpp"

namespace prover {

enum class Part : std::uint8_t {
  sentence,
  // names
  point, letters, line, lettered_line, letter, subject,
  angle, reflex, exterior, angle_between, angles_of, angle_list, circle, centre, through,
  // quantities
  number, fraction, mixed, glyph, multiple, degree_unit, length_unit,
  expression, minus, product, over, power, bracketed, sum_of,
  side, more, less, relation, equal, less_than, greater_than, inclusive,
  // groups of quantities
  quantities, group, group_equal, group_sum, group_each, group_respectively, complementary, supplementary, group_right,
  ratio, right_angle, straight_angle, acute_angle, obtuse_angle,
  // sentence forms: subject and what is said of it
  says, points_clause, line_clause, lines_clause, in_order, any_order, cyclic_order,
  on_a_line, on_produced, on_circle, is_centre, incentre, circumcentre, orthocentre, inside, outside,
  midpoints, same_side, opposite_sides, drawn_only,
  parallel_to, are_parallel, are_perpendicular, perpendicular_to, meets, meets_circle, meet_at, cross_at, bisector,
  bisects_segment, bisect_each_other, median, altitude, diameter, chord, radius, tangent, touches, produced,
  produced_to_meet, contains, tangents_from, tangents, from, bisector_meets, tangent_meets, line_through, produced_meets, diagonals_meet,
  perpendicular_bisector_meets,
  angle_bisected,
  circle_clause, shape, adjective, noun, right_at, hypotenuse, apex, base, similar_shapes, congruent_shapes,
  call, join, line_order_row, loose_letters, numbered_angles, numbered_angle,
  // what is drawn in addition
  meeting, meeting_together, near_side, far_side, outer_side, inner_side, the_centre, join_to, ray, at_feet, own_length,
  equilateral, square, drawn_line, drawn_ray, drawn_angle, drawn_foot, drawn_cevian, drawn_bisector, drawn_midpoint,
  drawn_centre, drawn_perpendicular_bisector, drawn_diameter, drawn_tangent, drawn_tangents_from, drawn_produced, build,
  mirror, drawn_vaguely,
  // goals
  find, prove, hypothesis, in_terms_of, all_angles, remark,
  // steering lines
  name, up_to, excluded, drawn_point, coordinate, positions_count, not_to_scale,
};

struct Node {
  Part part = Part::sentence;
  Predicate predicate = Predicate::relation;  // for `says`
  std::string_view order;                     // for `says`: which point goes where, by digits; empty: as written
  Span span;
  std::vector<Node> children;

  const Node* child(Part wanted) const {
    for (const Node& node : children) {
      if (node.part == wanted) return &node;
    }
    return nullptr;
  }
};

}  // namespace prover
