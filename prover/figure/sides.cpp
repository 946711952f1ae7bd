// Sides of lines, from sentences alone. A node is the side of a point with respect to a line of the figure; two
// nodes are in one class when their signs are known to be equal or opposite. Union-find with parity.
#include <algorithm>
#include <deque>

#include "prover/figure/arrangement.hpp"
#include "prover/figure/keys.hpp"

namespace prover {

void Arrangement::close_off(const FigureText& text) {
  off_.assign(lines_.size(), std::vector<bool>(points_, false));
  std::deque<std::pair<LineId, PointId>> open;
  auto learn = [&](LineId l, PointId p) {
    if (!l.valid() || off_[l.index()][p.index()]) return;
    const auto& on = points_on(l);
    if (std::find(on.begin(), on.end(), p) != on.end()) {
      contradictory_ = true;
      return;
    }
    off_[l.index()][p.index()] = true;
    open.emplace_back(l, p);
  };
  auto triangle = [&](PointId a, PointId b, PointId c) {
    off_triple_.insert(triple_key(a, b, c));
    learn(line(a, b), c);
    learn(line(b, c), a);
    learn(line(a, c), b);
  };
  for (const Position& p : text.positions) switch (p.kind) {
      case PositionKind::between:
        break;
      case PositionKind::not_collinear:
        triangle(p.a, p.b, p.c);
        break;
      case PositionKind::same_side:
      case PositionKind::opposite_sides:
        triangle(p.a, p.c, p.d);
        triangle(p.b, p.c, p.d);
        break;
    }
  for (const auto& [a, b, c, d] : text.parallel) {
    for (PointId p : points_on(line(c, d))) learn(line(a, b), p);
    for (PointId p : points_on(line(a, b))) learn(line(c, d), p);
  }
  // Two different lines share at most one point, so all their other points are off each other.
  while (!open.empty()) {
    const auto [l, p] = open.front();
    open.pop_front();
    for (LineId k : through_[p.index()]) {
      const PointId common = common_point(l, k);
      if (!common.valid()) continue;
      for (PointId q : points_on(k))
        if (q != common) learn(l, q);
      for (PointId q : points_on(l))
        if (q != common) learn(k, q);
    }
  }
}

bool Arrangement::text_off(PointId a, PointId b, PointId c) const {
  if (off_triple_.contains(triple_key(a, b, c))) return true;
  const PointId p[3] = {a, b, c};
  for (int i = 0; i < 3; ++i) {
    const LineId l = line(p[i], p[(i + 1) % 3]);
    if (l.valid() && l.index() < off_.size() && off_[l.index()][p[(i + 2) % 3].index()]) return true;
  }
  return false;
}

std::optional<Arrangement::Sign> Arrangement::sign(PointId a, PointId b, PointId c) const {
  const PointId p[3] = {a, b, c};
  for (int i = 0; i < 3; ++i) {
    const PointId u = p[i], v = p[(i + 1) % 3], w = p[(i + 2) % 3];
    const LineId l = line(u, v);
    if (!l.valid() || l.index() >= off_.size()) continue;
    const int along = direction(l, u, v);
    if (along == 0) continue;
    return Sign{static_cast<std::int32_t>(l.index() * points_ + w.index()), along < 0 ? 1 : 0};
  }
  return std::nullopt;
}

std::pair<std::int32_t, int> Arrangement::root(std::int32_t node) const {
  int parity = 0;
  std::int32_t top = node;
  while (nodes_[static_cast<std::size_t>(top)].parent != top) {
    parity ^= nodes_[static_cast<std::size_t>(top)].parity;
    top = nodes_[static_cast<std::size_t>(top)].parent;
  }
  // Path compression keeps later questions short.
  for (int rest = parity; node != top;) {
    Node& n = nodes_[static_cast<std::size_t>(node)];
    const std::int32_t next = n.parent;
    const int own = n.parity;
    n.parent = top;
    n.parity = static_cast<std::int8_t>(rest);
    rest ^= own;
    node = next;
  }
  return {top, parity};
}

void Arrangement::unite(Sign a, Sign b, int parity) {
  const auto [ra, pa] = root(a.node);
  const auto [rb, pb] = root(b.node);
  const int between_roots = pa ^ a.parity ^ pb ^ b.parity ^ parity;
  if (ra == rb) {
    if (between_roots) contradictory_ = true;
    return;
  }
  nodes_[static_cast<std::size_t>(ra)] = {rb, static_cast<std::int8_t>(between_roots)};
}

// All readings of one triple are the same orientation.
void Arrangement::link_triple(PointId a, PointId b, PointId c) {
  const PointId p[3] = {a, b, c};
  std::optional<Sign> first;
  for (int i = 0; i < 3; ++i) {
    const PointId u = p[i], v = p[(i + 1) % 3], w = p[(i + 2) % 3];
    const LineId l = line(u, v);
    if (!l.valid()) continue;
    const int along = direction(l, u, v);
    if (along == 0) continue;
    const Sign s{static_cast<std::int32_t>(l.index() * points_ + w.index()), along < 0 ? 1 : 0};
    if (first)
      unite(*first, s, 0);
    else
      first = s;
  }
}

void Arrangement::close_sides(const FigureText& text) {
  nodes_.resize(lines_.size() * points_);
  for (std::size_t i = 0; i < nodes_.size(); ++i) nodes_[i].parent = static_cast<std::int32_t>(i);
  for (const Position& p : text.positions) {
    const bool same = p.kind == PositionKind::same_side;
    if (!same && p.kind != PositionKind::opposite_sides) continue;
    const auto a = sign(p.c, p.d, p.a), b = sign(p.c, p.d, p.b);
    if (a && b) unite(*a, *b, same ? 0 : 1);
  }
  for (const auto& [a, b, c, d] : text.parallel)
    for (const auto& [k, m] : {std::pair{line(a, b), line(c, d)}, std::pair{line(c, d), line(a, b)}})
      for (PointId p : points_on(m))
        unite({static_cast<std::int32_t>(k.index() * points_ + p.index()), 0},
              {static_cast<std::int32_t>(k.index() * points_ + points_on(m)[0].index()), 0}, 0);
  // Triples with a corner where two lines of the figure meet.
  for (std::size_t v = 0; v < points_; ++v) {
    const PointId x(static_cast<std::int64_t>(v));
    for (LineId l : through_[v])
      for (LineId k : through_[v]) {
        if (!(l < k)) continue;
        for (PointId p : points_on(l))
          for (PointId q : points_on(k))
            if (p != x && q != x) link_triple(x, p, q);
      }
  }
  // Along a line, the side with respect to another line changes at most once.
  if (lines_.size() > 60) return;  // large figures give their positions in full
  for (bool changed = true; changed && !contradictory_;) {
    changed = false;
    for (std::size_t m = 0; m < lines_.size(); ++m)
      for (std::size_t l = 0; l < lines_.size(); ++l) {
        if (l == m) continue;
        const auto& on = lines_[l].points;
        for (PointId a : on)
          for (PointId b : on)
            for (PointId c : on) {
              if (!(a < c) || b == a || b == c || !text_between(a, b, c)) continue;
              const auto node = [&](PointId p) { return static_cast<std::int32_t>(m * points_ + p.index()); };
              if (!off_[m][a.index()] || !off_[m][b.index()] || !off_[m][c.index()]) continue;
              const auto [ra, pa] = root(node(a));
              const auto [rb, pb] = root(node(b));
              const auto [rc, pc] = root(node(c));
              if (ra == rc && pa == pc && ra != rb) {
                unite({node(a), 0}, {node(b), 0}, 0);
                changed = true;
              } else if (ra == rb && pa != pb && rb != rc) {
                unite({node(b), 0}, {node(c), 0}, 0);
                changed = true;
              } else if (rb == rc && pb != pc && ra != rb) {
                unite({node(a), 0}, {node(b), 0}, 0);
                changed = true;
              } else if (ra == rb && rb == rc && pa == pc && pb != pa) {
                contradictory_ = true;
              }
            }
      }
  }
}

int Arrangement::text_side(PointId a, PointId b, PointId c, PointId d) const {
  if (!text_off(c, d, a) || !text_off(c, d, b)) return 0;
  if (a == b) return 1;
  const auto s = sign(c, d, a), t = sign(c, d, b);
  if (!s || !t) return 0;
  const auto [rs, ps] = root(s->node);
  const auto [rt, pt] = root(t->node);
  if (rs != rt) return 0;
  return (ps ^ s->parity) == (pt ^ t->parity) ? 1 : -1;
}

}  // namespace prover
