#include "benchmarks/grid.hpp"

#include <fmt/format.h>

namespace prover {

namespace {

// The point where parallel i (from above) meets transversal j (from the left).
std::string at(int i, int j, int transversals) { return fmt::format("K{}", i * transversals + j); }

}  // namespace

std::string grid_problem(int parallels, int transversals, bool parallel_transversals) {
  const auto name = [&](int i, int j) { return at(i, j, transversals); };
  std::string text;
  const auto row = [&](int count, auto point) {
    if (count < 3) return;  // two points are in order anyway
    text += "line: ";
    for (int k = 0; k < count; ++k) text += (k > 0 ? ", " : "") + point(k);
    text += " in this order\n";
  };
  for (int i = 0; i < parallels; ++i) row(transversals, [&](int j) { return name(i, j); });
  for (int j = 0; j < transversals; ++j) row(parallels, [&](int i) { return name(i, j); });
  text += fmt::format("triangle: {}{}{}\n", name(0, 0), name(0, 1), name(1, 0));
  for (int i = 1; i < parallels; ++i) {
    text += fmt::format("parallel: {}{}, {}{}\n", name(0, 0), name(0, 1), name(i, 0), name(i, 1));
  }
  // The transversals are parallel in pairs of neighbours, so that the angle can travel across as well.
  for (int j = 1; j < transversals && parallel_transversals; ++j) {
    text += fmt::format("parallel: {}{}, {}{}\n", name(0, j - 1), name(1, j - 1), name(0, j), name(1, j));
  }
  text += fmt::format("angle {}{}{} = 64\n", name(0, 1), name(0, 0), name(1, 0));
  const int corner = parallel_transversals ? transversals - 1 : 0, beside = parallel_transversals ? corner - 1 : 1;
  text += fmt::format("find: angle {}{}{}\n", name(parallels - 1, beside), name(parallels - 1, corner),
                      name(parallels - 2, corner));
  return text;
}

}  // namespace prover
