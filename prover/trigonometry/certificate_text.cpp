#include "prover/trigonometry/certificate_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>

#include "prover/reading/number_text.hpp"
#include "prover/trigonometry/degrees.hpp"

namespace prover {

namespace {

using Letters = std::map<UnknownId, std::string>;
using Values = std::map<UnknownId, Rational>;

Form with_values(const Form& form, const Values& values) {
  Form result;
  result.constant = form.constant;
  for (const auto& [unknown, c] : form.terms) {
    const auto value = values.find(unknown);
    if (value == values.end())
      result.add(Form::of(unknown, c));
    else
      result.constant += c * value->second;
  }
  return result;
}

// "80° − x", "x + 20°", "2x".
std::string angle_text(const Form& form, const Letters& letters) {
  std::string text;
  const auto put = [&](bool negative, const std::string& what) {
    text += text.empty() ? (negative ? "−" : "") : (negative ? " − " : " + ");
    text += what;
  };
  std::vector<std::pair<bool, std::string>> parts;
  for (const auto& [unknown, c] : form.terms)
    parts.emplace_back(c.sign() < 0, multiple_text(c.sign() < 0 ? -c : c, letters.at(unknown)));
  if (!form.constant.is_zero() || parts.empty())
    parts.emplace_back(form.constant.sign() < 0, degrees_text(form.constant.sign() < 0 ? -form.constant : form.constant));
  std::stable_partition(parts.begin(), parts.end(), [](const auto& part) { return !part.first; });
  // A number stands before what is taken away from it, behind what is added.
  for (const auto& [negative, what] : parts) put(negative, what);
  return text;
}

std::string sine_text(const Form& form, const Letters& letters, int exponent) {
  const std::string inside = angle_text(form, letters);
  const bool plain = form.terms.size() + (form.constant.is_zero() && !form.terms.empty() ? 0 : 1) == 1;
  static const std::map<int, std::string> raised = {{1, "sin "}, {2, "sin² "}, {3, "sin³ "}, {4, "sin⁴ "}};
  const auto start = raised.find(exponent);
  std::string one = plain ? inside : "(" + inside + ")";
  if (start != raised.end()) return start->second + one;
  std::string text;
  for (int i = 0; i < exponent; ++i) text += (i == 0 ? "sin " : " · sin ") + one;
  return text;
}

std::string product_text(const Rational& factor, const std::vector<Form>& sines, const Letters& letters) {
  std::map<Form, int, FormOrder> exponents;
  for (const Form& sine : sines) ++exponents[sine];
  std::vector<std::pair<Form, int>> ordered(exponents.begin(), exponents.end());
  std::stable_sort(ordered.begin(), ordered.end(), [](const auto& a, const auto& b) { return a.first.terms.size() > b.first.terms.size(); });
  std::string text = factor.is_one() && !ordered.empty() ? "" : number_text(factor);
  for (const auto& [sine, exponent] : ordered)
    text += (text.empty() ? "" : &sine == &ordered.front().first && text.back() != ' ' ? " " : " · ") + sine_text(sine, letters, exponent);
  return text;
}

std::string equation_text(const std::vector<SineProduct>& terms, const Letters& letters, const Values& values) {
  Rational scale = 1;
  for (const SineProduct& term : terms) scale *= denominator(term.factor * scale);
  std::string left, right;
  for (const SineProduct& term : terms) {
    std::vector<Form> sines;
    for (const Form& sine : term.sines) {
      const Form now = with_values(sine, values);
      if (!(now.terms.empty() && now.constant == Rational(90))) sines.push_back(now);
    }
    const Rational factor = term.factor * scale;
    std::string& side = factor.sign() > 0 ? left : right;
    side += (side.empty() ? "" : " + ") + product_text(factor.sign() > 0 ? factor : -factor, sines, letters);
  }
  return (left.empty() ? "0" : left) + " = " + (right.empty() ? "0" : right);
}

// sin f : sin g for f and g that move at one speed: which of the two ways round it grows. The derivative of its logarithm
// is cot f ∓ cot g, times the speed: sin (g ∓ f) over a product of sines, and that sum or difference does not move.
// Nothing when it stands still.
std::optional<bool> grows(const Form& f, const Form& g, UnknownId x, const std::map<UnknownId, double>& sizes) {
  const Rational speed = f.coefficient(x);
  const bool opposite = !(speed == g.coefficient(x));
  Form still = g;
  still.add(f, opposite ? 1 : -1);
  double degrees = still.constant.to_double();
  for (const auto& [unknown, c] : still.terms) degrees += c.to_double() * sizes.at(unknown);
  const double sign = std::sin(degrees * std::acos(-1.0) / 180) * speed.sign();
  if (std::fabs(sign) < 1e-9) return std::nullopt;
  return sign > 0;
}

std::string uniqueness_text(const SettledStep& step, const std::string& letter, const Letters& letters,
                            const std::map<UnknownId, double>& sizes) {
  if (step.by == SettledBy::only_root)
    return fmt::format("Between {} and {} no other {} meets the condition (interval arithmetic).", degrees_text(step.low),
                       degrees_text(step.high), letter);
  // One moving sine in either term: their quotient only grows.
  std::vector<std::pair<const SineProduct*, const Form*>> moving;
  for (const SineProduct& term : step.shown)
    for (const Form& sine : term.sines)
      if (!sine.coefficient(step.angle).is_zero()) moving.emplace_back(&term, &sine);
  if (step.shown.size() == 2 && moving.size() == 2 && moving[0].first != moving[1].first) {
    const Form* f = moving[0].second;
    const Form* g = moving[1].second;
    const Rational a = f->coefficient(step.angle), b = g->coefficient(step.angle);
    if (a == b || a == -b)
      if (const auto upwards = grows(*f, *g, step.angle, sizes)) {
        if (!*upwards) std::swap(f, g);
        return fmt::format("As {} grows, {} : {} only grows, so no other {} meets the condition.", letter,
                           sine_text(*f, letters, 1), sine_text(*g, letters, 1), letter);
      }
  }
  // A sin mx + B cos mx = 0.
  const TrigSum sum = expanded(step.shown);
  Rational multiple = 1;
  for (const auto& [f, r] : sum.terms()) {
    const Rational c = f.coefficient(step.angle);
    if (!c.is_zero()) multiple = c.sign() < 0 ? -c : c;
  }
  if (multiple.is_one())
    return fmt::format("The condition fixes tan {}, and between 0° and 180° only one angle has a given tangent.", letter);
  return fmt::format("Multiplied out, the condition fixes tan {}, and between {} and {} only one {} has it.",
                     multiple_text(multiple, letter), degrees_text(step.low), degrees_text(step.high), letter);
}

std::string letters_of(const std::array<PointId, 3>& points, const Names& names) {
  return names.of(points[0]) + names.of(points[1]) + names.of(points[2]);
}

}  // namespace

AnswerCertificate certificate_text(const CertifiedCase& one, const Statement& statement) {
  AnswerCertificate text;
  const UnknownTable& unknowns = one.workings->unknowns;
  Letters letters;
  Values values;
  std::map<UnknownId, double> sizes;
  std::set<std::string> taken;
  for (std::size_t i = 0; i < unknowns.size(); ++i) taken.insert(unknowns[UnknownId(static_cast<std::int64_t>(i))].name);
  std::vector<std::string> free;
  for (const char* letter : {"x", "y", "z", "u", "v", "w", "t", "s", "r", "q", "p"})
    if (!taken.contains(letter)) free.emplace_back(letter);
  for (const SettledStep& step : one.settling.steps) {
    const Unknown& unknown = unknowns[step.angle];
    const bool number = unknown.kind == UnknownKind::number;
    const std::string letter = number ? unknown.name : free[std::min(letters.size(), free.size() - 1)];
    letters[step.angle] = letter;
    sizes[step.angle] = step.measured;
    AnswerCertificateStep part;
    part.letter = letter;
    part.angle = describe(unknown, statement.names);
    part.measured = step.measured;
    for (const auto& triangle : step.condition.triangles) part.triangles.push_back(letters_of(triangle, statement.names));
    part.condition = equation_text(step.shown, letters, values);
    part.only_one = uniqueness_text(step, letter, letters, sizes);
    part.low = step.low.to_string();
    part.high = step.high.to_string();
    if (step.value) {
      values[step.angle] = *step.value;
      part.value = step.value->to_string();
      part.with_value = equation_text(step.shown, letters, values);
    }
    text.steps.push_back(std::move(part));
  }
  for (const Form& form : one.settling.proved_forms) {
    // The angle that is said stands alone on the left; what settles it is written with its letter.
    UnknownId subject;
    for (const auto& [unknown, c] : form.terms)
      if (!letters.contains(unknown) && unknowns[unknown].kind != UnknownKind::length && !subject.valid()) subject = unknown;
    if (!subject.valid()) {
      text.relations.push_back(describe_equation(form, unknowns, statement.names));
      continue;
    }
    Form rest = form;
    rest.scale(Rational(-1) / form.coefficient(subject));
    rest.add(Form::of(subject));
    bool lettered = true;
    for (const auto& [unknown, c] : rest.terms) lettered = lettered && letters.contains(unknown);
    text.relations.push_back(lettered ? describe(unknowns[subject], statement.names) + " = " + angle_text(rest, letters)
                                      : describe_equation(form, unknowns, statement.names));
  }
  for (const SineCondition& identity : one.settling.identities) text.identities.push_back(equation_text(identity.terms, letters, values));
  if (one.settling.value) text.value = one.settling.value->to_string();
  text.case_name = one.name;
  text.seen_in_figure = one.seen;
  return text;
}

}  // namespace prover
