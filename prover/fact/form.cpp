#include "prover/fact/form.hpp"

#include <algorithm>

namespace prover {

Form Form::of(UnknownId unknown, Rational coefficient) {
  Form form;
  if (!coefficient.is_zero()) form.terms.emplace_back(unknown, std::move(coefficient));
  return form;
}

Form Form::number(Rational constant) {
  Form form;
  form.constant = std::move(constant);
  return form;
}

Rational Form::coefficient(UnknownId unknown) const {
  const auto found = std::lower_bound(terms.begin(), terms.end(), unknown,
                                      [](const auto& term, UnknownId id) { return term.first < id; });
  return found != terms.end() && found->first == unknown ? found->second : Rational(0);
}

namespace {

void merge(Form& to, const Form& other, const Rational& factor) {
  std::vector<std::pair<UnknownId, Rational>> sum;
  sum.reserve(to.terms.size() + other.terms.size());
  auto a = to.terms.begin();
  auto b = other.terms.begin();
  while (a != to.terms.end() || b != other.terms.end()) {
    if (b == other.terms.end() || (a != to.terms.end() && a->first < b->first)) {
      sum.push_back(std::move(*a++));
    } else if (a == to.terms.end() || b->first < a->first) {
      sum.emplace_back(b->first, factor.is_one() ? b->second : b->second * factor);
      ++b;
    } else {
      Rational c = a->second + b->second * factor;
      if (!c.is_zero()) sum.emplace_back(a->first, std::move(c));
      ++a;
      ++b;
    }
  }
  to.terms = std::move(sum);
}

}  // namespace

Form& Form::add(const Form& other, const Rational& factor) {
  if (factor.is_zero()) return *this;
  // Rows of a chain are short: a few terms go in where they belong, without memory of their own.
  constexpr std::size_t few = 4;
  if (other.terms.size() > few || &other == this) {
    merge(*this, other, factor);
  } else {
    auto at = terms.begin();
    for (const auto& [unknown, coefficient] : other.terms) {
      at = std::lower_bound(at, terms.end(), unknown, [](const auto& term, UnknownId id) { return term.first < id; });
      if (at == terms.end() || at->first != unknown) {
        at = terms.insert(at, {unknown, factor.is_one() ? coefficient : coefficient * factor});
        ++at;
        continue;
      }
      at->second += factor.is_one() ? coefficient : coefficient * factor;
      at = at->second.is_zero() ? terms.erase(at) : at + 1;
    }
  }
  constant += other.constant * factor;
  return *this;
}

Form& Form::scale(const Rational& factor) {
  if (factor.is_zero()) return *this = Form();
  for (auto& [unknown, c] : terms) c *= factor;
  constant *= factor;
  return *this;
}

Form Form::operator-() const {
  Form form = *this;
  return form.scale(-1);
}

Form Form::normalised() const {
  Form form = *this;
  if (!terms.empty() && !terms[0].second.is_one()) form.scale(Rational(1) / terms[0].second);
  return form;
}

std::size_t Form::hash() const {
  std::size_t h = constant.hash();
  for (const auto& [unknown, c] : terms) {
    h = h * 1000003 + static_cast<std::size_t>(unknown.value);
    h = h * 1000003 + c.hash();
  }
  return h;
}

}  // namespace prover
