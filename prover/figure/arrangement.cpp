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
    : points_(text.points), through_(text.points), views_(std::move(views)), line_of_pair_(text.points * text.points),
      rays_at_(text.points) {
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
    for (std::size_t j = i + 1; j < points.size(); ++j)
      line_of_pair_[pair_index(points[i], points[j])] = line_of_pair_[pair_index(points[j], points[i])] = id;
  }
  std::array<PointId, 2> ends;
  std::partial_sort_copy(points.begin(), points.end(), ends.begin(), ends.end());
  lines_.push_back({std::move(points), joined, ends});
  return id;
}

PointId Arrangement::common_point(LineId a, LineId b) const {
  for (PointId p : points_on(a))
    if (stands_on(p, b)) return p;
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
  representative_.resize(points_ * points_);
  for (std::size_t v = 0; v < points_; ++v)
    for (std::size_t p = 0; p < points_; ++p) representative_[v * points_ + p] = PointId(static_cast<std::int64_t>(p));
  about_.assign(points_ * points_, {});
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
        representative_[pair_index(vertex, p)] = stands_for;
        neighbours_[v].push_back(p);
      }
    std::sort(neighbours_[v].begin(), neighbours_[v].end());
  }
}

bool Arrangement::opposite_rays(PointId vertex, PointId a, PointId b) const {
  const LineId l = line(vertex, a);
  return l.valid() && l == line(vertex, b) && same_direction(vertex, a, b, false) < 0;
}

PositionSource Arrangement::worked_out(const Position& p) const {
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

PositionSource Arrangement::source(const Position& p) const {
  constexpr std::size_t most_views = 32;  // two bits each
  if (about_.empty() || views_.size() > most_views) return worked_out(p);
  const bool sides = p.kind == PositionKind::same_side || p.kind == PositionKind::opposite_sides;
  if (sides) return source_of_side(p);
  About& known = p.kind == PositionKind::between ? about(p.a, p.c, p.b) : about(p.a, p.b, p.c);
  std::int8_t& answer = p.kind == PositionKind::between ? known.between : known.not_collinear;
  if (answer < 0) answer = static_cast<std::int8_t>(worked_out(p));
  return static_cast<PositionSource>(answer);
}

Arrangement::About& Arrangement::about(PointId p, PointId q, PointId r) const {
  std::vector<About>& row = about_[pair_index(p, q)];
  if (row.empty()) row.resize(points_);
  return row[r.index()];
}

const Arrangement::About& Arrangement::text_about(PointId p, PointId q, PointId r) const {
  About& known = about(p, q, r);
  if (known.text_asked) return known;
  known.text_asked = true;
  known.off = text_off(p, q, r);
  if (const auto turn = sign(p, q, r); turn && known.off) {
    const auto [top, parity] = root(turn->node);
    known.side = 2 * top + (parity ^ turn->parity);
  }
  return known;
}

std::uint64_t Arrangement::turns_seen(PointId p, PointId q, PointId r) const {
  About& known = about(p, q, r);
  if (known.seen_asked) return known.seen;
  known.seen_asked = true;
  for (const Coordinates& view : views_) {
    const int turn = seen_orientation(view, p, q, r);
    known.seen = known.seen << 2 | (turn > 0 ? 1U : turn < 0 ? 2U : 0U);
  }
  return known.seen;
}

// The same as `worked_out`, from what is kept of the triples.
PositionSource Arrangement::source_of_side(const Position& p) const {
  const bool same = p.kind == PositionKind::same_side;
  const About& a = text_about(p.c, p.d, p.a);
  if (a.off) {
    if (p.a == p.b) {
      if (same) return PositionSource::text;
    } else if (const About& b = text_about(p.c, p.d, p.b); b.off && a.side >= 0 && b.side >= 0 && a.side / 2 == b.side / 2) {
      if ((a.side == b.side) == same) return PositionSource::text;
    }
  }
  if (views_.empty()) return PositionSource::unknown;
  const std::uint64_t turns = turns_seen(p.c, p.d, p.a), others = turns_seen(p.c, p.d, p.b);
  const std::uint64_t left = 0x5555555555555555U >> (64 - 2 * views_.size());  // every figure shows a left turn
  if (((turns | turns >> 1) & left) != left) return PositionSource::unknown;   // one does not show it
  const std::uint64_t opposite = turns ^ (left | left << 1);
  return others == (same ? turns : opposite) ? PositionSource::seen : PositionSource::unknown;
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
