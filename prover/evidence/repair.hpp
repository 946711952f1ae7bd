// Givens that exclude each other: which change of one of them would let a figure be drawn. A number is left open and the
// rest solved: where the rest forces it, that is the repair ("44°, not 54°"); where it is free, a range is found by
// drawing. Every repair has been drawn.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/evidence/number_in_given.hpp"
#include "prover/evidence/part_of_givens.hpp"
#include "prover/verdict/attempt.hpp"

namespace prover {

struct Range {  // where it has ends; they are measured
  std::optional<double> low, high;
};

struct Repair {
  std::size_t given = 0;
  std::optional<Phrase> instead;        // none: the given is to be left out
  std::optional<NumberInGiven> number;  // that was changed
  Rational value;                       // what it becomes
  bool exact = false;                   // follows from the other givens; else measured
  bool rounded = false;                 // measured, and no short number: `value` is near it
  std::optional<Range> between;      // any number in this range would do
};

// One for each of the givens that alone would do; `conflict` are those that exclude each other.
std::vector<Repair> repairs(const Statements& statements, const std::vector<std::size_t>& conflict,
                            const AttemptOptions& options, const Budget& budget);

// Where the numbers with decimals may vary within their rounding: a figure of the givens.
std::optional<Drawn> drawn_within_rounding(const Statements& statements, const std::vector<std::size_t>& conflict,
                                           const Budget& budget);

}  // namespace prover
