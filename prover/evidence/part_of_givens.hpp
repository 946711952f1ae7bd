// A problem with some of its givens left out, or with one of them changed, and whether such a problem can be drawn.
// The statements of a problem are the cases that its words leave open; they have the same givens, place by place.
#pragma once
#include <cstddef>
#include <optional>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

using Statements = std::vector<Statement>;

Statement with_only(const Statement& statement, const std::vector<bool>& kept);
Statements with_only(const Statements& statements, const std::vector<bool>& kept);
Statements without(const Statements& statements, std::size_t given);
Statements with_instead(const Statements& statements, std::size_t given, const Phrase& phrase);

struct Drawn {
  std::optional<Sketch> figure;  // the first found
  std::size_t statement = 0;     // of which of the cases
  int tries = 0;                 // starts of the search, over all cases
  StopReason stop = StopReason::saturated;  // not found: `saturated` when all starts were used up
};
// One figure of the givens, in any of the cases. A figure that was found is evidence; that none was found is not.
Drawn draw(const Statements& statements, int starts, const Budget& budget, std::uint64_t seed = 1);

}  // namespace prover
