#include "prover/verdict/goal_forms.hpp"

#include <algorithm>

#include "prover/algebra/positive.hpp"
#include "prover/chain/inequalities.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

std::vector<PointId> identity(const Arrangement& arrangement) {
  std::vector<PointId> places;
  for (std::size_t i = 0; i < arrangement.point_count(); ++i) places.emplace_back(static_cast<std::int64_t>(i));
  return places;
}

Form quantity_form(const Quantity& quantity, const Arrangement& arrangement, UnknownTable& unknowns) {
  Expression expression;
  expression.terms.push_back({1, quantity, {}});
  bool degenerate = false;
  return form_of(expression, identity(arrangement), arrangement, unknowns, degenerate);
}

// The asked quantity as constant + Σ c · named quantity, when the closure gives it so.
struct InTerms {
  Form named;        // Σ c · quantity, as a form
  std::string text;
};
std::optional<InTerms> in_terms_of(const Form& asked, const Goal& goal, const LinearSystem& closure,
                                   const Arrangement& arrangement, UnknownTable& unknowns, const Names& names) {
  LinearSystem span(true);
  std::vector<Form> parts;
  for (const Quantity& quantity : goal.in_terms_of) {
    parts.push_back(quantity_form(quantity, arrangement, unknowns));
    Form direction = closure.reduce(parts.back());
    direction.constant = 0;
    span.add(direction, static_cast<int>(parts.size()) - 1);
  }
  Form rest = closure.reduce(asked);
  rest.constant = 0;
  const auto certificate = span.certificate(rest);
  if (!certificate) return std::nullopt;
  InTerms result;
  Form remainder = asked;
  std::string text;
  for (const auto& [tag, c] : certificate->parts) {
    result.named.add(parts[static_cast<std::size_t>(tag)], c);
    remainder.add(parts[static_cast<std::size_t>(tag)], -c);
  }
  const Form constant = closure.reduce(remainder);
  if (!constant.terms.empty()) return std::nullopt;
  Expression expression;
  if (!constant.constant.is_zero()) expression.terms.push_back({constant.constant, One{}, {}});
  for (const auto& [tag, c] : certificate->parts)
    expression.terms.push_back({c, goal.in_terms_of[static_cast<std::size_t>(tag)], {}});
  result.named.constant += constant.constant;
  result.text = describe(expression, names);
  return result;
}

Phrase isosceles_at(const Phrase& phrase, std::size_t apex) {
  Phrase one = phrase;
  one.predicate = Predicate::isosceles_at;
  std::swap(one.points[0], one.points[apex]);
  return one;
}

bool follows(const Meaning& meaning, const LinearSystem& closure) {
  if (meaning.one_is_enough)
    return std::any_of(meaning.forms.begin(), meaning.forms.end(), [&](const Form& f) { return closure.entails(f); });
  return std::all_of(meaning.forms.begin(), meaning.forms.end(), [&](const Form& f) { return closure.entails(f); });
}

// "KL > KM": what the difference equals by the closure, when that is a sum of positive sizes.
void prove_inequalities(const Phrase& claim, const LinearSystem& closure, const Arrangement& arrangement,
                        UnknownTable& unknowns, GoalForms& goal) {
  for (Form& difference : given_differences(claim, arrangement, unknowns)) {
    const auto sum = as_positive_sum(difference, closure, unknowns);
    if (sum) goal.forms.push_back(Form(difference).add(*sum, -1));
    goal.open_comparison |= !sum;
    goal.positive.push_back(std::move(difference));
  }
}

void prove_claim(const Phrase& claim, const LinearSystem& closure, const Arrangement& arrangement,
                 UnknownTable& unknowns, const Names& names, GoalForms& goal) {
  Meaning meaning = meaning_of(claim, arrangement, unknowns);
  if (claim.predicate == Predicate::isosceles)  // whichever two sides are equal
    for (std::size_t apex = 0; apex < 3; ++apex) {
      Meaning one = meaning_of(isosceles_at(claim, apex), arrangement, unknowns);
      if (apex == 0 || follows(one, closure)) meaning = std::move(one);
    }
  const auto& comparisons = claim.relation.comparisons;
  const auto compared = static_cast<std::size_t>(
      std::count_if(comparisons.begin(), comparisons.end(), [](Comparison c) { return c != Comparison::equal; }));
  if (compared > 0 && !meaning.degenerate) {
    const std::size_t before = goal.positive.size();
    prove_inequalities(claim, closure, arrangement, unknowns, goal);
    goal.unsupported |= goal.positive.size() - before != compared;
    goal.forms.insert(goal.forms.end(), meaning.forms.begin(), meaning.forms.end());
    return;
  }
  const bool says_nothing = meaning.forms.empty() && meaning.positions.empty();
  if (meaning.unsupported || meaning.degenerate ||
      (says_nothing && claim.predicate != Predicate::collinear && claim.predicate != Predicate::on_line)) {
    goal.unsupported = true;
    return;
  }
  if (meaning.one_is_enough) {
    const auto known = std::find_if(meaning.forms.begin(), meaning.forms.end(),
                                    [&](const Form& f) { return closure.entails(f); });
    goal.forms.push_back(known == meaning.forms.end() ? meaning.forms.front() : *known);
  } else {
    goal.forms.insert(goal.forms.end(), meaning.forms.begin(), meaning.forms.end());
  }
  // These facts bring their positions with them.
  if (claim.predicate == Predicate::parallel || claim.predicate == Predicate::tangent ||
      claim.predicate == Predicate::tangent_circumcircle)
    return;
  for (const Position& position : meaning.positions) {
    goal.positions.push_back(canonical(position));
    if (!arrangement.known(position) && goal.missing_position.empty())
      goal.missing_position = describe(position, names);
  }
}

}  // namespace

void note_goal(const Goal& goal, const Arrangement& arrangement, UnknownTable& unknowns) {
  for (const Phrase& claim : goal.claims) {
    meaning_of(claim, arrangement, unknowns);
    if (claim.predicate != Predicate::relation) continue;
    for (const Expression& expression : claim.relation.expressions)
      for (const Term& term : expression.terms) quantity_form(term.quantity, arrangement, unknowns);
  }
}

GoalForms goal_forms(const Goal& goal, const LinearSystem& closure, const Arrangement& arrangement,
                     UnknownTable& unknowns, const Names& names) {
  GoalForms result;
  if (goal.kind == GoalKind::find) {
    bool degenerate = false;
    Form asked = form_of(goal.claims[0].relation.expressions[0], identity(arrangement), arrangement, unknowns, degenerate);
    const Form value = closure.reduce(asked);
    if (value.terms.empty()) {
      result.number = value.constant;
      result.value = value.constant.to_string();
      result.forms.push_back(asked.add(Form::number(-value.constant)));
      result.reached = true;
    } else if (!goal.in_terms_of.empty()) {
      if (const auto terms = in_terms_of(asked, goal, closure, arrangement, unknowns, names)) {
        result.value = terms->text;
        result.forms.push_back(asked.add(terms->named, -1));
        result.reached = true;
      }
    }
    return result;
  }
  for (const Phrase& claim : goal.claims) prove_claim(claim, closure, arrangement, unknowns, names, result);
  result.reached = !result.unsupported && !result.open_comparison && result.missing_position.empty() &&
                   std::all_of(result.forms.begin(), result.forms.end(),
                               [&](const Form& f) { return closure.entails(f); });
  return result;
}

}  // namespace prover
