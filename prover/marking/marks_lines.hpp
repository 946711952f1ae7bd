// Which step of a way a pupil's line was meant for, told from the words of both. The judge says it of lines that are right;
// of a wrong line only this tells where its marks were lost.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/verdict/answer.hpp"

namespace prover {

// What a line or a claim speaks of, each angle and segment in one spelling, and the number at its end.
struct Spoken {
  std::vector<std::string> things;  // in order; "∠KLQ", "KL", "△KLM", "x"
  std::string first;                // what stands alone before its first sign
  std::string number;               // "52", "23 1/3"; empty: it does not end in a number
  std::string relation;             // "=", "∥", "⟂", "≅", "~"
};
Spoken spoken(const std::string& text);

// The step that the text is about: the same thing alone on its left, or all the same things; the first of `steps` (by number)
// that fits.
std::optional<int> step_meant(const std::string& text, const std::vector<AnswerStep>& steps, const std::vector<int>& among);

// It is congruent or similar triangles in both, of the same corners in another order.
bool same_triangles_otherwise(const Spoken& a, const Spoken& b);
// Both are the same but for the number.
bool same_but_number(const Spoken& a, const Spoken& b);
// An angle that is no angle: "∠KLQ = −6°".
bool impossible_angle(const std::string& text);

}  // namespace prover
