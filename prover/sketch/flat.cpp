#include "prover/sketch/flat.hpp"

#include <cmath>

#include "prover/sketch/arrangement.hpp"
#include "prover/sketch/plane.hpp"
#include "prover/sketch/random.hpp"
#include "prover/sketch/solve.hpp"
#include "prover/sketch/starts.hpp"
#include "prover/sketch/variables.hpp"

namespace prover {

using namespace sketching;

namespace {

// A flat figure is a double root, of which an equation met to 1e-9 tells no more than 1e-4.
constexpr double flat = 1e-3;
constexpr double one_place = 1e-6;  // points of a crowded figure may stand close
constexpr double meets = 1e-8;

Vector at(const std::vector<double>& x, PointId p) { return {x[2 * p.index()], x[2 * p.index() + 1]}; }

// Three points each that the phrase wants off one line.
std::vector<std::array<PointId, 3>> corners_of(const Phrase& phrase) {
  const auto& p = phrase.points;
  std::vector<std::array<PointId, 3>> corners;
  switch (phrase.predicate) {
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::convex:
    case Predicate::simple_polygon:
    case Predicate::regular_polygon:
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite:
    case Predicate::trapezium:
      for (std::size_t i = 0; i < p.size(); ++i) {
        corners.push_back({p[i], p[(i + 1) % p.size()], p[(i + 2) % p.size()]});
        if (p.size() == 3) break;
      }
      break;
    default: break;  // other sentences do not say so
  }
  return corners;
}

}  // namespace

std::optional<FlatFigure> flat_figure(const std::vector<Phrase>& givens, std::size_t points, const Budget& budget, int starts) {
  const Units units = units_of(givens, points);
  System system(givens, units.layout);
  if (points == 0 || !system.has_branches()) return std::nullopt;
  Random random(1);
  for (int start = 0; start < starts && !budget.exhausted(); ++start) {
    std::vector<double> x = random_start(givens, units.layout, random, 2, start % 2 == 0);
    if (!solve(system, x, start % 3 == 0 ? 0.1 : 0, budget).converged) continue;
    FlatFigure found;
    for (std::size_t p = 0; p < points; ++p)
      for (std::size_t q = p + 1; q < points; ++q) {
        const PointId a(static_cast<std::int64_t>(p)), b(static_cast<std::int64_t>(q));
        if (norm(at(x, b) - at(x, a)) < one_place) found.together.emplace_back(a, b);
      }
    if (found.together.size() + 1 >= points && points > 2) continue;  // everything in one place meets everything
    for (const Phrase& phrase : givens)
      for (const auto& [a, b, c] : corners_of(phrase))
        if (std::fabs(clearance(at(x, a), at(x, b), at(x, c))) < flat) found.on_a_line.push_back({a, b, c});
    // Only as flat as that: its positions must not fail by more.
    if ((found.together.empty() && found.on_a_line.empty()) || !system.holds(x.data(), meets, -flat)) continue;
    if (!units.measured) normalise(x, points, 2);
    found.figure = sketch_of(x, units);
    found.figure.residual = system.residual(x.data());
    return found;
  }
  return std::nullopt;
}

}  // namespace prover
