// Whether a step says what its rule says at its places. Returns an objection, or nothing.
#pragma once
#include <string>

#include "prover/check/excess.hpp"
#include "prover/check/reading.hpp"
#include "prover/rule/rule.hpp"
#include "prover/statement/statement.hpp"

namespace prover::replay {

struct Step {
  const Rule& rule;
  const Points& places;
  std::vector<Equation> premises;     // shown before; each "= 0"
  std::vector<Equation> conclusions;  // claimed
};

// A rule with a pattern: what is given must be among the premises, `where` must hold of the figure, and
// nothing may be concluded beyond `then`. `known_positive` are the inequalities that the problem gives; another one holds
// when a premise shows that the difference equals a sum that is surely positive.
std::string objection_to_pattern(const Step& step, Naming& naming,
                                 const std::vector<Equation>& known_positive, Excesses& excesses);

// A built-in shape (all but `given`, which replay.cpp reads).
std::string objection_to_shape(Builtin shape, const Step& step, Naming& naming, const Statement& statement);

}  // namespace prover::replay
