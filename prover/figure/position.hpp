// What a figure may be taken to show: the order of points on a line and the side of a line on which a point
// lies. Every other position word (inside, convex, crossing, order of rays) is a conjunction of these few.
// Each carries its source, because a proof must say what it read from where (DESIGN.md section 2).
#pragma once
#include <string>

#include "prover/language/phrase.hpp"

namespace prover {

enum class PositionKind {
  between,        // b lies strictly between a and c, on one line
  same_side,      // a and b on the same side of line cd, neither on it
  opposite_sides, // a and b on opposite sides of line cd, neither on it
  not_collinear,  // a, b, c not on one line
};

struct Position {
  PositionKind kind = PositionKind::between;
  PointId a, b, c, d;  // d only for sides
  friend auto operator<=>(const Position&, const Position&) = default;
};

enum class PositionSource {
  text,     // a sentence of the problem says it, or it follows from such sentences alone
  seen,     // read from figures: every figure drawn for the givens shows it
  unknown,  // neither
};

// The same fact has one form: ends of `between` in order, the pair and the line sorted.
Position canonical(Position position);
std::string describe(const Position& position, const Names& names);  // "K and P are on opposite sides of LM"

}  // namespace prover
