#include "prover/statement/canonical_fact.hpp"

#include <algorithm>

namespace prover {

namespace {

using Points = std::vector<PointId>;

// The least of the images of `points` under the listed index permutations.
Points least_image(const Points& points, const std::vector<std::vector<std::size_t>>& symmetries) {
  Points best = points;
  for (const auto& symmetry : symmetries) {
    Points image;
    image.reserve(points.size());
    for (std::size_t i : symmetry) image.push_back(points[i]);
    best = std::min(best, image);
  }
  return best;
}

Points least_cyclic(const Points& points) {
  const std::size_t n = points.size();
  Points best = points;
  for (std::size_t shift = 0; shift < n; ++shift)
    for (int sense : {1, -1}) {
      Points image(n);
      for (std::size_t i = 0; i < n; ++i) image[i] = points[(shift + (sense > 0 ? i : n - i)) % n];
      best = std::min(best, image);
    }
  return best;
}

const std::vector<std::vector<std::size_t>>& triangle_symmetries() {
  static const auto all = [] {
    std::vector<std::vector<std::size_t>> list;
    std::vector<std::size_t> order{0, 1, 2};
    do {
      list.push_back({order[0], order[1], order[2], order[0] + 3, order[1] + 3, order[2] + 3});
      list.push_back({order[0] + 3, order[1] + 3, order[2] + 3, order[0], order[1], order[2]});
    } while (std::next_permutation(order.begin(), order.end()));
    return list;
  }();
  return all;
}

}  // namespace

UnknownId line_fact(FactKind kind, PointId a, PointId b, PointId c, PointId d, const Arrangement& arrangement,
                    UnknownTable& unknowns) {
  LineId first = arrangement.line(a, b), second = arrangement.line(c, d);
  if (!first.valid() || !second.valid() || first == second) return {};
  auto ends = [&](LineId l) {
    Points on = arrangement.points_on(l);
    std::sort(on.begin(), on.end());
    on.resize(2);
    return on;
  };
  Points p = ends(first), q = ends(second);
  if (q < p) std::swap(p, q);
  return unknowns.intern({UnknownKind::fact, kind, {p[0], p[1], q[0], q[1]}, {}});
}

UnknownId point_fact(FactKind kind, std::vector<PointId> points, UnknownTable& unknowns) {
  switch (kind) {
    case FactKind::collinear:
    case FactKind::concyclic:
    case FactKind::joined:
      std::sort(points.begin(), points.end());
      break;
    case FactKind::congruent:
    case FactKind::similar:
      points = least_image(points, triangle_symmetries());
      break;
    case FactKind::regular_polygon:
    case FactKind::parallelogram:
    case FactKind::rectangle:
    case FactKind::rhombus:
    case FactKind::square:
      points = least_cyclic(points);
      break;
    case FactKind::kite:
      points = least_image(points, {{0, 3, 2, 1}});
      break;
    case FactKind::trapezium:
      points = least_image(points, {{1, 0, 3, 2}, {2, 3, 0, 1}, {3, 2, 1, 0}});
      break;
    case FactKind::parallel:
    case FactKind::perpendicular:
    case FactKind::circle:
    case FactKind::tangent:
      break;
  }
  return unknowns.intern({UnknownKind::fact, kind, std::move(points), {}});
}

}  // namespace prover
