// What goes wrong without a condition of a rule: a figure that meets all others, and not the conclusion. A condition
// for which there is none is superfluous as mathematics; it may still say what has to be drawn, or where to look.
#pragma once
#include <optional>

#include "prover/measure/letters.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover {

// The conditions of a rule in order: given, then where.
std::vector<Phrase> conditions_of(const Rule& rule);

struct CounterFigure {
  Names names;    // letters on one point share a name: "A=D"
  Sketch figure;  // 10 across, rounded to six digits
};

// A figure without the condition, as clear as it comes.
std::optional<CounterFigure> figure_without(const Rule& rule, std::size_t condition, std::uint64_t seed = 1);

// Whether the figure shows it, judged from its coordinates: the other conditions hold, the left-out one clearly does
// not, and neither does some conclusion of which every angle has two arms and every segment two ends. Letters stand
// where `letter_at` (by variable of the rule) says.
bool shows_need(const Rule& rule, std::size_t condition, const Sketch& figure, const std::vector<int>& letter_at);

}  // namespace prover
