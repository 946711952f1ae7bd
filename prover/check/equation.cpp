#include "prover/check/equation.hpp"

#include <utility>

namespace prover::replay {
namespace {

// Takes the first key of each row out of `equation`.
void reduce(Equation& equation, const std::vector<Equation>& rows) {
  for (const Equation& row : rows) {
    const auto& [key, leading] = *row.terms.begin();
    if (const auto found = equation.terms.find(key); found != equation.terms.end())
      equation.add(row, -(found->second / leading));
  }
}

}  // namespace

Equation& Equation::add(const Equation& other, const Rational& factor) {
  if (factor.is_zero()) return *this;
  for (const auto& [key, coefficient] : other.terms) {
    Rational& mine = terms[key];
    mine += coefficient * factor;
    if (mine.is_zero()) terms.erase(key);
  }
  constant += other.constant * factor;
  return *this;
}

Equation& Equation::scale(const Rational& factor) {
  if (factor.is_zero()) terms.clear();
  for (auto& term : terms) term.second *= factor;
  constant *= factor;
  return *this;
}

Equation modulo(Equation equation, const std::vector<Equation>& known) {
  // A row is reduced by those before it, so it holds none of their first keys, and one pass in order
  // suffices.
  std::vector<Equation> rows;
  for (Equation row : known) {
    reduce(row, rows);
    if (!row.is_constant()) rows.push_back(std::move(row));
  }
  reduce(equation, rows);
  return equation;
}

bool in_span(const Equation& target, const std::vector<Equation>& known) {
  return modulo(target, known).is_zero();
}

}  // namespace prover::replay
