#include "prover/figure/arrangement.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "prover/figure/keys.hpp"

namespace prover {

namespace {

// Sets of points that share two points are one line. Each pair of points knows its line, so a new set finds the lines
// that it runs into at once.
class LineMerger {
 public:
  void add(std::vector<PointId> points) {
    for (bool grown = true; grown;) {
      grown = false;
      std::sort(points.begin(), points.end());
      points.erase(std::unique(points.begin(), points.end()), points.end());
      for (std::size_t i = 0; i < points.size() && !grown; ++i)
        for (std::size_t j = i + 1; j < points.size() && !grown; ++j) {
          const auto found = line_of_.find(pair_key(points[i], points[j]));
          if (found == line_of_.end()) continue;
          std::vector<PointId>& other = lines_[found->second];
          if (std::includes(other.begin(), other.end(), points.begin(), points.end())) return;
          points.insert(points.end(), other.begin(), other.end());
          for (std::size_t a = 0; a < other.size(); ++a)
            for (std::size_t b = a + 1; b < other.size(); ++b) line_of_.erase(pair_key(other[a], other[b]));
          other.clear();
          grown = true;
        }
    }
    if (points.size() < 2) return;
    for (std::size_t i = 0; i < points.size(); ++i)
      for (std::size_t j = i + 1; j < points.size(); ++j) line_of_[pair_key(points[i], points[j])] = lines_.size();
    lines_.push_back(std::move(points));
  }
  std::vector<std::vector<PointId>> lines() && {
    std::erase_if(lines_, [](const auto& line) { return line.empty(); });
    return std::move(lines_);
  }

 private:
  std::vector<std::vector<PointId>> lines_;
  std::unordered_map<std::uint64_t, std::size_t> line_of_;
};

}  // namespace

Arrangement::Arrangement(const FigureText& text, std::vector<Coordinates> views)
    : points_(text.points), through_(text.points), views_(std::move(views)), rays_at_(text.points) {
  LineMerger merger;
  for (const auto& set : text.collinear) merger.add(set);
  for (auto& set : std::move(merger).lines()) add_line(std::move(set), false);
  for (const auto& [a, b] : text.drawn)
    if (a != b && !line(a, b).valid()) add_line({std::min(a, b), std::max(a, b)}, false);
  for (std::size_t i = 0; i < lines_.size(); ++i) close_order(LineId(static_cast<std::int64_t>(i)), text);
  close_off(text);
  close_sides(text);
}

LineId Arrangement::add_line(std::vector<PointId> points, bool joined) {
  const LineId id(static_cast<std::int64_t>(lines_.size()));
  for (std::size_t i = 0; i < points.size(); ++i) {
    through_[points[i].index()].push_back(id);
    for (std::size_t j = i + 1; j < points.size(); ++j) line_of_pair_[pair_key(points[i], points[j])] = id;
  }
  lines_.push_back({std::move(points), joined});
  return id;
}

LineId Arrangement::line(PointId a, PointId b) const {
  const auto found = line_of_pair_.find(pair_key(a, b));
  return found == line_of_pair_.end() ? LineId() : found->second;
}

PointId Arrangement::common_point(LineId a, LineId b) const {
  for (PointId p : points_on(a))
    for (PointId q : points_on(b))
      if (p == q) return p;
  return {};
}

LineId Arrangement::join(PointId a, PointId b) {
  const LineId old = line(a, b);
  if (old.valid()) return old;
  // Collinear in every figure but joined by no sentence: it must not become a line of its own.
  for (PointId p : {a, b})
    for (LineId l : through_[p.index()])
      for (PointId q : points_on(l))
        if (q != p && !known({PositionKind::not_collinear, a, b, q, {}})) return {};
  return add_line({a, b}, true);
}

void Arrangement::freeze() {
  for (auto& rays : rays_at_) rays.clear();
  representative_.clear();
  neighbours_.assign(points_, {});
  for (std::size_t v = 0; v < points_; ++v) {
    const PointId vertex(static_cast<std::int64_t>(v));
    for (LineId l : through_[v])
      for (PointId p : points_on(l)) {
        if (p == vertex) continue;
        PointId stands_for = p;
        for (PointId q : rays_at_[v])
          if (line(vertex, q) == l && same_direction(vertex, p, q, false) > 0) {
            stands_for = q;
            break;
          }
        if (stands_for == p) rays_at_[v].push_back(p);
        representative_[key(vertex.value, p.value)] = stands_for;
        neighbours_[v].push_back(p);
      }
    std::sort(neighbours_[v].begin(), neighbours_[v].end());
  }
}

PointId Arrangement::ray(PointId vertex, PointId toward) const {
  const auto found = representative_.find(key(vertex.value, toward.value));
  return found == representative_.end() ? toward : found->second;
}

bool Arrangement::opposite_rays(PointId vertex, PointId a, PointId b) const {
  const LineId l = line(vertex, a);
  return l.valid() && l == line(vertex, b) && same_direction(vertex, a, b, false) < 0;
}

PositionSource Arrangement::source(const Position& p) const {
  bool in_text = false;
  switch (p.kind) {
    case PositionKind::between:
      in_text = text_between(p.a, p.b, p.c);
      break;
    case PositionKind::same_side:
      in_text = text_side(p.a, p.b, p.c, p.d) > 0;
      break;
    case PositionKind::opposite_sides:
      in_text = text_side(p.a, p.b, p.c, p.d) < 0;
      break;
    case PositionKind::not_collinear:
      in_text = text_off(p.a, p.b, p.c);
      break;
  }
  if (in_text) return PositionSource::text;
  return seen(p) ? PositionSource::seen : PositionSource::unknown;
}

PositionSource Arrangement::ray_source(PointId vertex, PointId a, PointId b) const {
  if (a == b || same_direction(vertex, a, b, true) != 0) return PositionSource::text;
  return same_direction(vertex, a, b, false) != 0 ? PositionSource::seen : PositionSource::unknown;
}

int Arrangement::seen_orientation(const Coordinates& view, PointId a, PointId b, PointId c) const {
  const auto &p = view[a.index()], &q = view[b.index()], &r = view[c.index()];
  const double ux = q[0] - p[0], uy = q[1] - p[1], vx = r[0] - p[0], vy = r[1] - p[1];
  const double cross = ux * vy - uy * vx;
  const double size = std::hypot(ux, uy) * std::hypot(vx, vy) + std::hypot(ux, uy) * std::hypot(ux - vx, uy - vy);
  // A figure that shows a near-degenerate triple shows nothing about it.
  if (std::abs(cross) < 1e-5 * size) return 0;
  return cross > 0 ? 1 : -1;
}

bool Arrangement::seen(const Position& p) const {
  if (views_.empty()) return false;
  for (const Coordinates& view : views_) {
    bool shown = false;
    switch (p.kind) {
      case PositionKind::between:
        return seen_between(p.a, p.b, p.c);
      case PositionKind::not_collinear:
        shown = seen_orientation(view, p.a, p.b, p.c) != 0;
        break;
      case PositionKind::same_side:
        shown = seen_orientation(view, p.c, p.d, p.a) * seen_orientation(view, p.c, p.d, p.b) > 0;
        break;
      case PositionKind::opposite_sides:
        shown = seen_orientation(view, p.c, p.d, p.a) * seen_orientation(view, p.c, p.d, p.b) < 0;
        break;
    }
    if (!shown) return false;
  }
  return true;
}

}  // namespace prover
