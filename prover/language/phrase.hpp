// What a sentence says, after parsing: one predicate about points, or one relation between quantities. Problems,
// rules and pupils' work all become phrases; freer wordings are rewritten to these few on the way in. Points are
// indices into the name table of the text (`Text::points`); in a rule they are variables.
//
// The table of predicates is the vocabulary that all rooms share. To add a kind of fact: its row here, its words
// in the grammar, then follow the compiler (switches over Predicate have no `default`).
#pragma once
#include <string>
#include <variant>
#include <vector>

#include "prover/base/ids.hpp"
#include "prover/base/rational.hpp"
#include "prover/base/source.hpp"

namespace prover {

enum class Predicate {
  relation,             // `relations`: quantities compared; no points
  triangle,             // A B C: not on one line, sides drawn
  acute,                // A B C: triangle with all angles below 90
  line_order,           // A B C …: on one line, in this order
  collinear,            // A B C …: on one line, order open
  on_ray,               // P A B: P on ray AB (from A through B, P not A)
  on_segment,           // P A B: strictly between A and B
  on_line,              // P A B: anywhere on line AB
  parallel,             // A B C D: line AB, line CD
  perpendicular,        // A B C D: line AB, line CD
  meet,                 // P A B C D: P is where lines AB and CD meet
  cross,                // P A B C D: P is where segments AB and CD cross (inside both)
  midpoint,             // M A B
  foot,                 // P K L M: P on line LM, KP perpendicular to LM
  perpendicular_bisector,  // K P L M: line KP bisects segment LM at right angles
  isosceles,            // A B C: two sides equal, which two is not said
  isosceles_at,         // A B C: AB = AC
  equilateral,          // A B C
  right_angled,         // A B C: the right angle is at A
  circle,               // O P Q …: centre O, points on it in any order
  circle_cyclic,        // O P Q R …: centre O, points in this cyclic order
  concyclic,            // P Q R S …: on one circle, any order
  concyclic_cyclic,     // P Q R S …: on one circle, in this cyclic order
  diameter,             // A B O: AB a diameter of the circle with centre O
  tangent,              // P T O: line PT touches the circle with centre O at T
  tangent_circumcircle, // P T A B C: line PT touches the circle through A, B, C at T
  bisects,              // D A B C: ray BD bisects angle ABC (between the arms)
  regular_polygon,      // A B C … in order round it
  convex,               // A B C … convex polygon in order
  simple_polygon,       // A B C … sides do not cross
  parallelogram,        // A B C D in order, as the next ones
  rectangle,
  rhombus,
  square,
  kite,                 // A B C D: AB = AD, CB = CD
  trapezium,            // A B C D: AB parallel to DC
  inside_polygon,       // P A B C …: P inside the polygon (a triangle too)
  inside_angle,         // P A B C: P inside angle ABC
  inside_circle,        // P O: P inside the circle with centre O
  outside_polygon,      // P A B C …
  outside_circle,       // P O
  same_side,            // A D B C: A and D on the same side of line BC
  opposite_sides,       // A D B C
  congruent,            // A B C D E F: letters in corresponding order
  similar,              // A B C D E F
};

// An angle: vertex and a point on either arm, between 0° and 180° unless `reflex`. `arm1` and `arm2` are not
// valid when the text names the angle by its corner only; the statement room finds out which angle is meant.
struct Angle {
  PointId arm1, vertex, arm2;
  bool reflex = false;
  bool exterior = false;  // "the exterior angle at M": 180° minus the interior angle named by the corner
  friend bool operator==(const Angle&, const Angle&) = default;
};
struct Segment {
  PointId a, b;
  friend bool operator==(const Segment&, const Segment&) = default;
};
struct Number {  // an unknown number: a small letter
  std::string name;
  friend bool operator==(const Number&, const Number&) = default;
};
// A quantity that is `1` is the constant term: degrees beside angles, units of length beside lengths.
struct One {
  friend bool operator==(const One&, const One&) = default;
};
using Quantity = std::variant<One, Angle, Segment, Number>;

struct Term {
  Rational coefficient = 1;
  Quantity quantity;
  Span span;
};
struct Expression {  // sum of the terms
  std::vector<Term> terms;
  Span span;
};
enum class Comparison { equal, less, greater };

// A chain `e0 c0 e1 c1 e2 …`: expressions.size() == comparisons.size() + 1. A single expression with no
// comparison is what `find:` asks for.
struct Relation {
  std::vector<Expression> expressions;
  std::vector<Comparison> comparisons;
};

struct Phrase {
  Predicate predicate = Predicate::relation;
  std::vector<PointId> points;
  Relation relation;               // for Predicate::relation only
  Span span;                       // the whole phrase, as the user wrote it
  std::vector<Span> point_spans;   // where each of `points` is written; as long as `points`
};

// The phrase in canonical words ("KL ∥ MN", "∠KLM = 40°", "K, L, M lie on a line in this order"): used for
// "what was understood" and in proofs. `name` gives the printed name of a point.
struct Names {
  std::vector<std::string> points;
  const std::string& of(PointId p) const { return points[p.index()]; }
};
std::string describe(const Phrase& phrase, const Names& names);
std::string describe(const Expression& expression, const Names& names);
std::string describe(const Angle& angle, const Names& names);  // "∠KLM", "reflex ∠KLM"

}  // namespace prover
