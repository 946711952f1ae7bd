#include "prover/reading/known.hpp"

#include "prover/reading/number_text.hpp"

namespace prover {

Size operator+(const Size& a, const Size& b) { return {a.multiple + b.multiple, a.rest + b.rest}; }
Size operator*(const Rational& c, const Size& a) { return {c * a.multiple, c * a.rest}; }

void Known::add(const Form& form) {
  system_.add(form);
  if (called_.valid() && !system_.value(called_)) with_letter_ = system_;
}

void Known::call(UnknownId unknown, std::string letter) {
  called_ = unknown;
  letter_ = std::move(letter);
  if (!system_.value(unknown)) with_letter_ = system_;
}

std::optional<Size> Known::size_in(const LinearSystem& system, UnknownId unknown) const {
  if (const auto number = system.value(unknown)) return Size{0, *number};
  if (!called_.valid()) return std::nullopt;
  const Form of_letter = system.reduce(Form::of(called_)), form = system.reduce(Form::of(unknown));
  if (of_letter.terms.size() != 1 || form.terms.size() != 1 || form.terms[0].first != of_letter.terms[0].first)
    return std::nullopt;
  const Rational multiple = form.terms[0].second / of_letter.terms[0].second;
  return Size{multiple, form.constant - multiple * of_letter.constant};
}

std::optional<Size> Known::size(UnknownId unknown) const { return size_in(system_, unknown); }

std::optional<Size> Known::size_in_letter(UnknownId unknown) const {
  return with_letter_ ? size_in(*with_letter_, unknown) : std::nullopt;
}

std::string Known::text(const Size& size, bool degrees) const {
  auto number = [&](const Rational& v) { return degrees ? degrees_text(v) : number_text(v); };
  if (size.is_number()) return number(size.rest);
  const bool positive = size.multiple.sign() > 0;
  const std::string part = multiple_text(positive ? size.multiple : -size.multiple, letter_);
  if (size.rest.is_zero()) return positive ? part : "−" + part;
  if (!positive) return size.rest.sign() > 0 ? number(size.rest) + " − " + part : "−" + part + " − " + number(-size.rest);
  return part + (size.rest.sign() > 0 ? " + " + number(size.rest) : " − " + number(-size.rest));
}

}  // namespace prover
