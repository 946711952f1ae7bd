// What the rules' linear closure and the angles settled so far say of a quantity: its normal form. An angle that a
// condition has settled keeps its own name in the open form (what the rules alone say), and becomes a number in the
// closed one.
#pragma once
#include <optional>
#include <vector>

#include "prover/algebra/linear_system.hpp"
#include "prover/fact/unknown.hpp"
#include "prover/trigonometry/root_sum.hpp"

namespace prover {

// An angle that one condition settles: a number of degrees, or, where that is not rational, e^(2i·angle) as a
// quotient of root sums.
struct SettledAngle {
  UnknownId angle;
  std::optional<Rational> value;
  RootSum numerator, denominator;
};

class KnownAngles {
 public:
  explicit KnownAngles(const LinearSystem& closure) : closure_(closure) {}

  Form open(const Form& form) const;
  Form closed(const Form& form) const;
  void settle(SettledAngle angle);
  const SettledAngle* settled(UnknownId angle) const;  // one that is not rational, or null
  const std::vector<SettledAngle>& all() const { return settled_; }

 private:
  const LinearSystem& closure_;
  struct Substitution {
    UnknownId unknown;
    Form form;  // in settled angles and what is open
  };
  std::vector<Substitution> substitutions_;
  std::vector<SettledAngle> settled_;
};

}  // namespace prover
