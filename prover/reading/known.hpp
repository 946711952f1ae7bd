// What the lines so far have settled: numbers, and while an unknown is called x for short, sizes in terms of x. A
// size is put in where it is known, whether it is 52° or 2x.
#pragma once
#include <optional>
#include <string>

#include "prover/algebra/linear_system.hpp"

namespace prover {

struct Size {  // multiple · letter + rest
  Rational multiple, rest;
  bool is_number() const { return multiple.is_zero(); }
  friend bool operator==(const Size&, const Size&) = default;
};
Size operator+(const Size& a, const Size& b);
Size operator*(const Rational& c, const Size& a);

class Known {
 public:
  void add(const Form& form);
  // From now on `unknown` has a letter. "Let ∠OST = x."
  void call(UnknownId unknown, std::string letter);
  UnknownId called() const { return called_; }
  const std::string& letter() const { return letter_; }

  std::optional<Rational> value(UnknownId unknown) const { return system_.value(unknown); }
  std::optional<Size> size(UnknownId unknown) const;  // a number, or while the letter is open in terms of it
  // As it was in terms of the letter, also when the letter has its number since.
  std::optional<Size> size_in_letter(UnknownId unknown) const;
  Form reduce(const Form& form) const { return system_.reduce(form); }
  const LinearSystem& system() const { return system_; }

  // "52°", "2x", "x + 36°", "180° − 2x".
  std::string text(const Size& size, bool degrees) const;

 private:
  std::optional<Size> size_in(const LinearSystem& system, UnknownId unknown) const;

  LinearSystem system_;
  std::optional<LinearSystem> with_letter_;  // as long as the letter was open
  UnknownId called_;
  std::string letter_;
};

}  // namespace prover
