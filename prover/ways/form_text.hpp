// A form as text that is equal exactly when the form is: keys of maps, and one order on every machine.
#pragma once
#include <string>
#include <vector>

#include "prover/fact/form.hpp"

namespace prover {

inline std::string text_of(const Form& form) {
  std::string text;
  for (const auto& [u, c] : form.terms) text += std::to_string(u.index()) + "*" + c.to_string() + " ";
  return text + form.constant.to_string();
}

inline std::string text_of(const std::vector<Form>& forms) {
  std::string text;
  for (const Form& f : forms) text += text_of(f) + ";";
  return text;
}

}  // namespace prover
