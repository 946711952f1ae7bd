// Auxiliary points to try: a sentence for each, and where the point is in a figure.
#pragma once
#include <array>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "prover/figure/arrangement.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

struct LineCandidate {
  std::string sentence;   // facts joined by ';', with the new point's name
  std::string words;      // the same as a teacher says it: "drop the perpendicular KX to LM"
  std::function<std::optional<std::array<double, 2>>(const Sketch&)> place;
  int built_in = 0;       // coincidences that its construction makes by itself
  int effort = 0;         // of two that show as much, the plainer one first
};

// `lines`: of the problem's text; `name`: of the new point. Only constructions that can be made in the first figure.
std::vector<LineCandidate> line_candidates(const Statement& statement, const Arrangement& lines, const Sketch& figure,
                                           const std::string& name);

// How much a new point shows in figures beside what its construction makes: equal lengths, points in line, right angles.
int coincidences(const std::array<double, 2>& point, const Sketch& figure, const std::vector<bool>& hidden);

}  // namespace prover
