// What a problem setter might add to a problem: the size of an angle, two equal lengths, parallels, a bisector, a
// midpoint, a right angle. Only what is drawn and named, so that the sentence can be pasted into the problem as it stands;
// the more natural first.
#pragma once
#include <string>
#include <vector>

#include "prover/figure/arrangement.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

struct SettlingCandidate {
  enum class Kind { angle, equal_lengths, bisector, midpoint, right_angle, parallel, on_segment, length };
  Kind kind = Kind::angle;
  Phrase phrase;        // of an angle or a length: "quantity = …", the size still to be chosen
  Expression quantity;  // of an angle or a length
  double cost = 0;      // small is natural
  bool size_is_open() const { return kind == Kind::angle || kind == Kind::length; }
};

// `figure`: one of the givens, for what stands on which side; `asked`: never a candidate itself.
std::vector<SettlingCandidate> settling_candidates(const Statement& statement, const Arrangement& arrangement,
                                                   const Sketch& figure, const Expression& asked);

// The candidate with a size: "∠KLM = 40°".
Phrase with_size(const SettlingCandidate& candidate, const Rational& size);

}  // namespace prover
