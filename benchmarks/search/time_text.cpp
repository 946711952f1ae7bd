#include "benchmarks/search/time_text.hpp"

#include <fmt/format.h>

namespace prover {

std::string time_text(double seconds) {
  if (seconds < 1e-3) return fmt::format("{:.1f} µs", seconds * 1e6);
  if (seconds < 1) return fmt::format("{:.2f} ms", seconds * 1e3);
  return fmt::format("{:.2f} s", seconds);
}

}  // namespace prover
