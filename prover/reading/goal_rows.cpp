#include "prover/reading/goal_rows.hpp"

#include <algorithm>

#include "prover/reading/number_text.hpp"

namespace prover {

namespace {

// "7x°", "(5x − 1)°": an angle that the givens tie to an unknown number.
std::string in_unknown_number(UnknownId asked, const LinearSystem& given, const NameBook& names) {
  const Form form = given.reduce(Form::of(asked));
  for (const UnknownId x : names.numbers()) {
    const Form number = given.reduce(Form::of(x));
    if (x == asked || form.terms.size() != 1 || number.terms.size() != 1 || form.terms[0].first != number.terms[0].first) continue;
    const Rational multiple = form.terms[0].second / number.terms[0].second;
    Form text = Form::of(x, multiple);
    text.constant = form.constant - multiple * number.constant;
    const std::string sum = names.sum(text), unit = names.is_angle(asked) ? "°" : "";
    return text.constant.is_zero() || unit.empty() ? sum + unit : "(" + sum + ")" + unit;
  }
  return {};
}

}  // namespace

std::vector<std::string> goal_rows(const Goal& goal, const std::vector<Form>& forms, const Known& known,
                                   const LinearSystem& given, const NameBook& names, const Names& points) {
  std::vector<std::string> rows;
  if (goal.kind == GoalKind::prove) {
    for (const Phrase& claim : goal.claims) rows.push_back(describe(claim, points));
    return rows;
  }
  if (forms.empty()) return rows;
  const Expression& asked = goal.claims[0].relation.expressions[0];
  const std::string what = describe(asked, points);
  const auto* angle = asked.terms.size() == 1 ? std::get_if<Angle>(&asked.terms[0].quantity) : nullptr;
  // forms[0] is "asked − value = 0"; print the parts where more than one was asked for.
  const Form& form = forms[0];
  const bool degrees = names.has_angle(form);
  const auto text = [&](const Rational& v) { return degrees ? degrees_text(v) : number_text(v); };
  if (angle && angle->reflex && form.terms.size() == 1 && known.value(form.terms[0].first)) {
    const Rational plain = *known.value(form.terms[0].first);
    return {what + " = 360° − " + degrees_text(plain), "= " + degrees_text(Rational(360) - plain)};
  }
  // "∠LTM = ½∠LKM + 90°": the quantities that the answer may speak of stand on the right.
  if (!goal.in_terms_of.empty()) {
    std::vector<std::string> asked_for;  // as the book calls them: goals are noted first
    for (const Term& term : asked.terms) {
      Expression one;
      one.terms.push_back(term);
      one.terms[0].coefficient = 1;
      if (auto* plain = std::get_if<Angle>(&one.terms[0].quantity)) plain->reflex = plain->exterior = false;
      asked_for.push_back(describe(one, points));
    }
    Form side = Form::number(-form.constant);
    for (const auto& [u, c] : form.terms)
      if (std::find(asked_for.begin(), asked_for.end(), names.of(u)) == asked_for.end()) side.add(Form::of(u), -c);
    return {what + " = " + names.sum(side)};
  }
  const std::string answer = text(-form.constant);
  if (form.terms.size() == 1) {
    const auto& [u, c] = form.terms[0];
    const auto in_letter = known.size_in_letter(u);
    std::string side;
    if (in_letter && !in_letter->is_number() && u != known.called()) side = known.text(*in_letter, names.is_angle(u));
    if (side.empty() && c.is_one()) side = in_unknown_number(u, given, names);
    if (side.empty() || !c.is_one()) return {what + " = " + answer};
    return {what + " = " + side, "= " + answer};
  }
  std::string parts;
  for (const auto& [u, c] : form.terms) {
    const auto v = known.value(u);
    if (!v) return {what + " = " + answer};
    const Rational size = c.sign() > 0 ? c : -c;
    if (!parts.empty()) parts += c.sign() > 0 ? " + " : " − ";
    else if (c.sign() < 0) parts += "−";
    parts += (size.is_one() ? "" : multiple_text(size, "") + " × ") + (names.is_angle(u) ? degrees_text(*v) : number_text(*v));
  }
  return parts.empty() ? std::vector<std::string>{what + " = " + answer} : std::vector<std::string>{what + " = " + parts, "= " + answer};
}

}  // namespace prover
