#include "prover/statement/canonical_fact.hpp"

#include <algorithm>
#include <array>
#include <boost/container/small_vector.hpp>
#include <cstdint>

namespace prover {

namespace {

// Facts are named again and again while rules are matched; nearly all have few points.
using Points = boost::container::small_vector<PointId, 8>;

// The least of the images of `points`, of which `image(i, k)` is the k-th point of the i-th.
template <class Image>
Points least_of(std::span<const PointId> points, std::size_t images, Image&& image) {
  std::size_t best = 0;
  for (std::size_t i = 1; i < images; ++i)
    for (std::size_t k = 0; k < points.size(); ++k) {
      const PointId here = points[image(i, k)], least = points[image(best, k)];
      if (here == least) continue;
      if (here < least) best = i;
      break;
    }
  Points result;
  for (std::size_t k = 0; k < points.size(); ++k) result.push_back(points[image(best, k)]);
  return result;
}

Points least_cyclic(std::span<const PointId> points) {
  const std::size_t n = points.size();
  return least_of(points, 2 * n, [n](std::size_t i, std::size_t k) {  // from each start, either way round
    return (i / 2 + (i % 2 == 0 ? k : n - k)) % n;
  });
}

template <std::size_t images, std::size_t size>
Points least_image(std::span<const PointId> points, const std::array<std::array<std::uint8_t, size>, images>& orders) {
  return least_of(points, images, [&](std::size_t i, std::size_t k) -> std::size_t { return orders[i][k]; });
}

using Orders4 = std::array<std::array<std::uint8_t, 4>, 4>;
constexpr Orders4 kite_orders{{{0, 1, 2, 3}, {0, 3, 2, 1}, {2, 1, 0, 3}, {2, 3, 0, 1}}};
constexpr Orders4 trapezium_orders{{{0, 1, 2, 3}, {1, 0, 3, 2}, {2, 3, 0, 1}, {3, 2, 1, 0}}};
constexpr std::array<std::array<std::uint8_t, 6>, 12> triangle_orders{{{0, 1, 2, 3, 4, 5},
                                                                       {0, 2, 1, 3, 5, 4},
                                                                       {1, 0, 2, 4, 3, 5},
                                                                       {1, 2, 0, 4, 5, 3},
                                                                       {2, 0, 1, 5, 3, 4},
                                                                       {2, 1, 0, 5, 4, 3},
                                                                       {3, 4, 5, 0, 1, 2},
                                                                       {3, 5, 4, 0, 2, 1},
                                                                       {4, 3, 5, 1, 0, 2},
                                                                       {4, 5, 3, 1, 2, 0},
                                                                       {5, 3, 4, 2, 0, 1},
                                                                       {5, 4, 3, 2, 1, 0}}};

}  // namespace

UnknownId line_fact(FactKind kind, PointId a, PointId b, PointId c, PointId d, const Arrangement& arrangement,
                    UnknownTable& unknowns) {
  const LineId first = arrangement.line(a, b), second = arrangement.line(c, d);
  if (!first.valid() || !second.valid() || first == second) return {};
  std::array<PointId, 2> p = arrangement.ends_of(first), q = arrangement.ends_of(second);
  if (q < p) std::swap(p, q);
  return unknowns.intern(UnknownKind::fact, kind, std::array{p[0], p[1], q[0], q[1]});
}

UnknownId tangent_fact(PointId a, PointId touching, std::vector<PointId> circle, const Arrangement& arrangement,
                       UnknownTable& unknowns) {
  const LineId line = arrangement.line(a, touching);
  if (!line.valid()) return {};
  const std::array<PointId, 2> ends = arrangement.ends_of(line);
  Points p(ends.begin(), ends.end());
  p.push_back(touching);
  std::sort(circle.begin(), circle.end());
  p.insert(p.end(), circle.begin(), circle.end());
  const FactKind kind = circle.size() == 1 ? FactKind::tangent : FactKind::tangent_through;
  return unknowns.intern(UnknownKind::fact, kind, {p.data(), p.size()});
}

UnknownId point_fact(FactKind kind, std::span<const PointId> given, UnknownTable& unknowns) {
  Points points;
  switch (kind) {
    case FactKind::collinear:
    case FactKind::concyclic:
    case FactKind::joined:
      points.assign(given.begin(), given.end());
      std::sort(points.begin(), points.end());
      break;
    case FactKind::congruent:
    case FactKind::similar:
      points = least_image(given, triangle_orders);
      break;
    case FactKind::regular_polygon:
    case FactKind::parallelogram:
    case FactKind::rectangle:
    case FactKind::rhombus:
    case FactKind::square:
      points = least_cyclic(given);
      break;
    case FactKind::kite:
      points = least_image(given, kite_orders);
      break;
    case FactKind::trapezium:
      points = least_image(given, trapezium_orders);
      break;
    case FactKind::parallel:
    case FactKind::perpendicular:
    case FactKind::circle:
    case FactKind::tangent:
    case FactKind::tangent_through:
      return unknowns.intern(UnknownKind::fact, kind, given);
  }
  return unknowns.intern(UnknownKind::fact, kind, {points.data(), points.size()});
}

UnknownId point_fact(FactKind kind, std::initializer_list<PointId> points, UnknownTable& unknowns) {
  return point_fact(kind, std::span(points.begin(), points.size()), unknowns);
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
