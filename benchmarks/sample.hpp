// Times of repeated runs, and what to say about them: the median, since a run is only ever disturbed upwards.
#pragma once
#include <functional>
#include <vector>

namespace prover {

double milliseconds_of(const std::function<void()>& work);
// The median of some runs: as many as fit into `budget_ms`, at least one, at most `most`.
double median_time(const std::function<void()>& work, int most, double budget_ms);
double quantile(std::vector<double> values, double part);  // 0.5 is the median; 0 when there are none

}  // namespace prover
