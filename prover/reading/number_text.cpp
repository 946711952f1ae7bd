#include "prover/reading/number_text.hpp"

namespace prover {

std::string number_text(const Rational& value) {
  if (value.sign() < 0) return "−" + number_text(-value);
  if (value.is_integer()) return value.to_string();
  // Up to four decimal places where they are exact.
  Rational power = 1;
  for (int places = 1; places <= 4; ++places) {
    power *= 10;
    const Rational scaled = value * power;
    if (!scaled.is_integer()) continue;
    std::string digits = scaled.to_string();
    while (digits.size() <= static_cast<std::size_t>(places)) digits.insert(0, "0");
    digits.insert(digits.size() - static_cast<std::size_t>(places), ".");
    return digits;
  }
  const std::string exact = value.to_string();
  const std::size_t slash = exact.find('/');
  const Rational numerator = *Rational::parse(exact.substr(0, slash)), denominator = *Rational::parse(exact.substr(slash + 1));
  const auto n = numerator.to_int64(), d = denominator.to_int64();
  if (!n || !d) return exact;
  const std::string whole = *n / *d == 0 ? "" : std::to_string(*n / *d);
  if (*d == 3) return whole + (*n % 3 == 1 ? "⅓" : "⅔");
  const std::string part = std::to_string(*n % *d) + "/" + std::to_string(*d);
  return whole.empty() ? part : whole + " " + part;
}

std::string degrees_text(const Rational& value) { return number_text(value) + "°"; }

std::string multiple_text(const Rational& factor, const std::string& what) {
  if (factor.is_one()) return what;
  if (factor == Rational(1, 2)) return "½" + what;
  if (factor == Rational(1, 3)) return "⅓" + what;
  const std::string number = number_text(factor);
  return number.find('/') == number.npos && number.find("⅓") == number.npos && number.find("⅔") == number.npos
             ? number + what
             : "(" + factor.to_string() + ")" + what;
}

std::string enumerated(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) text += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return text;
}

}  // namespace prover
