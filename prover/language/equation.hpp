// "This quantity is so large" as a phrase, as if a sentence had said it.
#pragma once
#include "prover/language/phrase.hpp"

namespace prover {

inline Phrase equation(const Expression& quantity, const Rational& value) {
  Phrase phrase;
  phrase.relation.expressions = {quantity, Expression{{Term{value, One{}, {}}}, {}}};
  phrase.relation.comparisons = {Comparison::equal};
  return phrase;
}

}  // namespace prover
