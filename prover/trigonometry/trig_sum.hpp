// Sums of cosines: Σ r · cos(f) with rational coefficients r, where f is a linear form in angles (degrees). Every
// product of sines is one, by 2 cos a cos b = cos(a + b) + cos(a − b); so each condition of a figure that the law of
// sines gives takes this shape, and its derivatives do.
#pragma once
#include <map>
#include <optional>
#include <vector>

#include "prover/fact/form.hpp"
#include "prover/trigonometry/root_sum.hpp"

namespace prover {

struct FormOrder {  // any fixed order
  bool operator()(const Form& a, const Form& b) const;
};

class TrigSum {
 public:
  static TrigSum number(const Rational& value);
  TrigSum& add(const TrigSum& other, const Rational& factor = 1);
  TrigSum times_sine(const Form& angle) const;
  bool is_empty() const { return terms_.empty(); }
  const std::map<Form, Rational, FormOrder>& terms() const { return terms_; }

 private:
  void put(Form angle, Rational factor);
  std::map<Form, Rational, FormOrder> terms_;  // cos(−f) = cos f and cos(f + 180°) = −cos f: each cosine has one form
};

// A product of sines of angles between 0° and 180°.
struct SineProduct {
  Rational factor = 1;
  std::vector<Form> sines;  // a repeated factor stands here repeatedly
};
TrigSum expanded(const std::vector<SineProduct>& sum);

// sin f = sin(180° − f): of the two the one whose first unknown has a positive coefficient; a number at most 90.
Form same_sine(const Form& angle);

// What a sum says of one unknown u once all others have values: Σ_m γ_m e^(imu).
using Frequencies = std::map<Rational, RootSum>;

}  // namespace prover
