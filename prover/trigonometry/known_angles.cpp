#include "prover/trigonometry/known_angles.hpp"

namespace prover {

Form KnownAngles::open(const Form& form) const {
  Form rest = closure_.reduce(form);
  for (const Substitution& s : substitutions_) {
    const Rational c = rest.coefficient(s.unknown);
    if (c.is_zero()) continue;
    rest.add(Form::of(s.unknown), -c);
    rest.add(s.form, c);
  }
  return rest;
}

Form KnownAngles::closed(const Form& form) const {
  Form rest = open(form);
  for (const SettledAngle& s : settled_) {
    if (!s.value) continue;
    const Rational c = rest.coefficient(s.angle);
    if (c.is_zero()) continue;
    rest.add(Form::of(s.angle), -c);
    rest.constant += c * *s.value;
  }
  return rest;
}

void KnownAngles::settle(SettledAngle angle) {
  const Form now = open(Form::of(angle.angle));
  // One of the unknowns that it was said by gives way to the angle itself.
  for (const auto& [unknown, c] : now.terms) {
    bool is_settled = false;
    for (const SettledAngle& s : settled_) is_settled = is_settled || s.angle == unknown;
    if (is_settled) continue;
    if (unknown == angle.angle) break;
    Form form = now;
    form.add(Form::of(unknown), -c);
    form.add(Form::of(angle.angle), -1);
    form.scale(Rational(-1) / c);
    for (Substitution& s : substitutions_) {
      const Rational occurs = s.form.coefficient(unknown);
      if (occurs.is_zero()) continue;
      s.form.add(Form::of(unknown), -occurs);
      s.form.add(form, occurs);
    }
    substitutions_.push_back({unknown, std::move(form)});
    break;
  }
  settled_.push_back(std::move(angle));
}

const SettledAngle* KnownAngles::settled(UnknownId angle) const {
  for (const SettledAngle& s : settled_)
    if (!s.value && s.angle == angle) return &s;
  return nullptr;
}

}  // namespace prover
