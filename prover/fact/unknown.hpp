// The unknowns of a problem: one for each angle, length, unknown number and fact that is not an equation. The
// table gives each its index and remembers what it stands for, in points; whoever prints or checks a form reads
// it back from here.
//
//   angle   vertex and one point on either arm, 0° < size < 180°. Rays that coincide give the same unknown: the
//           figure's arrangement picks the point that stands for a ray.
//   length  two points, lowest id first
//   number  x, y, …
//   fact    kind and points, in canonical order (below)
//   excess  by how much one side of an inequality is more than the other: AB > CD is AB − CD − excess = 0, and an
//           excess is more than 0. One for each difference, so that the same inequality has the same excess.
#pragma once
#include <cstdint>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "prover/fact/form.hpp"
#include "prover/language/phrase.hpp"

namespace prover {

enum class FactKind {
  parallel,        // a b c d: line ab, line cd; a<b and c<d are the first two points of their lines, ab before cd
  perpendicular,   // likewise; only for lines that have no named point in common
  collinear,       // three points, sorted
  congruent,       // six points; canonical under the same permutation of both triples and exchange of triangles
  similar,         // likewise
  regular_polygon, // points in cyclic order, starting with the lowest id, towards its lower neighbour
  parallelogram,   // likewise, and the following
  rectangle,
  rhombus,
  square,
  kite,            // a b c d with ab = ad, cb = cd: canonical under exchange of b and d, and of a and c
  trapezium,       // a b c d with ab parallel to dc: canonical under the symmetries that keep the parallel pair
  circle,          // centre O, point P: the circle round O through P. Alone it says nothing; P and Q are on one circle
                   // round O when theirs differ by zero, so that what is tied point by point is tied altogether
  concyclic,       // four points, sorted
  joined,          // two points, sorted: the line through them, which no sentence names, has been drawn
  tangent,         // line (its first two points), touching point T, centre O: touches the circle round O through T
  tangent_through, // line (its first two points), touching point T, two more points of the circle, sorted
};

enum class UnknownKind { angle, length, number, fact, excess };

struct Unknown {
  UnknownKind kind = UnknownKind::angle;
  FactKind fact = FactKind::parallel;  // for facts
  std::vector<PointId> points;         // angle: vertex, arm, arm (arms sorted); length: two; fact: as above
  std::string name;                    // number; excess: its difference, for the table alone
  friend bool operator==(const Unknown&, const Unknown&) = default;
};

// Matching asks for the same few angles again and again, so a question by points alone builds no Unknown.
class UnknownTable {
 public:
  UnknownId intern(const Unknown& unknown);
  UnknownId intern(UnknownKind kind, FactKind fact, std::span<const PointId> points);  // not for numbers
  UnknownId angle(PointId vertex, PointId arm, PointId other_arm);  // arms in any order
  UnknownId length(PointId a, PointId b);                           // ends in any order
  UnknownId excess(const Form& difference);
  const Form& difference(UnknownId excess) const;                   // of which this is the excess
  UnknownId find(const Unknown& unknown) const;  // not valid when absent, and the following
  UnknownId find(UnknownKind kind, FactKind fact, std::span<const PointId> points) const;
  UnknownId find_angle(PointId vertex, PointId arm, PointId other_arm) const;
  UnknownId find_length(PointId a, PointId b) const;
  const Unknown& operator[](UnknownId id) const { return unknowns_[id.index()]; }
  std::size_t size() const { return unknowns_.size(); }

 private:
  struct Sought {
    UnknownKind kind;
    FactKind fact;
    std::span<const PointId> points;
    const std::string& name;
  };
  std::size_t slot_of(const Sought& sought, std::uint64_t key) const;  // where it stands, or the free slot for it
  UnknownId found_or_added(const Sought& sought);
  UnknownId found(const Sought& sought) const;
  void grow();

  std::vector<Unknown> unknowns_;
  std::unordered_map<UnknownId, Form> differences_;  // by excess
  // Open addressing. An unknown of up to four points is its key, so that a question looks at no more than the slot; for
  // the others the key is a hash.
  struct Slot {
    std::uint64_t key = 0;
    std::int32_t unknown = -1;
  };
  std::vector<Slot> slots_;
};

// In textbook signs: "∠KLM", "KL", "x", "KL ∥ MN"; and a form as an equation: "∠KLM + ∠LMK = 180°".
// The points on one circle that a form of two circle unknowns speaks of: O, P, Q; empty for any other form.
std::vector<PointId> on_one_circle(const Form& form, const UnknownTable& unknowns);
// Facts have words, not an equation: one fact, or two points on one circle.
bool is_fact(const Form& form, const UnknownTable& unknowns);

// The inequality "difference > 0" as an equation.
Form more_than_zero(const Form& difference, UnknownTable& unknowns);
bool compares(const Form& form, const UnknownTable& unknowns);  // an excess occurs
// A sum of angles, lengths and excesses with positive factors, and of a number not below 0; not nothing.
bool is_positive(const Form& form, const UnknownTable& unknowns);

std::string describe(const Unknown& unknown, const Names& names);
std::string describe_equation(const Form& form, const UnknownTable& unknowns, const Names& names);

}  // namespace prover
