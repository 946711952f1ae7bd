// Auxiliary lines that the class is given (`add:`): may they be drawn? An added sentence is no further given. It may
// name new points and say what fixes them, and it must be possible in every figure that the problem describes; what it
// says of old points alone would be a hypothesis in disguise ("the bisector of K perpendicular to LM").
//
// Three tests, in this order:
//   1. a sentence about old points alone may only join them;
//   2. the added equations restrict nothing but the new points (ranks of derivatives, sketch/complete.hpp);
//   3. every figure that we can draw for the givens can be carried on to one with the new points.
// The third is evidence from figures, like positions that are seen. Lines that need not meet are named in `provided`.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/sketch/sketch.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

struct AddedLines {
  std::string objection;             // empty: they may be drawn
  std::string way_out;
  Span span;                         // of the sentence that is refused
  std::optional<Sketch> figure;      // one that meets the givens and in which they cannot be drawn
  std::vector<std::string> provided; // "SU and MN are not parallel": true of the figures drawn, not of all
};

AddedLines examine_added_lines(const Statement& statement, const Budget& budget);

}  // namespace prover
