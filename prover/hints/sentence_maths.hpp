// The mathematics in a sentence: numbers, names of angles and segments, relations. "One of the pair is ∠RVW; its corner is
// W." has one angle; "∠VWX = ∠RVW = 64° (alternate angles, RS ∥ TU)" has three relations and the number 64.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/base/rational.hpp"
#include "prover/language/phrase.hpp"

namespace prover {

struct SentenceNumber {
  Rational value;
  bool factor = false;  // "2∠KLM", "÷ 2": counts something, and is no size
};

struct SentenceMaths {
  std::vector<SentenceNumber> numbers;
  std::vector<std::string> quantities;  // "∠KLM", "KL", as written, in order
  std::vector<std::string> relations;   // "∠KLM = 64°", "KL ∥ MN": two sides each; a chain gives its neighbours and its ends
  std::vector<std::string> points;      // that it names, each once, in order
};

SentenceMaths maths_of(std::string_view sentence, const Names& names);

}  // namespace prover
