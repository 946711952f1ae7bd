#include "prover/trigonometry/trig_sum.hpp"

#include "prover/trigonometry/degrees.hpp"

namespace prover {

bool FormOrder::operator()(const Form& a, const Form& b) const {
  if (a.terms.size() != b.terms.size()) return a.terms.size() < b.terms.size();
  for (std::size_t i = 0; i < a.terms.size(); ++i) {
    if (a.terms[i].first != b.terms[i].first) return a.terms[i].first < b.terms[i].first;
    if (!(a.terms[i].second == b.terms[i].second)) return a.terms[i].second < b.terms[i].second;
  }
  return a.constant < b.constant;
}

TrigSum TrigSum::number(const Rational& value) {
  TrigSum sum;
  sum.put(Form(), value);
  return sum;
}

void TrigSum::put(Form angle, Rational factor) {
  if (factor.is_zero()) return;
  if (!angle.terms.empty() && angle.terms[0].second.sign() < 0) angle = -angle;
  angle.constant = within(angle.constant, 360);
  if (angle.terms.empty() && angle.constant > Rational(180)) angle.constant = Rational(360) - angle.constant;
  if (angle.terms.empty() ? angle.constant > Rational(90) : angle.constant >= Rational(180)) {
    angle.constant = angle.terms.empty() ? Rational(180) - angle.constant : angle.constant - Rational(180);
    factor = -factor;
  }
  if (angle.terms.empty() && angle.constant == Rational(90)) return;
  Rational& coefficient = terms_[angle];
  coefficient += factor;
  if (coefficient.is_zero()) terms_.erase(angle);
}

TrigSum& TrigSum::add(const TrigSum& other, const Rational& factor) {
  for (const auto& [angle, r] : other.terms_) put(angle, r * factor);
  return *this;
}

TrigSum TrigSum::times_sine(const Form& angle) const {
  Form from_cosine = angle;  // sin f = cos(f − 90°)
  from_cosine.constant -= 90;
  TrigSum product;
  for (const auto& [f, r] : terms_) {
    Form sum = f, difference = f;
    product.put(sum.add(from_cosine), r / 2);
    product.put(difference.add(from_cosine, -1), r / 2);
  }
  return product;
}

TrigSum expanded(const std::vector<SineProduct>& sum) {
  TrigSum result;
  for (const SineProduct& product : sum) {
    TrigSum one = TrigSum::number(product.factor);
    for (const Form& angle : product.sines) one = one.times_sine(angle);
    result.add(one);
  }
  return result;
}

Form same_sine(const Form& angle) {
  const bool turn = angle.terms.empty() ? angle.constant > Rational(90) : angle.terms[0].second.sign() < 0;
  if (!turn) return angle;
  Form other = -angle;
  other.constant += 180;
  return other;
}

}  // namespace prover
