// The old points are pinned; the new ones start at random, are put where one sentence after the other wants them, and
// are then solved for.
#include "prover/sketch/complete.hpp"

#include <Eigen/SVD>
#include <algorithm>
#include <cmath>

#include "prover/sketch/newton.hpp"
#include "prover/sketch/placer.hpp"
#include "prover/sketch/solve.hpp"
#include "prover/sketch/units.hpp"
#include "prover/sketch/variables.hpp"

namespace prover {
namespace {

using namespace sketching;

constexpr double equation_tolerance = 1e-8;
constexpr double position_margin = 1e-6;
constexpr double coincident = 1e-5;  // of the figure's size

bool has_two_points_on_one(const std::vector<double>& x, std::size_t points, double size) {
  for (std::size_t a = 0; a < points; ++a)
    for (std::size_t b = a + 1; b < points; ++b)
      if (std::hypot(x[2 * a] - x[2 * b], x[2 * a + 1] - x[2 * b + 1]) < coincident * size) return true;
  return false;
}

// The solver likes figures about 2 wide.
struct Scale {
  double size = 1;
  Vector middle{0, 0};
};
Scale scale_of(const Sketch& base, const std::vector<bool>& stays, bool measured) {
  Vector low{1e300, 1e300}, high{-1e300, -1e300};
  for (std::size_t p = 0; p < stays.size(); ++p) {
    if (!stays[p]) continue;
    low = {std::min(low.x, base.points[p][0]), std::min(low.y, base.points[p][1])};
    high = {std::max(high.x, base.points[p][0]), std::max(high.y, base.points[p][1])};
  }
  if (measured || low.x > high.x) return {};
  return {std::max({(high.x - low.x) / 2, (high.y - low.y) / 2, 1e-9}), {(low.x + high.x) / 2, (low.y + high.y) / 2}};
}

}  // namespace

std::optional<Sketch> complete(const Sketch& base, const std::vector<bool>& stays, const std::vector<Phrase>& givens,
                               const Budget& budget, int starts) {
  const std::size_t points = stays.size();
  const Units units = units_of(givens, points);
  System system(givens, units.layout);
  if (!system.has_branches()) return std::nullopt;
  system.pin(stays);
  Scale scale = scale_of(base, stays, units.measured);
  if (units.measured) scale.size = units.layout.length_unit;
  Random random(1);
  const auto put_back = [&](std::vector<double>& x) {
    for (std::size_t p = 0; p < points; ++p) {
      if (!stays[p]) continue;
      x[2 * p] = (base.points[p][0] - scale.middle.x) / scale.size;
      x[2 * p + 1] = (base.points[p][1] - scale.middle.y) / scale.size;
    }
  };
  for (int start = 0; start < starts && !budget.exhausted(); ++start) {
    std::vector<double> x(units.layout.variables());
    for (double& value : x) value = random.between(-1.5, 1.5);
    for (std::size_t k = 0; k < units.layout.numbers.size(); ++k) {
      const auto known = base.numbers.find(units.layout.numbers[k]);
      x[2 * points + k] = known == base.numbers.end() ? random.between(0.1, 1) : known->second / units.layout.units[k];
    }
    put_back(x);
    Placer placer(x, random);
    for (const Phrase& phrase : givens) {
      if (std::all_of(phrase.points.begin(), phrase.points.end(), [&](PointId p) { return stays[p.index()]; })) continue;
      if (start % 3 == 0) break;  // now and then from anywhere
      placer.place(phrase);
      put_back(x);
    }
    const Solution solution = solve(system, x, start % 2 == 0 ? 0.3 : 0.02, budget);
    if (!solution.converged || has_two_points_on_one(x, points, 1) ||
        !system.holds(x.data(), equation_tolerance, position_margin))
      continue;
    Sketch result = base;
    result.residual = solution.residual;
    result.points.resize(points);
    result.on_circle = units.layout.on_circle;
    for (std::size_t p = 0; p < points; ++p)
      if (!stays[p])
        result.points[p] = {x[2 * p] * scale.size + scale.middle.x, x[2 * p + 1] * scale.size + scale.middle.y};
    for (std::size_t k = 0; k < units.layout.numbers.size(); ++k)
      result.numbers[units.layout.numbers[k]] = units.layout.units[k] * x[2 * points + k];
    return result;
  }
  return std::nullopt;
}

bool restricts_only_new_points(const Sketch& figure, const std::vector<bool>& stays, const std::vector<Phrase>& old,
                               const std::vector<Phrase>& all) {
  const std::size_t points = stays.size();
  const Units units = units_of(all, points);  // a circle of the problem keeps its point
  const std::vector<double> x = variables_of(figure, units);
  const auto derivatives = [&](const std::vector<Phrase>& phrases, bool new_points_only) -> std::optional<Eigen::MatrixXd> {
    System system(phrases, units.layout);
    if (!system.has_branches()) return std::nullopt;
    system.choose(x.data());
    Eigen::MatrixXd matrix = linearised(system, x.data()).slopes;
    if (new_points_only)
      for (Eigen::Index i = 0; i < matrix.cols(); ++i)
        if (const auto point = static_cast<std::size_t>(i / 2); point >= points || stays[point]) matrix.col(i).setZero();
    return matrix;
  };
  const auto rank = [](const Eigen::MatrixXd& matrix) -> Eigen::Index {
    if (matrix.rows() == 0) return 0;
    Eigen::JacobiSVD<Eigen::MatrixXd> svd(matrix);
    svd.setThreshold(1e-7);
    return svd.rank();
  };
  const auto of_all = derivatives(all, false), of_old = derivatives(old, false), by_new = derivatives(all, true);
  return of_all && of_old && by_new && rank(*of_all) == rank(*of_old) + rank(*by_new);
}

}  // namespace prover
