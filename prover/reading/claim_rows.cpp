#include "prover/reading/claim_rows.hpp"

#include <optional>

#include "prover/reading/number_text.hpp"

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

// All numbers are known and do not fit: "but 50° + 55° + 80° = 185°".
std::string conflict_row(const Form& claim, const LinearSystem& known, const NameBook& names) {
  std::string text;
  Rational total;
  for (const auto& [u, c] : claim.terms) {
    const Rational value = *known.value(u), size = c.sign() > 0 ? c : -c;
    append(text, c.sign() > 0, size.is_one() ? value_text(u, value, names) : number_text(size) + " × " + value_text(u, value, names));
    total += c * value;
  }
  const std::string sum = names.has_angle(claim) ? degrees_text(total) : number_text(total);
  return claim.terms.size() > 1 ? "but " + text + " = " + sum : "but " + names.of(claim.terms[0].first) + " = " + text;
}

// The claim with every open unknown written as a multiple of t: Σ multiples = total, numbers moved to the right.
struct InTermsOf {
  std::vector<Rational> multiples;
  Rational coefficient;           // their sum
  Rational total;
  bool plain = true;              // every unknown is a multiple of t, with nothing added
  std::vector<Form> relations;    // by which the unknowns are tied to t
};
std::optional<InTermsOf> in_terms_of(const Form& claim, UnknownId t, const LinearSystem& known) {
  InTermsOf out;
  out.total = -claim.constant;
  for (const auto& [u, c] : claim.terms) {
    if (const auto v = known.value(u)) {
      out.total -= c * *v;
      continue;
    }
    const auto tie = tied(u, t, known);
    if (!tie) return std::nullopt;
    out.multiples.push_back(c * tie->ratio);
    out.coefficient += out.multiples.back();
    out.total -= c * tie->rest;
    out.plain = out.plain && tie->rest.is_zero();
    if (u != t) out.relations.push_back(Form::of(u).add(Form::of(t), -tie->ratio).add(Form::number(-tie->rest)));
  }
  if (out.coefficient.is_zero()) return std::nullopt;
  return out;
}

// "(180° − 52°) ÷ 2": the constant less what is known, divided among the equal parts.
std::string quotient(const Form& claim, const InTermsOf& solved, const LinearSystem& known, const NameBook& names) {
  const bool degrees = names.has_angle(claim);
  auto amount = [&](const Rational& v) { return degrees ? degrees_text(v) : number_text(v); };
  const bool turn = solved.coefficient.sign() < 0;  // so that the unknown is counted positively
  std::string side;
  const Rational right = -claim.constant;
  if (!right.is_zero()) append(side, (right.sign() > 0) != turn, amount(right.sign() > 0 ? right : -right));
  for (const auto& [u, c] : claim.terms)
    if (const auto v = known.value(u)) {
      const Rational size = c.sign() > 0 ? c : -c;
      append(side, (c.sign() < 0) != turn, size.is_one() ? amount(*v) : number_text(size) + " × " + amount(*v));
    }
  const Rational size = turn ? -solved.coefficient : solved.coefficient;
  if (side.empty() || size.is_one()) return side;
  if (side.find(' ') != std::string::npos) side = "(" + side + ")";
  const Rational inverse = Rational(1) / size;
  return size < Rational(1) && inverse.is_integer() ? inverse.to_string() + " × " + side
                                                    : side + " ÷ " + number_text(size);
}

// "so 5∠KNL = 360°", or with an unknown number, whose terms keep their places, "so 2x + 3x = 90".
std::string collected(const Form& claim, const InTermsOf& solved, UnknownId t, const NameBook& names) {
  if (names.is_number(t)) {
    std::string left;
    for (const Rational& m : solved.multiples) append(left, m.sign() > 0, multiple(m.sign() > 0 ? m : -m, names.of(t)));
    return "so " + left + " = " + number_text(solved.total);
  }
  Rational factor = solved.coefficient.sign() > 0 ? Rational(1) : Rational(-1);
  for (std::int64_t k = 2; k <= 12 && !(solved.coefficient * factor).is_integer(); ++k)
    if ((solved.coefficient * Rational(k)).is_integer()) factor *= Rational(k);
  const Rational count = solved.coefficient * factor, total = solved.total * factor;
  if (count.is_one()) return {};
  return "so " + multiple(count, names.of(t)) + " = " + (names.has_angle(claim) ? degrees_text(total) : number_text(total));
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
  if (open.empty() && !known.reduce(claim).is_zero()) out.rows.push_back(conflict_row(claim, known, names));
  if (open.size() < 2) return out;
  // Several unknowns that are tied to one: write all in terms of it and solve.
  std::vector<UnknownId> targets = open;
  for (UnknownId u : wanted)
    if (!known.value(u)) targets.insert(targets.begin(), u);
  // An unknown number (x) carries the others where there is one.
  for (UnknownId u : names.numbers()) targets.insert(targets.begin(), u);
  for (UnknownId t : targets) {
    const auto value = after.value(t);
    if (!value || known.value(t)) continue;
    const auto solved = in_terms_of(claim, t, known);
    if (!solved) continue;
    out.settled = t;
    out.value = *value;
    out.relations_used = solved->relations;
    const std::string answer = value_text(t, *value, names);
    const std::string side = solved->plain && !names.is_number(t) ? quotient(claim, *solved, known, names) : "";
    if (!side.empty()) {
      out.rows = {names.of(t) + " = " + side, "= " + answer};
    } else {
      if (const std::string row = collected(claim, *solved, t, names); !row.empty()) out.rows.push_back(row);
      out.rows.push_back(names.of(t) + " = " + answer);
    }
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
  const Rational total = -form.constant;
  const std::string answer = degrees ? degrees_text(total) : number_text(total);
  if (form.terms.size() > 1 && !parts.empty())
    rows = {what + " = " + parts, "= " + answer};
  else
    rows = {what + " = " + answer};
  return rows;
}

}  // namespace prover
