#include "prover/check/naming.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace prover::replay {
namespace {

bool distinct(const Points& points) {
  return std::set<PointId>(points.begin(), points.end()).size() == points.size();
}

// The corners from the lowest on, towards its lower neighbour.
Points round(Points corners) {
  std::rotate(corners.begin(), std::min_element(corners.begin(), corners.end()), corners.end());
  if (corners.back() < corners[1]) std::reverse(corners.begin() + 1, corners.end());
  return corners;
}

// Corresponding letters stay together: the pairs sorted, and the lower way round of the two triangles.
Points matched(const Points& p) {
  const auto sorted = [](std::vector<std::pair<PointId, PointId>> pairs) {
    std::sort(pairs.begin(), pairs.end());
    Points flat;
    for (const auto& pair : pairs) flat.push_back(pair.first);
    for (const auto& pair : pairs) flat.push_back(pair.second);
    return flat;
  };
  return std::min(sorted({{p[0], p[3]}, {p[1], p[4]}, {p[2], p[5]}}),
                  sorted({{p[3], p[0]}, {p[4], p[1]}, {p[5], p[2]}}));
}

}  // namespace

int Naming::key(UnknownKind kind, int detail, const Points& points) {
  std::vector<int> name{static_cast<int>(kind), detail};
  for (const PointId p : points) name.push_back(p.value);
  const auto [place, fresh] = keys_.try_emplace(std::move(name), static_cast<int>(kinds_.size()));
  if (fresh) kinds_.push_back(kind);
  return place->second;
}

PointId Naming::ray(PointId vertex, PointId toward) {
  for (const PointId p : positions_.lines().through(vertex, toward))
    if (p != vertex && positions_.rays(vertex, p, toward) == Rays::same) return p;
  return toward;
}

Points Naming::line(PointId a, PointId b) const {
  Points on = positions_.lines().through(a, b);
  on.resize(2);
  return on;
}

Points Naming::rays_along(PointId vertex, PointId a, PointId b) {
  std::set<PointId> rays;
  for (const PointId p : positions_.lines().through(a, b))
    if (p != vertex) rays.insert(ray(vertex, p));
  return {rays.begin(), rays.end()};
}

std::optional<Equation> Naming::angle(PointId arm1, PointId vertex, PointId arm2) {
  if (vertex == arm1 || vertex == arm2) return std::nullopt;
  const PointId first = ray(vertex, arm1), second = ray(vertex, arm2);
  if (first == second) return Equation::number(0);
  if (positions_.rays(vertex, first, second) == Rays::opposite) return Equation::number(180);
  const Points points{vertex, std::min(first, second), std::max(first, second)};
  const int found = key(UnknownKind::angle, 0, points);
  angles_.try_emplace(found, points);
  return Equation::of(found);
}

std::optional<Equation> Naming::length(PointId a, PointId b) {
  if (a == b) return std::nullopt;
  return Equation::of(key(UnknownKind::length, 0, {std::min(a, b), std::max(a, b)}));
}

Equation Naming::number(const std::string& name) {
  const auto [place, fresh] = numbers_.try_emplace(name, static_cast<int>(kinds_.size()));
  if (fresh) kinds_.push_back(UnknownKind::number);
  return Equation::of(place->second);
}

Equation Naming::excess(const std::string& name) {
  const auto [place, fresh] = numbers_.try_emplace("excess " + name, static_cast<int>(kinds_.size()));
  if (fresh) kinds_.push_back(UnknownKind::excess);
  return Equation::of(place->second);
}

bool Naming::is_proper_angle(int key) {
  const auto found = angles_.find(key);
  if (found == angles_.end()) return false;
  const Points& p = found->second;
  return positions_.follows({PositionKind::not_collinear, p[0], p[1], p[2], {}});
}

std::optional<Equation> Naming::fact(FactKind kind, const Points& p) {
  const auto named = [&](const Points& canonical) {
    return Equation::of(key(UnknownKind::fact, static_cast<int>(kind), canonical));
  };
  switch (kind) {
    case FactKind::parallel:
    case FactKind::perpendicular: {
      if (p.size() != 4 || p[0] == p[1] || p[2] == p[3]) return std::nullopt;
      Points first = line(p[0], p[1]), second = line(p[2], p[3]);
      if (first == second) return std::nullopt;
      if (second < first) std::swap(first, second);
      return named({first[0], first[1], second[0], second[1]});
    }
    case FactKind::collinear: {
      if (p.size() != 3 || !distinct(p)) return std::nullopt;
      if (positions_.lines().one_line(p)) return Equation::number(0);
      Points sorted = p;
      std::sort(sorted.begin(), sorted.end());
      return named(sorted);
    }
    case FactKind::congruent:
    case FactKind::similar:
      if (p.size() != 6 || !distinct({p[0], p[1], p[2]}) || !distinct({p[3], p[4], p[5]}))
        return std::nullopt;
      return named(matched(p));
    case FactKind::regular_polygon:
      if (p.size() < 3 || !distinct(p)) return std::nullopt;
      return named(round(p));
    case FactKind::parallelogram:
    case FactKind::rectangle:
    case FactKind::rhombus:
    case FactKind::square:
      if (p.size() != 4 || !distinct(p)) return std::nullopt;
      return named(round(p));
    case FactKind::kite:
      if (p.size() != 4 || !distinct(p)) return std::nullopt;
      return named({p[0], std::min(p[1], p[3]), p[2], std::max(p[1], p[3])});
    case FactKind::trapezium:
      if (p.size() != 4 || !distinct(p)) return std::nullopt;
      return named(
          std::min({p, {p[1], p[0], p[3], p[2]}, {p[2], p[3], p[0], p[1]}, {p[3], p[2], p[1], p[0]}}));
    case FactKind::circle:
      if (p.size() != 2 || p[0] == p[1]) return std::nullopt;
      return named(p);
    case FactKind::concyclic: {
      if (p.size() != 4 || !distinct(p)) return std::nullopt;
      Points sorted = p;
      std::sort(sorted.begin(), sorted.end());
      return named(sorted);
    }
    case FactKind::joined:
      if (p.size() != 2 || p[0] == p[1]) return std::nullopt;
      return named({std::min(p[0], p[1]), std::max(p[0], p[1])});
    case FactKind::tangent: {  // two points of the line, the touching point, the centre
      if (p.size() != 4 || p[0] == p[1] || p[2] == p[3]) return std::nullopt;
      if (!positions_.lines().collinear(p[0], p[1], p[2])) return std::nullopt;
      const Points touching = line(p[0], p[1]);
      return named({touching[0], touching[1], p[2], p[3]});
    }
    case FactKind::tangent_through: {  // two points of the line, the touching point, two more of the circle
      if (p.size() != 5 || p[0] == p[1] || !distinct({p[2], p[3], p[4]})) return std::nullopt;
      if (!positions_.lines().collinear(p[0], p[1], p[2])) return std::nullopt;
      const Points touching = line(p[0], p[1]);
      return named({touching[0], touching[1], p[2], std::min(p[3], p[4]), std::max(p[3], p[4])});
    }
  }
  return std::nullopt;
}

std::optional<Equation> Naming::of(const Unknown& unknown) {
  const Points& p = unknown.points;
  for (const PointId point : p)
    if (!point.valid() || point.index() >= positions_.lines().points()) return std::nullopt;
  switch (unknown.kind) {
    case UnknownKind::angle:
      return p.size() == 3 ? angle(p[1], p[0], p[2]) : std::nullopt;
    case UnknownKind::length:
      return p.size() == 2 ? length(p[0], p[1]) : std::nullopt;
    case UnknownKind::number:
      return number(unknown.name);
    case UnknownKind::excess:
      return excess(unknown.name);
    case UnknownKind::fact:
      return fact(unknown.fact, p);
  }
  return std::nullopt;
}

}  // namespace prover::replay
