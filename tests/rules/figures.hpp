// Phrases as text, drawn and measured: the tests of this folder judge rules by figures alone.
#pragma once
#include <catch2/catch.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/problem_text.hpp"
#include "prover/sketch/sketch.hpp"

namespace rule_tests {

struct Drawn {
  prover::Names names;
  std::vector<prover::Phrase> givens;
  std::vector<prover::Phrase> claims;
  prover::SketchReport report;
};

inline std::vector<prover::Phrase> parsed(std::string_view text, prover::Names& names) {
  std::vector<prover::Diagnostic> mistakes;
  std::vector<prover::Phrase> phrases = prover::parse_phrases(text, names, mistakes);
  for (const prover::Diagnostic& mistake : mistakes) FAIL_CHECK(prover::render(mistake, "phrases", text));
  return phrases;
}

inline prover::SketchReport draw(const std::vector<prover::Phrase>& givens, std::size_t points,
                                 std::size_t wanted, std::uint64_t seed = 1) {
  prover::SketchOptions options;
  options.wanted = static_cast<int>(wanted);
  options.starts = 20 * options.wanted;
  options.seed = seed;
  return prover::sketch(givens, points, prover::Budget{}, options);
}

inline Drawn drawn(const std::string& givens, const std::string& claims, std::size_t wanted) {
  Drawn d;
  d.givens = parsed(givens, d.names);
  d.claims = parsed(claims, d.names);
  d.report = draw(d.givens, d.names.points.size(), wanted);
  return d;
}

inline std::string coordinates(const prover::Names& names, const prover::Sketch& sketch) {
  std::string out;
  for (std::size_t i = 0; i < names.points.size(); ++i)
    out += names.points[i] + " = (" + std::to_string(sketch.points[i][0]) + ", " +
           std::to_string(sketch.points[i][1]) + ") ";
  return out;
}

}  // namespace rule_tests
