// The one number of a given that could be a slip of the pen: "∠KLM = 54°", "KM = 5", "∠KLM = 5 ∠LMK".
#pragma once
#include <cstddef>
#include <optional>
#include <vector>

#include "prover/language/phrase.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover {

struct NumberInGiven {
  std::size_t expression = 0, term = 0;  // where it stands in the relation
  bool factor = false;                   // 5 ∠LMK; else a size of its own
  Rational value;
  // What the number would have to be is (quotient of) what stands on the other side, less what stands beside it.
  Expression wanted, counted;            // factor: wanted = number · counted; else wanted = number
};

// Nothing where the given compares by "<", or has no number or several.
std::optional<NumberInGiven> number_in(const Phrase& phrase);
Phrase with_number(const Phrase& phrase, const NumberInGiven& number, const Rational& value);
// What is left when nothing is said of the number: of KN = LN = 5 it is KN = LN; of KL = 5 nothing.
std::optional<Phrase> without_number(const Phrase& phrase, const NumberInGiven& number);
double measured_number(const NumberInGiven& number, const Sketch& figure);
// Half a unit of the last decimal: 1/20 for 33.7. Nothing where it is written without decimals.
std::optional<Rational> rounding_of(const NumberInGiven& number);
// The given as it is meant when its number is rounded: 33.65° < ∠KLM < 33.75°.
Phrase within_rounding(const NumberInGiven& number, const Rational& half_unit);

}  // namespace prover
