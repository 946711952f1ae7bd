#include "prover/sketch/variables.hpp"

namespace prover::sketching {
namespace {

double scale_of(const Units& units) { return units.measured ? units.layout.length_unit : drawn_diameter / 2; }

}  // namespace

std::vector<double> variables_of(const Sketch& sketch, const Units& units) {
  const Layout& layout = units.layout;
  const double scale = scale_of(units);
  std::vector<double> x(layout.variables(), 0.0);
  for (std::size_t p = 0; p < layout.points && p < sketch.points.size(); ++p)
    for (std::size_t axis = 0; axis < 2; ++axis) x[2 * p + axis] = sketch.points[p][axis] / scale;
  for (std::size_t k = 0; k < layout.numbers.size(); ++k) {
    const auto known = sketch.numbers.find(layout.numbers[k]);
    if (known != sketch.numbers.end()) x[2 * layout.points + k] = known->second / layout.units[k];
  }
  return x;
}

Sketch sketch_of(const std::vector<double>& x, const Units& units) {
  const Layout& layout = units.layout;
  const double scale = scale_of(units);
  Sketch result;
  for (std::size_t p = 0; p < layout.points; ++p) result.points.push_back({scale * x[2 * p], scale * x[2 * p + 1]});
  for (std::size_t k = 0; k < layout.numbers.size(); ++k)
    result.numbers[layout.numbers[k]] = layout.units[k] * x[2 * layout.points + k];
  result.on_circle = layout.on_circle;
  return result;
}

}  // namespace prover::sketching
