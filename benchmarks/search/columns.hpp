// An instance as a matrix, which is how general solvers take it: one column for each equation, one row for each
// unknown; wanted are multipliers whose combination is the goal. The column of constants is left out: all equations and
// the goal hold in one figure, so the constants agree as soon as the unknowns do.
#pragma once
#include <cstdint>
#include <optional>
#include <vector>

#include "benchmarks/search/instance.hpp"

namespace prover {

struct Columns {
  struct Entry {
    std::size_t column;
    std::int64_t coefficient;
  };
  std::vector<std::size_t> candidate_of;     // by column; a candidate with two conclusions has two columns
  std::vector<std::vector<Entry>> rows;      // by unknown
  std::vector<std::int64_t> goal;            // by unknown
  std::vector<std::int64_t> weights;         // by candidate
  std::size_t columns() const { return candidate_of.size(); }
};
// Nothing when a candidate has premises, there are several goals, or a coefficient is no whole number even after scaling.
std::optional<Columns> columns_of(const SearchInstance& instance);

// The multipliers with which these members (minimal, no premises) give the goal, scaled as the columns are: the largest
// absolute value, rounded up, and whether all are among ±1 and ±2.
struct Multipliers {
  std::int64_t largest = 0;
  bool only_ones_and_twos = true;
};
Multipliers multipliers_of(const SearchInstance& instance, const std::vector<int>& members);

}  // namespace prover
