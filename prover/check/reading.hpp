// The checker's own reading of phrases: what a phrase says of lines and positions, and what it says as
// equations. The table in statement/meaning.hpp is the contract; this is a second reading of it, so that a
// slip in one of the two shows. Points of a phrase go through `place` (variables of a rule; the identity for
// a problem).
#pragma once
#include <string>
#include <vector>

#include "prover/check/naming.hpp"
#include "prover/check/positions.hpp"
#include "prover/language/phrase.hpp"

namespace prover::replay {

Placement placement_of(const Phrase& phrase, const Points& place);

Placement convex_polygon(const Points& corners);
Placement inside_angle(PointId p, PointId arm1, PointId vertex, PointId arm2);
Placement inside_convex_polygon(PointId p, const Points& corners);

// Angles that a given names are between 0° and 180° unless its points are known to be on a line: a convention
// of the language. So their corners are a triangle.
std::vector<Position> named_angles(const Phrase& phrase);

// A phrase as equations. Those of one group say the same (each of the right angles where two lines cross), so
// any one of them will do as a premise.
struct Claims {
  std::vector<std::vector<Equation>> groups;
  std::vector<Equation> positive;  // "<" and ">": each is more than 0
  std::vector<Equation> choice;    // one of these holds, and it is not said which
  bool degenerate = false;         // names an angle that is known to be 0° or 180°
  bool readable = true;            // false: a segment with equal ends, one line twice; or no equations at all
  bool complete = true;  // false: says more than these and the phrase's placement; no way to show it
  std::vector<Equation> all() const;
};

Claims claims_of(const Phrase& phrase, const Points& place, Naming& naming);
// What a given says as equations: its claims, and of any four points on a circle that they are concyclic.
Claims consequences_of(const Phrase& given, const Points& place, Naming& naming);
// A sum of quantities; `claims` learns what is degenerate or unreadable.
Equation equation_of(const Expression& expression, const Points& place, Naming& naming, Claims& claims);

}  // namespace prover::replay
