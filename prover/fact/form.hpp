// Linear forms: sums of unknowns with exact coefficients and a constant, read as "= 0". Equations, facts and
// goals all take this shape: a fact that is not an equation ("KL is parallel to MN") is an unknown of its own,
// and "the fact holds" is the form `that unknown = 0`. So one elimination answers every question of the form
// "does this follow?".
#pragma once
#include <cstddef>
#include <utility>
#include <vector>

#include "prover/base/ids.hpp"
#include "prover/base/rational.hpp"

namespace prover {

struct Form {
  std::vector<std::pair<UnknownId, Rational>> terms;  // sorted by unknown, no zero coefficient, none twice
  Rational constant;

  static Form of(UnknownId unknown, Rational coefficient = 1);
  static Form number(Rational constant);
  bool is_constant() const { return terms.empty(); }
  bool is_zero() const { return terms.empty() && constant.is_zero(); }
  Rational coefficient(UnknownId unknown) const;  // 0 when it does not occur
  Form& add(const Form& other, const Rational& factor = 1);
  Form& scale(const Rational& factor);
  Form operator-() const;
  // The same equation always looks the same: divided by the coefficient of its first unknown.
  Form normalised() const;
  std::size_t hash() const;
  std::size_t normalised_hash() const { return is_normalised() ? hash() : normalised().hash(); }
  bool is_normalised() const { return terms.empty() || terms[0].second.is_one(); }
  friend bool operator==(const Form& a, const Form& b) { return a.terms == b.terms && a.constant == b.constant; }
};

}  // namespace prover

template <>
struct std::hash<prover::Form> {
  std::size_t operator()(const prover::Form& form) const noexcept { return form.hash(); }
};
