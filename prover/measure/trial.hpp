// A rule on trial: figures drawn at random to fit its givens and side conditions, clear ones and ones near their
// degenerate edge, in every arrangement that turns up and with letters on one point where nothing forbids it. What
// the rule concludes must hold in all of them. Figures prove nothing, but one that breaks a rule refutes it.
#pragma once
#include <optional>

#include "prover/base/budget.hpp"
#include "prover/measure/letters.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover {

struct TrialOptions {
  std::size_t figures = 1000;      // with every letter on a point of its own; the other cases get a tenth each
  std::size_t most_shared = 2;     // see letter_cases
  std::uint64_t seed = 1;
};

// A figure that meets the premises and breaks a conclusion.
struct Refutation {
  Names names;
  Sketch figure;
  Phrase claim;
};
// "A (0, 0), B (10, 0), …", to so many digits behind the point.
std::string coordinates_of(const Sketch& figure, const Names& names, int digits = 3);

struct Trial {
  std::size_t figures = 0;       // drawn and judged, letters all apart
  std::size_t shared = 0;        // drawn and judged with letters on one point
  std::size_t cases = 0;         // ways to share points of which there are figures
  std::size_t on_edge = 0;       // of `figures`, those near their degenerate edge
  std::size_t arrangements = 0;  // different ones among `figures`
  std::size_t unclear = 0;       // drawn, but too near the edge to tell
  double tolerance = 0;          // the widest
  std::optional<Refutation> refutation;
};

Trial try_rule(const Rule& rule, const TrialOptions& options, const Budget& budget = {});

}  // namespace prover
