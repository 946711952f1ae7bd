// The constraints of the sketch (sketch/constraint.hpp) once more, in intervals: where exactly a value lies at a point,
// and between which bounds its derivatives lie over a whole box. Written apart from the code that finds figures, since it
// judges them. Values are not divided by sizes as they are there: whether one is 0, or positive, is the same.
#pragma once
#include <map>
#include <optional>
#include <vector>

#include "prover/motion/interval.hpp"
#include "prover/sketch/constraint.hpp"

namespace prover::motion {

struct Box {
  std::vector<double> middle;     // by variable
  std::vector<Interval> ranges;   // by variable, around the middle
};

struct Enclosure {
  Interval at_middle;
  std::map<int, Interval> slopes;  // by variable, over the whole box
  Interval over(const Box& box) const;  // between which bounds the value lies in the box, by the mean value theorem
};

// None where the box is too wide to say (a distance that may be 0, a corner that may turn over) and for `winding`.
std::optional<Enclosure> enclose(const sketching::Constraint& constraint, const sketching::Layout& layout, const Box& box);
// In degrees, and in the units of the text.
std::optional<Enclosure> enclose(const Expression& quantity, const sketching::Layout& layout, const Box& box);

// A point stays inside or outside the polygon all over the box: it never comes upon a side.
bool winds_alike(const sketching::Constraint& constraint, const Box& box);

}  // namespace prover::motion
