#include "prover/proof/claim_rows.hpp"

#include <optional>

#include "prover/proof/number_text.hpp"

namespace prover {

namespace {

std::string value_text(UnknownId u, const Rational& value, const NameBook& names) {
  return names.is_angle(u) ? degrees_text(value) : number_text(value);
}

// u = ratio · t + rest, when the two are tied by what is known.
struct Tied {
  Rational ratio, rest;
};
std::optional<Tied> tied(UnknownId u, UnknownId t, const LinearSystem& known) {
  if (u == t) return Tied{1, 0};
  const Form fu = known.reduce(Form::of(u)), ft = known.reduce(Form::of(t));
  if (ft.terms.size() != 1 || fu.terms.size() != 1 || fu.terms[0].first != ft.terms[0].first) return std::nullopt;
  const Rational ratio = fu.terms[0].second / ft.terms[0].second;
  return Tied{ratio, fu.constant - ratio * ft.constant};
}

std::string multiple(const Rational& c, const std::string& what) {
  if (c.is_one()) return what;
  if (c == Rational(1, 2)) return "½" + what;
  if (c.is_integer()) return c.to_string() + what;
  const std::string decimal = number_text(c);
  return decimal.find('/') == std::string::npos && decimal.find('.') != std::string::npos ? decimal + what
                                                                                          : "(" + c.to_string() + ")" + what;
}

void append(std::string& text, bool positive, const std::string& what) {
  if (text.empty())
    text = positive ? what : "−" + what;
  else
    text += (positive ? " + " : " − ") + what;
}

// The equation solved for t when every other term is known: "180° − 52° − 64°".
std::string solved_side(const Form& claim, UnknownId t, const Rational& ct, const LinearSystem& known,
                        const NameBook& names) {
  std::string text;
  const bool degrees = names.has_angle(claim);
  auto number = [&](const Rational& v) { return degrees ? degrees_text(v) : number_text(v); };
  const Rational sign = ct.sign() > 0 ? Rational(-1) : Rational(1);  // move the rest to the other side
  const Rational constant = claim.constant * sign;
  if (constant.sign() > 0) append(text, true, number(constant));
  for (const bool positive : {true, false})
    for (const auto& [u, c] : claim.terms) {
      if (u == t) continue;
      const Rational moved = c * sign;
      if ((moved.sign() > 0) != positive) continue;
      const Rational size = positive ? moved : -moved;
      const std::string value = value_text(u, *known.value(u), names);
      append(text, positive, size.is_one() ? value : multiple(size, "") + " × " + value);
    }
  if (constant.sign() < 0) append(text, false, number(-constant));
  return text;
}

}  // namespace

ClaimRows claim_rows(const Form& claim, const LinearSystem& known, const NameBook& names,
                     const std::set<UnknownId>& wanted) {
  ClaimRows out;
  std::vector<UnknownId> open;
  for (const auto& [u, c] : claim.terms) {
    if (known.value(u))
      out.values_used.push_back(u);
    else
      open.push_back(u);
  }
  LinearSystem after = known;
  after.add(claim);
  if (open.size() == 1) {
    const UnknownId t = open[0];
    const Rational ct = claim.coefficient(t);
    const auto value = after.value(t);
    if (!value) {
      out.rows = {names.equation(claim)};
      return out;
    }
    out.settled = t;
    out.value = *value;
    const std::string answer = value_text(t, *value, names);
    const bool equality = claim.terms.size() == 2 && claim.constant.is_zero() &&
                          (claim.terms[0].second + claim.terms[1].second).is_zero();
    if (claim.terms.size() == 1) {
      out.rows = {names.of(t) + " = " + answer};
    } else if (equality) {
      const UnknownId other = claim.terms[0].first == t ? claim.terms[1].first : claim.terms[0].first;
      out.rows = {names.of(t) + " = " + names.of(other) + " = " + answer};
    } else {
      const Rational size = ct.sign() > 0 ? ct : -ct;
      std::string side = solved_side(claim, t, ct, known, names);
      if (!size.is_one())
        side = size < Rational(1) && (Rational(1) / size).is_integer()
                   ? (Rational(1) / size).to_string() + " × (" + side + ")"
                   : "(" + side + ") ÷ " + size.to_string();
      // A whole made of parts keeps its parts' names.
      if (claim.constant.is_zero() && size.is_one() && claim.terms.size() == 3) {
        Form rest;
        for (const auto& [u, c] : claim.terms)
          if (u != t) rest.terms.emplace_back(u, ct.sign() > 0 ? -c : c);
        out.rows = {names.of(t) + " = " + names.sum(rest), "= " + side, "= " + answer};
      } else {
        out.rows = {names.of(t) + " = " + side, "= " + answer};
      }
    }
    return out;
  }
  out.rows = {names.equation(claim)};
  if (open.size() < 2) return out;
  // Several unknowns that are tied to one: write all in terms of it and solve.
  std::vector<UnknownId> targets;
  for (UnknownId u : open)
    if (wanted.contains(u)) targets.insert(targets.begin(), u);
    else targets.push_back(u);
  // An unknown number (x) carries the others where there is one.
  for (UnknownId u : wanted)
    if (names.is_number(u)) targets.insert(targets.begin(), u);
  for (UnknownId u : open) {
    const Form f = known.reduce(Form::of(u));
    for (const auto& [v, c] : f.terms)
      if (names.is_number(v)) targets.insert(targets.begin(), v);
  }
  for (UnknownId t : targets) {
    const auto value = after.value(t);
    if (!value || known.value(t)) continue;
    std::string text;
    Rational constant = -claim.constant, coefficient;
    bool all_tied = true;
    std::vector<Form> relations;
    std::string left;
    for (const auto& [u, c] : claim.terms) {
      if (const auto v = known.value(u)) {
        constant -= c * *v;
        append(left, c.sign() > 0, multiple(c.sign() > 0 ? c : -c, value_text(u, *v, names)));
        continue;
      }
      const auto tie = tied(u, t, known);
      if (!tie) {
        all_tied = false;
        break;
      }
      const Rational part = c * tie->ratio;
      std::string written = multiple(part.sign() > 0 ? part : -part, names.of(t));
      append(left, part.sign() > 0, written);
      const Rational rest = c * tie->rest;
      if (!rest.is_zero()) {
        const bool degrees = names.has_angle(claim) && !names.is_number(t);
        append(left, rest.sign() > 0,
               degrees ? degrees_text(rest.sign() > 0 ? rest : -rest) : number_text(rest.sign() > 0 ? rest : -rest));
      }
      coefficient += part;
      constant -= rest;
      if (u != t) relations.push_back(Form::of(u).add(Form::of(t), -tie->ratio).add(Form::number(-tie->rest)));
    }
    if (!all_tied) continue;
    out.settled = t;
    out.value = *value;
    out.relations_used = relations;
    const std::string answer = value_text(t, *value, names);
    const bool same_kind = !names.is_number(t);
    const Rational right = -claim.constant;
    const std::string right_text = same_kind && names.is_angle(t) ? degrees_text(right) : number_text(right);
    out.rows.push_back("so " + left + " = " + right_text);
    out.rows.push_back(names.of(t) + " = " + answer);
    return out;
  }
  out.values_used.clear();  // the equation stands as it is: no number was put in
  return out;
}

std::vector<std::string> goal_rows(const Goal& goal, const std::vector<Form>& forms, const LinearSystem& known,
                                   const NameBook& names, const Names& points) {
  std::vector<std::string> rows;
  if (goal.kind == GoalKind::prove) {
    for (const Phrase& claim : goal.claims) rows.push_back(describe(claim, points));
    return rows;
  }
  if (forms.empty()) return rows;
  const Expression& asked = goal.claims[0].relation.expressions[0];
  const std::string what = describe(asked, points);
  // forms[0] is "asked − value = 0"; print the parts where more than one was asked for.
  const Form& form = forms[0];
  Rational value;
  for (const auto& [u, c] : form.terms)
    if (const auto v = known.value(u)) value += c * *v;
  std::string parts;
  for (const auto& [u, c] : form.terms) {
    const auto v = known.value(u);
    if (!v) {
      parts.clear();
      break;
    }
    append(parts, c.sign() > 0, multiple(c.sign() > 0 ? c : -c, value_text(u, *v, names)));
  }
  const bool degrees = names.has_angle(form);
  const auto* angle = asked.terms.size() == 1 ? std::get_if<Angle>(&asked.terms[0].quantity) : nullptr;
  if (angle && angle->reflex && form.terms.size() == 1 && known.value(form.terms[0].first)) {
    const Rational plain = *known.value(form.terms[0].first);
    rows = {what + " = 360° − " + degrees_text(plain), "= " + degrees_text(Rational(360) - plain)};
    return rows;
  }
  const Rational total = form.terms.size() == 1 && form.terms[0].second.is_one() ? -form.constant : -form.constant;
  const std::string answer = degrees ? degrees_text(total) : number_text(total);
  if (form.terms.size() > 1 && !parts.empty())
    rows = {what + " = " + parts, "= " + answer};
  else
    rows = {what + " = " + answer};
  return rows;
}

}  // namespace prover
