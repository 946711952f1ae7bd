// Numbers as a class writes them: 64°, 18.5°, 23⅓°, and other fractions as 77 1/7; multiples and lists.
#pragma once
#include <string>
#include <vector>

#include "prover/base/rational.hpp"

namespace prover {

std::string number_text(const Rational& value);
std::string degrees_text(const Rational& value);

// "∠KLM", "2∠KLM", "½∠KLM", "1.5x", "(3/7)∠KLM".
std::string multiple_text(const Rational& factor, const std::string& what);

// "KL, KM and LM".
std::string enumerated(const std::vector<std::string>& parts);

}  // namespace prover
