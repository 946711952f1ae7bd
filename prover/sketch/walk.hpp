// Many figures of the same givens, from one to the next: points are moved about at random, and Newton's method on the
// equations alone takes the figure back to the givens by the shortest way. That is some ten times quicker than a
// search for each, and goes where a search for clear figures does not: points nearly on one line, nearly on one
// place, angles near 0° and 180°. Now and then a fresh start keeps the walk from staying in one corner.
//
// A claim is judged with a tolerance of its own in each figure. How far the figure is from one that meets the givens
// exactly is the Newton step that remains, and the rounding of the equations times the norm of the inverse of their
// slopes; so a claim that is true is off by no more than its slope times that distance (taken four times, for what is
// curved) and the rounding of its own evaluation. Where even that is too much to tell, the figure is no evidence.
#pragma once
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "prover/sketch/sketch.hpp"

namespace prover {

class Walk {
 public:
  // `starts`: figures of the givens, as `sketch` finds them; at least one.
  Walk(const std::vector<Phrase>& givens, const std::vector<Phrase>& claims, const std::vector<Sketch>& starts,
       std::uint64_t seed);
  ~Walk();
  Walk(const Walk&) = delete;
  Walk& operator=(const Walk&) = delete;

  // Tries one step; false when it led to no figure.
  bool step();

  // About the figure of the last step that led to one:
  Sketch figure() const;
  std::optional<std::size_t> broken() const;  // the first claim that does not hold in it
  bool is_evidence() const;                   // all claims could be judged
  bool is_on_edge() const;                    // three points nearly on a line, or two nearly on one place
  std::uint64_t arrangement() const;          // a number for its sides and orders: equal where these agree
  double tolerance() const;                   // the widest that a claim was given

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace prover
