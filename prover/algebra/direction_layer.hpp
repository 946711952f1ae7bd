// The direction layer: one unknown for each line, its direction in degrees. The angle between two rays is a difference of
// two directions plus a whole multiple of 180°, and which multiple is a position fact, read here from one drawn
// figure of the arrangement. Every theorem that needs only lines and parallels is then linear algebra, so this layer
// tells what angles alone force. It writes no proof; a direction is a real number and never taken modulo 180°, which
// would be unsound with fractional multipliers (2(a − b) = 0 modulo 180° does not give a = b).
#pragma once
#include <optional>

#include "prover/algebra/linear_system.hpp"
#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"

namespace prover {

class DirectionLayer {
 public:
  // `view` shows the arrangement; the layer is valid for figures of its order type only.
  DirectionLayer(const Arrangement& arrangement, const Coordinates& view, const UnknownTable& unknowns);

  // Adds what a form over angles, numbers, parallels and perpendiculars says of directions; false when it speaks of
  // lengths or other facts, which this layer cannot see.
  bool add(const Form& form);
  // The value that the directions force for a quantity, if they do.
  std::optional<Rational> value(const Form& quantity) const;
  bool entails(const Form& form) const;
  bool contradictory() const { return system_.contradictory(); }

 private:
  std::optional<Form> translated(const Form& form) const;
  std::optional<Form> unknown_as_directions(UnknownId unknown) const;
  Form ray(PointId vertex, PointId toward) const;           // its direction: that of the line, or 180° more
  double seen_direction(PointId vertex, PointId toward) const;  // degrees, in the figure

  const Arrangement& arrangement_;
  const Coordinates& view_;
  const UnknownTable& unknowns_;
  LinearSystem system_;
};

}  // namespace prover
