#include "prover/check/positions.hpp"

#include <algorithm>
#include <utility>

namespace prover::replay {
namespace {

std::size_t pairs(std::size_t n) {
  return n * (n - 1) / 2;
}
std::size_t triples(std::size_t n) {
  return n < 3 ? 0 : n * (n - 1) * (n - 2) / 6;
}
PointId point(std::size_t i) {
  return PointId(static_cast<std::int64_t>(i));
}

}  // namespace

void Positions::assume(const Placement& placement) {
  for (const Points& line : placement.lines)
    if (lines_.add(line)) built_ = false;
  for (const Position& position : placement.positions) assume(position);
  for (const auto& ray : placement.rays) {
    if (rays(ray[0], ray[1], ray[2]) == Rays::same) continue;
    same_rays_.push_back(ray);
    built_ = false;
  }
  for (const auto& pair : placement.parallel) {
    if (std::find(parallel_.begin(), parallel_.end(), pair) != parallel_.end()) continue;
    parallel_.push_back(pair);
    built_ = false;
  }
  for (const auto& pair : placement.two_lines) {
    if (std::find(two_lines_.begin(), two_lines_.end(), pair) != two_lines_.end()) continue;
    two_lines_.push_back(pair);
    built_ = false;
  }
}

void Positions::assume(const Position& position) {
  built_ = built_ && known_now(position);
  positions_.push_back(position);  // also what is known: a later line must not make us search for it again
}

bool Positions::follows(const Position& position) {
  build();
  if (known_now(position)) return true;
  search_deeper();
  return known_now(position);
}

bool Positions::follows(const Placement& placement) {
  for (const Points& line : placement.lines)
    if (!lines_.one_line(line)) return false;
  for (const Position& position : placement.positions)
    if (!follows(position)) return false;
  for (const auto& [vertex, a, b] : placement.rays)
    if (rays(vertex, a, b) != Rays::same) return false;
  return placement.readable;
}

// Never searches deeper: names of rays must not depend on what was asked before, and a ray that rests on more
// is backed by a position that the proof lists.
Rays Positions::rays(PointId vertex, PointId a, PointId b) {
  if (vertex == a || vertex == b) return Rays::unknown;
  if (a == b) return Rays::same;
  if (!lines_.collinear(vertex, a, b)) return Rays::unknown;
  build();
  const auto value = parity_.value(sense(vertex, a) + sense(vertex, b));
  if (!value) return Rays::unknown;
  return *value ? Rays::opposite : Rays::same;
}

bool Positions::known_now(const Position& p) const {
  const auto side = [&](bool opposite) {
    if (p.c == p.d || !proper(p.a, p.c, p.d) || !proper(p.b, p.c, p.d)) return false;
    return parity_.value(orientation(p.c, p.d, p.a) + orientation(p.c, p.d, p.b)) == opposite;
  };
  switch (p.kind) {
    case PositionKind::between:
      return p.a != p.b && p.b != p.c && p.a != p.c && lines_.collinear(p.a, p.b, p.c) &&
             parity_.value(sense(p.a, p.b) + sense(p.b, p.c)) == false;
    case PositionKind::same_side:
      return side(false);
    case PositionKind::opposite_sides:
      return side(true);
    case PositionKind::not_collinear:
      return proper(p.a, p.b, p.c);
  }
  return false;
}

std::size_t Positions::triple(PointId a, PointId b, PointId c) const {
  std::array<std::size_t, 3> i{a.index(), b.index(), c.index()};
  std::sort(i.begin(), i.end());
  return triples(i[2]) + pairs(i[1]) + i[0];
}

bool Positions::proper(PointId a, PointId b, PointId c) const {
  return a != b && b != c && a != c && proper_[triple(a, b, c)];
}

SignSum Positions::orientation(PointId a, PointId b, PointId c) const {
  const bool swapped = (a > b) != ((b > c) != (a > c));  // an odd permutation of the sorted triple
  return {{static_cast<int>(triple(a, b, c))}, swapped};
}

SignSum Positions::sense(PointId a, PointId b) const {
  const std::size_t low = std::min(a.index(), b.index()), high = std::max(a.index(), b.index());
  return {{static_cast<int>(triples(lines_.points()) + pairs(high) + low)}, a > b};
}

void Positions::build() {
  if (built_) return;
  built_ = true;
  deep_ = false;
  ++version_;
  const std::size_t n = lines_.points();
  parity_ = Parity(triples(n) + pairs(n));
  close_proper();
  link_lines();
  close_lines();
}

// Points known to be off a line, spread along the lines.
void Positions::close_proper() {
  proper_.assign(triples(lines_.points()), false);
  std::vector<std::array<PointId, 3>> open;
  const auto learn = [&](PointId a, PointId b, PointId c) {
    if (a == b || b == c || a == c || lines_.collinear(a, b, c) || proper_[triple(a, b, c)]) return;
    proper_[triple(a, b, c)] = true;
    open.push_back({a, b, c});
  };
  for (const Position& p : positions_) {
    switch (p.kind) {
      case PositionKind::between:
        break;
      case PositionKind::same_side:
      case PositionKind::opposite_sides:
        learn(p.a, p.c, p.d);
        learn(p.b, p.c, p.d);
        break;
      case PositionKind::not_collinear:
        learn(p.a, p.b, p.c);
        break;
    }
  }
  for (const auto& [a, b, c, d] : parallel_) {
    for (const PointId p : lines_.through(c, d)) learn(a, b, p);
    for (const PointId p : lines_.through(a, b)) learn(c, d, p);
  }
  for (const auto& [a, b, c, d] : two_lines_) {
    const PointId corner = lines_.common_point(a, b, c, d);
    if (corner.valid()) learn(corner, corner == a ? b : a, corner == c ? d : c);
  }
  while (!open.empty()) {
    const auto corner = open.back();
    open.pop_back();
    for (std::size_t i = 0; i < 3; ++i) {
      const PointId off = corner[i];
      const Points line = lines_.through(corner[(i + 1) % 3], corner[(i + 2) % 3]);
      for (std::size_t j = 0; line.size() > 2 && j < line.size(); ++j)
        for (std::size_t k = j + 1; k < line.size(); ++k) learn(line[j], line[k], off);
    }
  }
}

// Law 1, and what was assumed.
void Positions::link_lines() {
  for (const Points& line : lines_.kept()) {
    for (std::size_t i = 0; i < lines_.points(); ++i) {
      const PointId y = point(i);
      if (!proper(line[0], line[1], y)) continue;
      const SignSum reference = orientation(y, line[0], line[1]) + sense(line[0], line[1]);
      for (std::size_t j = 0; j < line.size(); ++j)
        for (std::size_t k = j + 1; k < line.size(); ++k)
          if (k > 1)
            parity_.add(reference + orientation(y, line[j], line[k]) + sense(line[j], line[k]), false);
    }
  }
  const auto sides = [&](PointId a, PointId b, PointId c, PointId d, bool opposite) {
    if (proper(a, c, d) && proper(b, c, d))
      parity_.add(orientation(c, d, a) + orientation(c, d, b), opposite);
  };
  for (const Position& p : positions_) {
    switch (p.kind) {
      case PositionKind::between:  // an order says nothing before the points are known to be on a line
        if (lines_.collinear(p.a, p.b, p.c)) {
          parity_.add(sense(p.a, p.b) + sense(p.b, p.c), false);
          parity_.add(sense(p.a, p.b) + sense(p.a, p.c), false);
        }
        break;
      case PositionKind::same_side:
        sides(p.a, p.b, p.c, p.d, false);
        break;
      case PositionKind::opposite_sides:
        sides(p.a, p.b, p.c, p.d, true);
        break;
      case PositionKind::not_collinear:
        break;
    }
  }
  for (const auto& [vertex, a, b] : same_rays_)
    if (a != b && lines_.collinear(vertex, a, b)) parity_.add(sense(vertex, a) + sense(vertex, b), false);
  for (const auto& [a, b, c, d] : parallel_) {
    for (const PointId p : lines_.through(c, d)) sides(p, c, a, b, false);
    for (const PointId p : lines_.through(a, b)) sides(p, a, c, d, false);
  }
}

void Positions::close_lines() {
  while (order_lines()) {
  }
}

}  // namespace prover::replay
