// What a phrase means for a proof: equations and facts (forms, each "= 0") and position facts. The same table
// serves the givens of a problem, the goals, and the parts of a rule at given places.
//
//   phrase                      forms                                   positions
//   relation of quantities      one per "="; "<", ">" give none         –
//   triangle, acute             –                                       A, B, C not collinear
//   line_order                  – (points share a line of the figure)   each between its neighbours
//   collinear, on_line          – as a given (the figure joins them); collinear(A, B, C) as conclusion or goal
//   on_ray P A B                –                                       on line; A not between P and B
//   on_segment P A B            –                                       P between A and B
//   parallel                    parallel(lines)                         the ends of each line on one side of the other
//   perpendicular               meeting at a named point: every angle of named rays there = 90°; otherwise
//                               perpendicular(lines)                    –
//   meet / cross                – (P joins both lines)                  the lines differ; cross: P between the ends of both
//   midpoint M A B              MA = MB                                 M between A and B
//   foot P K L M                as perpendicular KP, LM                 – (P joins line LM)
//   perpendicular_bisector      as perpendicular; foot F named: FL = FM; every named point on it equidistant: by rule
//   isosceles_at A B C          AB = AC                                 not collinear
//   equilateral A B C           AB = BC, BC = CA                        not collinear
//   right_angled A B C          ∠BAC = 90°                              not collinear
//   bisects D A B C             ∠ABD = ∠DBC                             D inside angle ABC
//   regular_polygon             regular_polygon(points); three corners: as equilateral; four: as square
//                                                                       convex
//   parallelogram … trapezium   the fact                                convex (kite: none)
//   convex, simple_polygon      –                                       convex: every other corner on one side of each side
//   inside_polygon (triangle or convex)  –                              P and the corners on one side of each side
//   inside_angle P A B C        –                                       P, A same side of BC; P, C same side of BA
//   same_side, opposite_sides   –                                       itself
//   congruent, similar          the fact                                –
//   circle O P Q …              circle(O, P) − circle(O, Q), …          cyclic order: convex; as a given also
//                                                                       concyclic: `given_forms`
//   diameter A B O              OA = OB; circle(O, A) − circle(O, B)    O between A and B
//   concyclic (cyclic)          concyclic(every four)                   cyclic order: convex
//   tangent P T O               the fact                                P, T, O not collinear
//   tangent_circumcircle P T …  tangent_through T, each two others      the others on one side of the tangent
//                               T none of the three: also concyclic
#pragma once
#include <vector>

#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"

namespace prover {

struct Meaning {
  std::vector<Form> forms;
  std::vector<Position> positions;
  bool one_is_enough = false;  // perpendicular lines: as a premise any one of the right angles will do
  bool degenerate = false;   // names an angle of 0° or 180° where an angle between is meant, equal ends, one line twice
  bool unsupported = false;  // says something that has no meaning here (an inequality as goal)
};

// Points of the phrase are mapped through `place` (by index; identity for problems).
Meaning meaning_of(const Phrase& phrase, const std::vector<PointId>& place, const Arrangement& arrangement,
                   UnknownTable& unknowns);
Meaning meaning_of(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns);

// What a given says: its meaning, and of four points on a circle round a named centre also that they are concyclic.
std::vector<Form> given_forms(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns);

// The position facts alone; they do not depend on the arrangement (polygons of a rule: convex).
std::vector<Position> positions_of(const Phrase& phrase, const std::vector<PointId>& place);

// A quantity expression as a form.
Form form_of(const Expression& expression, const std::vector<PointId>& place, const Arrangement& arrangement,
             UnknownTable& unknowns, bool& degenerate);

}  // namespace prover
