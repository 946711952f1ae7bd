#include "prover/smt/position_conflict.hpp"

#include <z3++.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

namespace prover {
namespace {

constexpr std::size_t most_points = 9;  // the laws of five points grow with the fifth power

// A sign as two statements: that it is positive, that it is negative.
struct Sign {
  z3::expr positive, negative;
  Sign operator-() const { return {negative, positive}; }
  friend Sign operator*(const Sign& a, const Sign& b) {
    return {(a.positive && b.positive) || (a.negative && b.negative), (a.positive && b.negative) || (a.negative && b.positive)};
  }
  z3::expr zero() const { return !positive && !negative; }
};

class Turns {
 public:
  Turns(z3::context& context, z3::solver& solver, std::set<PointId> points)
      : context_(context), solver_(solver), points_(points.begin(), points.end()), far_(points_.size()) {
    for (std::size_t i = 0; i < points_.size(); ++i) place_[points_[i]] = i;
    make_signs();
    add_laws();
  }

  void claim(const PositionClaims& claims) {
    for (const auto& line : claims.lines)
      for (std::size_t i = 0; i < line.size(); ++i)
        for (std::size_t j = i + 1; j < line.size(); ++j)
          for (std::size_t k = j + 1; k < line.size(); ++k) solver_.add(turn(line[i], line[j], line[k]).zero());
    for (const Position& position : claims.positions) claim(position);
    for (const auto& [p, a, b] : claims.rays) {
      if (p != b) solver_.add(turn(p, a, b).zero());
      if (p != b) same(before(a, p), before(a, b));
    }
    for (const auto& [a, b, c, d] : claims.parallel) {
      if (std::set<PointId>{a, b, c, d}.size() < 4) continue;
      same(turn(c, d, a), turn(c, d, b));
      same(turn(a, b, c), turn(a, b, d));
    }
  }

 private:
  std::size_t all() const { return points_.size() + 1; }  // Ω last

  void make_signs() {
    for (std::size_t i = 0; i < all(); ++i)
      for (std::size_t j = i + 1; j < all(); ++j)
        for (std::size_t k = j + 1; k < all(); ++k) {
          const std::string name = std::to_string(i) + "_" + std::to_string(j) + "_" + std::to_string(k);
          const Sign sign{context_.bool_const(("left" + name).c_str()), context_.bool_const(("right" + name).c_str())};
          solver_.add(!(sign.positive && sign.negative));
          if (k == far_) solver_.add(sign.positive || sign.negative);
          signs_.emplace(std::array{i, j, k}, sign);
        }
  }

  Sign sign(std::size_t a, std::size_t b, std::size_t c) const {
    std::array<std::size_t, 3> sorted{a, b, c};
    int swaps = 0;
    for (int round = 0; round < 2; ++round)
      for (std::size_t i = 0; i < 2; ++i)
        if (sorted[i] > sorted[i + 1]) {
          std::swap(sorted[i], sorted[i + 1]);
          ++swaps;
        }
    const Sign& found = signs_.at(sorted);
    return swaps % 2 == 0 ? found : -found;
  }

  Sign turn(PointId a, PointId b, PointId c) const { return sign(place_.at(a), place_.at(b), place_.at(c)); }
  Sign before(PointId a, PointId b) const { return sign(far_, place_.at(a), place_.at(b)); }
  void same(const Sign& a, const Sign& b) {
    solver_.add((a.positive && b.positive) || (a.negative && b.negative));
  }

  // Numbers with these signs add up to 0.
  void balance(const std::vector<Sign>& terms) {
    z3::expr_vector positive(context_), negative(context_);
    for (const Sign& term : terms) {
      positive.push_back(term.positive);
      negative.push_back(term.negative);
    }
    solver_.add(z3::mk_or(positive) == z3::mk_or(negative));
  }

  void add_laws() {
    const std::size_t n = all();
    for (std::size_t b = 0; b < n; ++b)
      for (std::size_t c = b + 1; c < n; ++c)
        for (std::size_t d = c + 1; d < n; ++d) {
          if (d < far_) order(b, c, d);
          for (std::size_t e = d + 1; e < n; ++e) {
            if (e < far_) balance({sign(b, c, d), -sign(b, c, e), sign(b, d, e), -sign(c, d, e)});
            for (std::size_t x = 0; x < n; ++x)
              if (x != b && x != c && x != d && x != e)
                balance({sign(x, b, c) * sign(x, d, e), -(sign(x, b, d) * sign(x, c, e)), sign(x, b, e) * sign(x, c, d)});
          }
        }
  }

  // Which comes first is an order.
  void order(std::size_t a, std::size_t b, std::size_t c) {
    const Sign ab = sign(far_, a, b), bc = sign(far_, b, c), ca = sign(far_, c, a);
    solver_.add(!(ab.positive && bc.positive && ca.positive) && !(ab.negative && bc.negative && ca.negative));
  }

  void claim(const Position& p) {
    switch (p.kind) {
      case PositionKind::between:
        solver_.add(turn(p.a, p.b, p.c).zero());
        same(before(p.a, p.b), before(p.b, p.c));
        return;
      case PositionKind::same_side:
        same(turn(p.c, p.d, p.a), turn(p.c, p.d, p.b));
        return;
      case PositionKind::opposite_sides:
        same(turn(p.c, p.d, p.a), -turn(p.c, p.d, p.b));
        return;
      case PositionKind::not_collinear:
        solver_.add(!turn(p.a, p.b, p.c).zero());
        return;
    }
  }

  z3::context& context_;
  z3::solver& solver_;
  std::vector<PointId> points_;
  std::size_t far_;
  std::map<PointId, std::size_t> place_;
  std::map<std::array<std::size_t, 3>, Sign> signs_;
};

std::set<PointId> points_of(const PositionClaims& claims) {
  std::set<PointId> points;
  for (const auto& line : claims.lines) points.insert(line.begin(), line.end());
  for (const Position& p : claims.positions)
    for (const PointId q : {p.a, p.b, p.c, p.d})
      if (q.valid()) points.insert(q);
  for (const auto& ray : claims.rays) points.insert(ray.begin(), ray.end());
  for (const auto& pair : claims.parallel) points.insert(pair.begin(), pair.end());
  return points;
}

// One point twice where different ones are meant: nothing that turns could say.
bool proper(const PositionClaims& claims) {
  return std::all_of(claims.positions.begin(), claims.positions.end(), [](const Position& p) {
    const bool sides = p.kind == PositionKind::same_side || p.kind == PositionKind::opposite_sides;
    const std::set<PointId> line = sides ? std::set{p.c, p.d} : std::set{p.a, p.b, p.c};
    return line.size() == (sides ? 2U : 3U) && (!sides || (!line.contains(p.a) && !line.contains(p.b)));
  });
}

}  // namespace

PositionsAnswer positions_exclude_each_other(const PositionClaims& claims, const Budget& budget) {
  const std::set<PointId> points = points_of(claims);
  if (points.size() > most_points) return PositionsAnswer::too_many_points;
  if (points.size() < 3 || budget.exhausted() || !proper(claims)) return PositionsAnswer::perhaps;
  try {
    z3::context context;
    z3::solver solver(context);
    if (budget.deadline) {
      const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(*budget.deadline - Budget::Clock::now());
      solver.set("timeout", static_cast<unsigned>(std::clamp<std::int64_t>(left.count(), 1, 1'000'000)));
    }
    Turns turns(context, solver, points);
    turns.claim(claims);
    return solver.check() == z3::unsat ? PositionsAnswer::exclude_each_other : PositionsAnswer::perhaps;
  } catch (const z3::exception&) {
    return PositionsAnswer::perhaps;
  }
}

}  // namespace prover
