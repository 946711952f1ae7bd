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

UnknownId tangent_fact(PointId a, PointId touching, std::vector<PointId> circle, const Arrangement& arrangement,
                       UnknownTable& unknowns) {
  const LineId line = arrangement.line(a, touching);
  if (!line.valid()) return {};
  Points p = arrangement.points_on(line);
  std::sort(p.begin(), p.end());
  p.resize(2);
  p.push_back(touching);
  std::sort(circle.begin(), circle.end());
  p.insert(p.end(), circle.begin(), circle.end());
  const FactKind kind = circle.size() == 1 ? FactKind::tangent : FactKind::tangent_through;
  return unknowns.intern({UnknownKind::fact, kind, std::move(p), {}});
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
      points = least_image(points, {{0, 3, 2, 1}, {2, 1, 0, 3}, {2, 3, 0, 1}});
      break;
    case FactKind::trapezium:
      points = least_image(points, {{1, 0, 3, 2}, {2, 3, 0, 1}, {3, 2, 1, 0}});
      break;
    case FactKind::parallel:
    case FactKind::perpendicular:
    case FactKind::circle:
    case FactKind::tangent:
    case FactKind::tangent_through:
      break;
  }
  return unknowns.intern({UnknownKind::fact, kind, std::move(points), {}});
}

std::optional<FactKind> fact_kind_of(const Phrase& phrase) {
  switch (phrase.predicate) {
    case Predicate::parallel:
      return FactKind::parallel;
    case Predicate::perpendicular:
      return FactKind::perpendicular;
    case Predicate::collinear:
      return FactKind::collinear;
    case Predicate::congruent:
      return FactKind::congruent;
    case Predicate::similar:
      return FactKind::similar;
    case Predicate::parallelogram:
      return FactKind::parallelogram;
    case Predicate::rectangle:
      return FactKind::rectangle;
    case Predicate::rhombus:
      return FactKind::rhombus;
    case Predicate::square:
      return FactKind::square;
    case Predicate::regular_polygon:
      if (phrase.points.size() == 3) return std::nullopt;  // equal lengths
      return phrase.points.size() == 4 ? FactKind::square : FactKind::regular_polygon;
    case Predicate::kite:
      return FactKind::kite;
    case Predicate::trapezium:
      return FactKind::trapezium;
    case Predicate::concyclic:
      return FactKind::concyclic;
    case Predicate::tangent:
      return FactKind::tangent;
    case Predicate::tangent_circumcircle:
      return FactKind::tangent_through;
    case Predicate::circle:
      return FactKind::circle;
    case Predicate::relation:
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::line_order:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line:
    case Predicate::meet:
    case Predicate::cross:
    case Predicate::midpoint:
    case Predicate::foot:
    case Predicate::perpendicular_bisector:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::circle_cyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::diameter:
    case Predicate::bisects:
    case Predicate::convex:
    case Predicate::simple_polygon:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
    case Predicate::same_side:
    case Predicate::opposite_sides:
      return std::nullopt;
  }
  return std::nullopt;
}

// All orders of the points in which the same fact can be read.
std::vector<std::vector<PointId>> readings(FactKind kind, const std::vector<PointId>& p) {
  auto pick = [&](std::initializer_list<std::size_t> order) {
    std::vector<PointId> image;
    for (const std::size_t i : order) image.push_back(p[i]);
    return image;
  };
  std::vector<std::vector<PointId>> all;
  switch (kind) {
    case FactKind::congruent:
    case FactKind::similar:
      for (const auto& o : {std::array{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}) {
        const auto a = static_cast<std::size_t>(o[0]), b = static_cast<std::size_t>(o[1]),
                   c = static_cast<std::size_t>(o[2]);
        all.push_back(pick({a, b, c, a + 3, b + 3, c + 3}));
        all.push_back(pick({a + 3, b + 3, c + 3, a, b, c}));
      }
      break;
    case FactKind::regular_polygon:
    case FactKind::parallelogram:
    case FactKind::rectangle:
    case FactKind::rhombus:
    case FactKind::square:
      for (std::size_t shift = 0; shift < p.size(); ++shift)
        for (const bool forward : {true, false}) {
          std::vector<PointId> image;
          for (std::size_t i = 0; i < p.size(); ++i)
            image.push_back(p[(shift + (forward ? i : p.size() - i)) % p.size()]);
          all.push_back(std::move(image));
        }
      break;
    case FactKind::kite:
      all = {p, pick({0, 3, 2, 1}), pick({2, 1, 0, 3}), pick({2, 3, 0, 1})};
      break;
    case FactKind::trapezium:
      all = {p, pick({1, 0, 3, 2}), pick({2, 3, 0, 1}), pick({3, 2, 1, 0})};
      break;
    case FactKind::collinear:
    case FactKind::concyclic: {
      std::vector<PointId> order = p;
      std::sort(order.begin(), order.end());
      do all.push_back(order);
      while (std::next_permutation(order.begin(), order.end()));
      break;
    }
    case FactKind::circle:  // O, P, Q
      all = {p, pick({0, 2, 1})};
      break;
    case FactKind::parallel:
    case FactKind::perpendicular:
    case FactKind::joined:
    case FactKind::tangent:
    case FactKind::tangent_through:
      all = {p};
      break;
  }
  return all;
}

}  // namespace prover
