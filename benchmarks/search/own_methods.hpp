// What Anglewright itself does with an instance, timed: the lightest proof, several proofs, whether the goal follows.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "benchmarks/search/instance.hpp"

namespace prover {

struct LightestRun {
  double seconds = 0, seconds_to_first = 0;
  std::optional<std::int64_t> weight;  // nothing when the goal was not reached
  std::vector<int> members;
  std::int64_t lower_bound = 0;
  bool proved = false;
};
LightestRun run_lightest(const SearchProblem& problem, double limit_seconds);

struct SeveralRun {
  double seconds = 0;
  std::size_t sets = 0;
  std::int64_t heaviest = 0, complete_below = 0;
  bool complete = false;  // as many as wanted, or all that there are
};
SeveralRun run_several(const SearchProblem& problem, std::size_t wanted, double limit_seconds);

// Does the goal follow from all equations? By elimination over the angles; over the directions of the lines, from every
// equation; and from the givens alone, which is how the direction layer is asked.
enum class Entailment { angles, directions_of_all, directions_of_givens };
struct EntailmentRun {
  double seconds = 0;
  std::optional<bool> follows;  // nothing when the time was up, or the instance has no lines
};
EntailmentRun run_entailment(const SearchInstance& instance, Entailment method, double limit_seconds);

}  // namespace prover
