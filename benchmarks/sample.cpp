#include "benchmarks/sample.hpp"

#include <algorithm>
#include <chrono>

namespace prover {

double milliseconds_of(const std::function<void()>& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

double median_time(const std::function<void()>& work, int most, double budget_ms) {
  std::vector<double> times;
  double spent = 0;
  while (times.empty() || (static_cast<int>(times.size()) < most && spent < budget_ms)) {
    times.push_back(milliseconds_of(work));
    spent += times.back();
  }
  return quantile(std::move(times), 0.5);
}

double quantile(std::vector<double> values, double part) {
  if (values.empty()) return 0;
  std::sort(values.begin(), values.end());
  const auto index = static_cast<std::size_t>(part * static_cast<double>(values.size() - 1) + 0.5);
  return values[index];
}

}  // namespace prover
