#include "prover/evidence/number_in_given.hpp"

#include <algorithm>

namespace prover {

namespace {

bool is_one(const Term& term) { return std::holds_alternative<One>(term.quantity); }

// `left` less all terms of `right` but one.
Expression difference(const Expression& left, const Expression& right, std::size_t but) {
  Expression result;
  for (const Term& term : left.terms) result.terms.push_back({term.coefficient, term.quantity, {}});
  for (std::size_t t = 0; t < right.terms.size(); ++t)
    if (t != but) result.terms.push_back({-right.terms[t].coefficient, right.terms[t].quantity, {}});
  return result;
}

}  // namespace

std::optional<NumberInGiven> number_in(const Phrase& phrase) {
  if (phrase.predicate != Predicate::relation) return std::nullopt;
  const Relation& relation = phrase.relation;
  if (relation.comparisons.empty() ||
      std::any_of(relation.comparisons.begin(), relation.comparisons.end(), [](Comparison c) { return c != Comparison::equal; }))
    return std::nullopt;
  std::vector<NumberInGiven> sizes, factors;
  for (std::size_t e = 0; e < relation.expressions.size(); ++e)
    for (std::size_t t = 0; t < relation.expressions[e].terms.size(); ++t) {
      const Term& term = relation.expressions[e].terms[t];
      if (is_one(term) && !term.coefficient.is_zero()) sizes.push_back({e, t, false, term.coefficient, {}, {}});
      if (!is_one(term) && !term.coefficient.is_one()) factors.push_back({e, t, true, term.coefficient, {}, {}});
    }
  const std::vector<NumberInGiven>& found = sizes.empty() ? factors : sizes;
  if (found.size() != 1) return std::nullopt;
  NumberInGiven number = found[0];
  if (number.factor && relation.expressions.size() != 2) return std::nullopt;
  const std::size_t other = number.expression == 0 ? 1 : number.expression - 1;
  const Expression& own = relation.expressions[number.expression];
  number.wanted = difference(relation.expressions[other], own, number.term);
  if (number.factor) number.counted.terms.push_back({1, own.terms[number.term].quantity, {}});
  return number;
}

Phrase with_number(const Phrase& phrase, const NumberInGiven& number, const Rational& value) {
  Phrase changed = phrase;
  changed.relation.expressions[number.expression].terms[number.term].coefficient = value;
  return changed;
}

std::optional<Phrase> without_number(const Phrase& phrase, const NumberInGiven& number) {
  if (phrase.relation.expressions.size() < 3 || phrase.relation.expressions[number.expression].terms.size() > 1)
    return std::nullopt;
  Phrase left = phrase;
  const auto at = static_cast<std::ptrdiff_t>(number.expression);
  left.relation.expressions.erase(left.relation.expressions.begin() + at);
  left.relation.comparisons.pop_back();
  return left;
}

double measured_number(const NumberInGiven& number, const Sketch& figure) {
  const double wanted = measure(number.wanted, figure);
  return number.factor ? wanted / measure(number.counted, figure) : wanted;
}

std::optional<Rational> rounding_of(const NumberInGiven& number) {
  if (number.factor || number.value.is_integer()) return std::nullopt;
  Rational unit = 1;
  for (int decimals = 1; decimals <= 6; ++decimals) {
    unit /= Rational(10);
    if ((number.value / unit).is_integer()) return unit / Rational(2);
  }
  return std::nullopt;  // a fraction, such as 540/7: exact
}

Phrase within_rounding(const NumberInGiven& number, const Rational& half_unit) {
  Phrase loose;
  loose.predicate = Predicate::relation;
  Expression low, high;
  low.terms.push_back({number.value - half_unit, One{}, {}});
  high.terms.push_back({number.value + half_unit, One{}, {}});
  loose.relation.expressions = {low, number.wanted, high};
  loose.relation.comparisons = {Comparison::less, Comparison::less};
  return loose;
}

}  // namespace prover
