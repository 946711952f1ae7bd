// For a claim that fails in some figures of the givens: one in which it fails by the widest margin, and can still be read.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover::motion {

struct CounterFigure {
  Sketch figure;
  double margin = 0;   // of the claim's own constraint: radians, or a part of the lengths compared
  bool exists = false; // proved by intervals, and that the claim fails in it
};

// `figures`: of the givens; those in which the claim holds are passed over. None when it holds in all.
std::optional<CounterFigure> counter_figure(const std::vector<Phrase>& givens, const std::vector<Sketch>& figures,
                                            const Phrase& claim, const Budget& budget);

}  // namespace prover::motion
