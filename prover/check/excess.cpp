#include "prover/check/excess.hpp"

#include <algorithm>

namespace prover::replay {

bool Excesses::introduces(const Equation& conclusion, const std::vector<Equation>& positive, const Naming& naming) {
  int letter = -1;
  for (const auto& [key, coefficient] : conclusion.terms) {
    if (naming.kind_of(key) != UnknownKind::excess) continue;
    if (letter >= 0 || !(coefficient == Rational(-1))) return false;
    letter = key;
  }
  if (letter < 0) return false;
  Equation difference = conclusion;
  difference.add(Equation::of(letter));
  if (std::find(positive.begin(), positive.end(), difference) == positive.end()) return false;
  return difference_.try_emplace(letter, difference).first->second == difference;
}

bool Excesses::surely_positive(const Equation& sum, Naming& naming) const {
  bool strictly = sum.constant.sign() > 0;
  Rational least = sum.constant;
  for (const auto& [key, coefficient] : sum.terms) {
    switch (naming.kind_of(key)) {
      case UnknownKind::length:
        if (coefficient.sign() < 0) return false;
        strictly = true;
        break;
      case UnknownKind::excess:
        if (coefficient.sign() < 0 || !known(key)) return false;
        strictly = true;
        break;
      case UnknownKind::angle:
        if (coefficient.sign() < 0) least += coefficient * Rational(180);
        if (naming.is_proper_angle(key)) strictly = true;
        break;
      case UnknownKind::number:
      case UnknownKind::fact:
        return false;
    }
  }
  return least.sign() > 0 || (least.is_zero() && strictly);
}

}  // namespace prover::replay
