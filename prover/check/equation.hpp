// Equations over the checker's own keys: a sum of keys with exact coefficients and a constant, read as "= 0".
#pragma once
#include <map>
#include <vector>

#include "prover/base/rational.hpp"

namespace prover::replay {

struct Equation {
  std::map<int, Rational> terms;  // no zero coefficient
  Rational constant;

  static Equation of(int key) { return {{{key, 1}}, 0}; }
  static Equation number(const Rational& value) { return {{}, value}; }
  Equation& add(const Equation& other, const Rational& factor = 1);
  Equation& scale(const Rational& factor);
  bool is_constant() const { return terms.empty(); }
  bool is_zero() const { return terms.empty() && constant.is_zero(); }
  friend bool operator==(const Equation& a, const Equation& b) {
    return a.constant == b.constant && a.terms == b.terms;
  }
};

// What is left of an equation when `known` ones are used up; and whether nothing is left, that is, whether
// `target` is a sum of multiples of them. From 1 = 0 nothing is concluded here.
Equation modulo(Equation equation, const std::vector<Equation>& known);
bool in_span(const Equation& target, const std::vector<Equation>& known);

}  // namespace prover::replay
