// Anglewright alone on one instance, in some lines.
#pragma once
#include "benchmarks/search/instance.hpp"

namespace prover {

struct OwnTable {
  double limit_seconds = 15;  // for each run
  int runs = 5;               // at most so many; the median is shown
  std::size_t ways = 10;      // how many different sets; 0 leaves this out
  bool lightest = true, entailment = true;
};
void print_own(const SearchInstance& instance, double build_seconds, const OwnTable& options);

}  // namespace prover
