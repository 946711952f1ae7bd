// Relations between quantities as constraints: angles in radians, lengths by the sum of their sizes.
#include <optional>
#include <utility>

#include "prover/sketch/constraint.hpp"
#include "prover/sketch/plane.hpp"

namespace prover::sketching {
namespace {

Form form_of(const Relation& relation) {
  Form form = Form::numbers;
  for (const Expression& expression : relation.expressions)
    for (const Term& term : expression.terms) {
      if (std::holds_alternative<Angle>(term.quantity)) return Form::angles;
      if (std::holds_alternative<Segment>(term.quantity)) form = Form::lengths;
    }
  return form;
}

// Adds factor · expression; false when it speaks of something the figure does not have.
bool add(Constraint& sum, const Expression& expression, double factor, const Layout& layout) {
  const double measure = sum.form == Form::angles    ? degree
                         : sum.form == Form::lengths ? 1 / layout.length_unit
                                                     : 1;  // of 1, and of an unknown number
  const auto known = [&](PointId p) { return p.valid() && p.index() < layout.points; };
  for (const Term& term : expression.terms) {
    double coefficient = factor * term.coefficient.to_double();
    if (std::holds_alternative<One>(term.quantity)) {
      sum.constant += coefficient * measure;
    } else if (const auto* number = std::get_if<Number>(&term.quantity)) {
      const int index = layout.number(number->name);
      if (index < 0) return false;
      sum.terms.push_back({.kind = Summand::Kind::number, .coefficient = coefficient * measure, .a = index});
    } else if (const auto* segment = std::get_if<Segment>(&term.quantity)) {
      if (sum.form != Form::lengths || !known(segment->a) || !known(segment->b)) return false;
      sum.terms.push_back({.coefficient = coefficient, .a = segment->a.value, .b = segment->b.value});
    } else if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
      if (!known(angle->arm1) || !known(angle->vertex) || !known(angle->arm2)) return false;
      if (angle->exterior) {
        sum.constant += coefficient * pi;
        coefficient = -coefficient;
      }
      if (angle->reflex) {
        sum.constant += coefficient * 2 * pi;
        coefficient = -coefficient;
      }
      sum.terms.push_back(
          {.coefficient = coefficient, .a = angle->arm1.value, .b = angle->vertex.value, .c = angle->arm2.value});
    }
  }
  return true;
}

}  // namespace

std::vector<Clause> clauses_of(const Relation& relation, const Layout& layout) {
  const std::size_t count = relation.comparisons.size();
  if (count == 0 || relation.expressions.size() != count + 1) return {Clause{}};
  std::vector<Clause> clauses;
  for (std::size_t i = 0; i < count; ++i) {
    const Comparison comparison = relation.comparisons[i];
    Constraint difference{.form = form_of(relation), .equation = comparison == Comparison::equal};
    const double sign = comparison == Comparison::less ? -1 : 1;
    if (!add(difference, relation.expressions[i], sign, layout) ||
        !add(difference, relation.expressions[i + 1], -sign, layout))
      return {Clause{}};
    clauses.push_back({.branches = {{std::move(difference)}}});
  }
  return clauses;
}

}  // namespace prover::sketching
