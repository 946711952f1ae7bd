#include "prover/check/lines.hpp"

#include <algorithm>
#include <iterator>

namespace prover::replay {
namespace {

Points sorted_set(Points points) {
  std::sort(points.begin(), points.end());
  points.erase(std::unique(points.begin(), points.end()), points.end());
  return points;
}

}  // namespace

bool Lines::add(Points on_one_line) {
  Points merged = sorted_set(std::move(on_one_line));
  if (merged.size() < 3 || one_line(merged)) return false;
  // Absorbing a line may make the result share two points with another, so start over until none is left.
  for (std::size_t i = 0; i < kept_.size();) {
    Points common;
    std::set_intersection(merged.begin(), merged.end(), kept_[i].begin(), kept_[i].end(),
                          std::back_inserter(common));
    if (common.size() < 2) {
      ++i;
      continue;
    }
    merged.insert(merged.end(), kept_[i].begin(), kept_[i].end());
    merged = sorted_set(std::move(merged));
    kept_.erase(kept_.begin() + static_cast<std::ptrdiff_t>(i));
    i = 0;
  }
  kept_.push_back(std::move(merged));
  std::fill(line_of_.begin(), line_of_.end(), -1);
  for (std::size_t l = 0; l < kept_.size(); ++l)
    for (const PointId a : kept_[l])
      for (const PointId b : kept_[l]) line_of(a, b) = static_cast<int>(l);
  return true;
}

Points Lines::through(PointId a, PointId b) const {
  if (a != b && line_of(a, b) >= 0) return kept_[static_cast<std::size_t>(line_of(a, b))];
  return sorted_set({a, b});
}

bool Lines::collinear(PointId a, PointId b, PointId c) const {
  if (a == b || b == c || a == c) return true;
  return line_of(a, b) >= 0 && line_of(a, b) == line_of(b, c);
}

bool Lines::one_line(const Points& points) const {
  for (std::size_t i = 2; i < points.size(); ++i)
    if (!collinear(points[0], points[1], points[i])) return false;
  return true;
}

PointId Lines::common_point(PointId a, PointId b, PointId c, PointId d) const {
  const Points first = through(a, b), second = through(c, d);
  Points common;
  std::set_intersection(first.begin(), first.end(), second.begin(), second.end(), std::back_inserter(common));
  return common.size() == 1 ? common[0] : PointId();
}

}  // namespace prover::replay
