// Order on lines: what sentences say, closed under the laws of betweenness (Hilbert's and Huntington's axioms of
// order, from memory): a-b-c with b-c-d gives a-b-d and a-c-d; a-b-d with b-c-d gives a-b-c and a-c-d.
#include "prover/figure/arrangement.hpp"
#include "prover/figure/keys.hpp"

namespace prover {

namespace {
std::uint64_t between_key(PointId a, PointId b, PointId c) {
  return a < c ? key(b.value, a.value, c.value) : key(b.value, c.value, a.value);
}
std::uint64_t ray_key(PointId vertex, PointId a, PointId b) {
  return a < b ? key(vertex.value, a.value, b.value) : key(vertex.value, b.value, a.value);
}
}  // namespace

void Arrangement::close_order(LineId id, const FigureText& text) {
  const auto& on = points_on(id);
  if (on.size() < 3) return;
  auto here = [&](PointId p) { return std::find(on.begin(), on.end(), p) != on.end(); };
  std::size_t known = 0;
  auto learn = [&](PointId a, PointId b, PointId c) {
    if (between_.insert(between_key(a, b, c)).second) {
      ++known;
      return true;
    }
    return false;
  };
  for (const Position& p : text.positions)
    if (p.kind == PositionKind::between && here(p.a) && here(p.b) && here(p.c)) learn(p.a, p.b, p.c);
  for (const auto& [p, a, b] : text.rays)
    if (p != b && here(p) && here(a) && here(b)) rays_[ray_key(a, p, b)] = 1;
  // The laws are quadratic in the known triples: long lines give their order in full, or keep what was said.
  constexpr std::size_t longest_closed = 24;
  const std::size_t all = on.size() * (on.size() - 1) * (on.size() - 2) / 6;
  for (bool changed = on.size() <= longest_closed; changed && known < all;) {
    changed = false;
    for (PointId a : on)
      for (PointId b : on)
        for (PointId c : on) {
          if (a == b || b == c || a == c || !text_between(a, b, c)) continue;
          for (PointId d : on) {
            if (d == a || d == b || d == c) continue;
            if (text_between(b, c, d)) {
              changed |= learn(a, b, d);
              changed |= learn(a, c, d);
            }
            if (text_between(b, d, c)) {
              changed |= learn(a, b, d);
              changed |= learn(a, d, c);
            }
          }
        }
    // The same ray from a: p and b on one side, and q beyond either.
    for (PointId a : on)
      for (PointId p : on)
        for (PointId b : on) {
          if (a == p || p == b || a == b) continue;
          const int now = same_direction(a, p, b, true);
          for (PointId c : on) {
            if (c == a || c == p || c == b) continue;
            const int next = same_direction(a, b, c, true);
            if (now == 0 || next == 0) continue;
            const std::uint64_t k = ray_key(a, p, c);
            if (same_direction(a, p, c, true) == 0) {
              rays_[k] = static_cast<std::int8_t>(now * next);
              changed = true;
            }
          }
          if (now < 0) changed |= learn(p, a, b);
        }
  }
  auto contradicted = [&](PointId a, PointId b, PointId c) {
    return text_between(b, c, a) || text_between(c, a, b);
  };
  if (on.size() <= longest_closed) {
    for (PointId a : on)
      for (PointId b : on)
        for (PointId c : on)
          if (a != b && b != c && a != c && text_between(a, b, c) && contradicted(a, b, c)) contradictory_ = true;
  } else {
    for (const Position& p : text.positions)
      if (p.kind == PositionKind::between && here(p.a) && contradicted(p.a, p.b, p.c)) contradictory_ = true;
  }
  for (const auto& [p, a, b] : text.rays)
    if (p != b && here(p) && here(a) && here(b) && text_between(p, a, b)) contradictory_ = true;
}

bool Arrangement::text_between(PointId a, PointId b, PointId c) const {
  return between_.contains(between_key(a, b, c));
}

bool Arrangement::seen_between(PointId a, PointId b, PointId c) const {
  const LineId l = line(a, b);
  if (!l.valid() || l != line(b, c) || views_.empty()) return false;
  for (const Coordinates& view : views_) {
    const auto &p = view[a.index()], &q = view[b.index()], &r = view[c.index()];
    const double dot = (p[0] - q[0]) * (r[0] - q[0]) + (p[1] - q[1]) * (r[1] - q[1]);
    const double size = (p[0] - r[0]) * (p[0] - r[0]) + (p[1] - r[1]) * (p[1] - r[1]);
    if (dot > -1e-10 * size) return false;
  }
  return true;
}

int Arrangement::same_direction(PointId vertex, PointId a, PointId b, bool text_only) const {
  if (a == b) return 1;
  if (text_between(a, vertex, b)) return -1;
  if (text_between(vertex, a, b) || text_between(vertex, b, a)) return 1;
  if (const auto found = rays_.find(ray_key(vertex, a, b)); found != rays_.end()) return found->second;
  if (text_only || views_.empty()) return 0;
  if (seen_between(a, vertex, b)) return -1;
  // A proof cites orders. Figures that agree on the ray and not on which point is nearer show none that it could cite:
  // each order is then a case.
  return seen_between(vertex, a, b) || seen_between(vertex, b, a) ? 1 : 0;
}

int Arrangement::direction(LineId id, PointId a, PointId b) const {
  const auto& on = points_on(id);
  const PointId p = on[0], q = on[1];
  if (a == p && b == q) return 1;
  if (a == q && b == p) return -1;
  // Direction of a→b against p→q, through shared ends; only what the text says.
  auto from = [&](PointId vertex, PointId toward) {  // vertex→toward against p→q
    if (vertex == p) return same_direction(p, toward, q, true);
    const int back = same_direction(vertex, p, toward, true);
    if (back < 0) {  // toward lies on the far side of vertex from p: same direction as p→vertex
      return vertex == q ? 1 : same_direction(p, vertex, q, true);
    }
    if (back > 0) return vertex == q ? -1 : -same_direction(p, vertex, q, true);
    return 0;
  };
  return from(a, b);
}

}  // namespace prover
