// Starts: scattered points, then a few rounds of projections, each onto one sentence. Points are numbered in the
// order in which the text names them, so the point of a sentence with the highest number is the one that the
// sentence brings in, and the one that moves.
#include "prover/sketch/starts.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "prover/sketch/plane.hpp"

namespace prover {
namespace {

class Placer {
 public:
  Placer(std::vector<double>& x, Random& random) : x_(x), random_(random) {}

  void place(const Phrase& phrase);

 private:
  std::vector<double>& x_;
  Random& random_;

  Vector at(PointId p) const { return {x_[2 * p.index()], x_[2 * p.index() + 1]}; }
  void put(PointId p, Vector v) {
    x_[2 * p.index()] = v.x;
    x_[2 * p.index() + 1] = v.y;
  }
  static PointId newest(const std::vector<PointId>& points) { return *std::max_element(points.begin(), points.end()); }

  void on_line(PointId p, PointId a, PointId b) { put(p, 0.5 * (at(p) + mirror(at(p), at(a), at(b)))); }

  void order(const std::vector<PointId>& p) {
    const std::size_t n = p.size();
    // The two that were there first stay where they are; the others follow in even steps with some play.
    std::size_t i = 0, j = 1;
    for (std::size_t k = 1; k < n; ++k)
      if (p[k] < p[i]) i = k;
    if (j == i) j = 0;
    for (std::size_t k = 0; k < n; ++k)
      if (k != i && p[k] < p[j]) j = k;
    if (i > j) std::swap(i, j);
    const Vector from = at(p[i]), step = (1 / static_cast<double>(j - i)) * (at(p[j]) - from);
    for (std::size_t k = 0; k < n; ++k) {
      if (k == i || k == j) continue;
      const double where = static_cast<double>(k) - static_cast<double>(i) + random_.between(-0.35, 0.35);
      put(p[k], from + where * step);
    }
  }

  void meet(PointId p, PointId a, PointId b, PointId c, PointId d) {
    const Vector u = at(b) - at(a), v = at(d) - at(c);
    const double det = cross(u, v);
    if (std::fabs(det) < 0.05 * norm(u) * norm(v)) return;
    put(p, at(a) + (cross(at(c) - at(a), v) / det) * u);
  }

  // Turns the newest point of line ab or cd round its partner, so that the lines make the angle of `turned`.
  void turn_line(const std::vector<PointId>& p, bool right_angle) {
    const PointId moved = newest(p);
    const bool second = p[2] == moved || p[3] == moved;
    const PointId stays = second ? (p[2] == moved ? p[3] : p[2]) : (p[0] == moved ? p[1] : p[0]);
    const Vector other = second ? at(p[1]) - at(p[0]) : at(p[3]) - at(p[2]);
    const Vector along = right_angle ? left_of(other) : other, v = at(moved) - at(stays);
    const double length = norm(along);
    if (length <= 0) return;
    const double sign = dot(along, v) < 0 ? -1 : 1;
    put(moved, at(stays) + (sign * norm(v) / length) * along);
  }

  Vector circumcentre(Vector a, Vector b, Vector c) const {
    const Vector u = b - a, v = c - a;
    const double det = 2 * cross(u, v);
    if (std::fabs(det) < 1e-3) return (1.0 / 3) * (a + b + c);
    return a + (1 / det) * Vector{v.y * dot(u, u) - u.y * dot(v, v), u.x * dot(v, v) - v.x * dot(u, u)};
  }

  // Points round an ellipse in the given order; those named before this sentence keep their places where possible.
  void round(const std::vector<PointId>& p, bool circular) {
    if (!brings_in_all(p)) return sort_round(p);
    const double turn = random_.between(0, 2 * pi), flat = circular ? 1 : random_.between(0.5, 1);
    const double n = static_cast<double>(p.size());
    for (std::size_t k = 0; k < p.size(); ++k) {
      const Vector u = unit(2 * pi * (static_cast<double>(k) + random_.between(-0.32, 0.32)) / n);
      put(p[k], product(unit(turn), {u.x, flat * u.y}));
    }
  }
  bool brings_in_all(const std::vector<PointId>& p) const {
    return *std::min_element(p.begin(), p.end()) >= fresh_;
  }
  // Points that stood before change places among themselves until they run round in order.
  void sort_round(const std::vector<PointId>& p) {
    Vector middle;
    for (const PointId q : p) middle = middle + (1 / static_cast<double>(p.size())) * at(q);
    double turned = 0;
    bool in_order = true;
    for (std::size_t k = 0; k < p.size(); ++k) {
      const double turn = cross(at(p[k]) - middle, at(p[(k + 1) % p.size()]) - middle);
      in_order = in_order && turn * turned >= 0;
      turned = turn;
    }
    if (in_order) return;
    std::vector<Vector> places;
    for (const PointId q : p) places.push_back(at(q));
    std::sort(places.begin(), places.end(), [&](Vector a, Vector b) { return direction(a - middle) < direction(b - middle); });
    if (random_.chance(0.5)) std::reverse(places.begin(), places.end());
    const std::size_t first = random_.below(p.size());
    for (std::size_t k = 0; k < p.size(); ++k) put(p[k], places[(first + k) % p.size()]);
  }
  // Built on the side whose ends were named first.
  void regular(const std::vector<PointId>& p) {
    const std::size_t n = p.size();
    std::size_t base = 0;
    for (std::size_t k = 1; k < n; ++k)
      if (std::max(p[k], p[(k + 1) % n]) < std::max(p[base], p[(base + 1) % n])) base = k;
    const Vector turn = unit((random_.chance(0.5) ? 1 : -1) * 2 * pi / static_cast<double>(n));
    Vector side = at(p[(base + 1) % n]) - at(p[base]);
    for (std::size_t k = 2; k < n; ++k) {
      side = product(side, turn);
      put(p[(base + k) % n], at(p[(base + k - 1) % n]) + side);
    }
  }
  void circle(const std::vector<PointId>& p, bool cyclic) {
    const PointId centre = p[0];
    const std::vector<PointId> rim(p.begin() + 1, p.end());
    if (cyclic && rim.size() > 3) {
      const bool alone = brings_in_all(rim);
      round(rim, true);
      if (alone) return put(centre, {0, 0});
    }
    if (centre == newest(p) && rim.size() >= 3) put(centre, circumcentre(at(rim[0]), at(rim[1]), at(rim[2])));
    double radius = 0;
    for (const PointId q : rim) radius += norm(at(q) - at(centre)) / static_cast<double>(rim.size());
    for (const PointId q : rim) {
      const Vector v = at(q) - at(centre);
      const double length = norm(v);
      if (length > 1e-6) put(q, at(centre) + (radius / length) * v);
    }
  }
  void concyclic(const std::vector<PointId>& p, bool cyclic) {
    if (cyclic) round(p, true);
    std::vector<PointId> sorted = p;
    std::sort(sorted.begin(), sorted.end());
    if (sorted.size() < 4) return;
    const Vector centre = circumcentre(at(sorted[0]), at(sorted[1]), at(sorted[2]));
    const double radius = norm(at(sorted[0]) - centre);
    for (std::size_t k = 3; k < sorted.size(); ++k) {
      const Vector v = at(sorted[k]) - centre;
      const double length = norm(v);
      if (length > 1e-6) put(sorted[k], centre + (radius / length) * v);
    }
  }
  void side(PointId a, PointId d, PointId b, PointId c, bool same) {
    const Vector line = at(c) - at(b);
    const bool is_same = cross(line, at(a) - at(b)) * cross(line, at(d) - at(b)) > 0;
    if (is_same == same) return;
    const PointId moved = std::max(a, d);
    put(moved, mirror(at(moved), at(b), at(c)));
  }
  void inside(PointId p, const std::vector<PointId>& corners) {
    Vector sum;
    double weights = 0;
    for (const PointId q : corners) {
      const double weight = random_.between(0.25, 1);
      sum = sum + weight * at(q);
      weights += weight;
    }
    put(p, (1 / weights) * sum);
  }
  void bisector(PointId d, PointId a, PointId b, PointId c) {
    const Vector u = at(a) - at(b), v = at(c) - at(b);
    const Vector sum = (1 / std::max(norm(u), 1e-9)) * u + (1 / std::max(norm(v), 1e-9)) * v;
    const double length = norm(sum);
    if (length > 1e-3) put(d, at(b) + (norm(at(d) - at(b)) / length) * sum);
  }

 public:
  PointId fresh_{0};  // points before this one were named by earlier sentences
};

void Placer::place(const Phrase& phrase) {
  const std::vector<PointId>& p = phrase.points;
  const auto from = [&](std::ptrdiff_t first) { return std::vector<PointId>(p.begin() + first, p.end()); };
  switch (phrase.predicate) {
    case Predicate::line_order: order(p); break;
    case Predicate::on_segment: order({p[1], p[0], p[2]}); break;
    case Predicate::collinear: {
      std::vector<PointId> sorted = p;
      std::sort(sorted.begin(), sorted.end());
      for (std::size_t k = 2; k < sorted.size(); ++k) on_line(sorted[k], sorted[0], sorted[1]);
      break;
    }
    case Predicate::on_ray: {
      const Vector u = at(p[2]) - at(p[1]);
      put(p[0], at(p[1]) + (norm(at(p[0]) - at(p[1])) / std::max(norm(u), 1e-9)) * u);
      break;
    }
    case Predicate::on_line: on_line(p[0], p[1], p[2]); break;
    case Predicate::parallel: turn_line(p, false); break;
    case Predicate::perpendicular: turn_line(p, true); break;
    case Predicate::meet:
      if (p[0] == newest(p)) meet(p[0], p[1], p[2], p[3], p[4]);
      break;
    case Predicate::cross:
      if (p[0] == newest(p)) meet(p[0], p[1], p[2], p[3], p[4]);
      break;
    case Predicate::midpoint:
    case Predicate::diameter: {
      const bool centre_last = phrase.predicate == Predicate::diameter;
      const PointId m = centre_last ? p[2] : p[0], a = centre_last ? p[0] : p[1], b = centre_last ? p[1] : p[2];
      if (m == newest(p)) put(m, 0.5 * (at(a) + at(b)));
      else if (b > a) put(b, 2 * at(m) - at(a));
      else put(a, 2 * at(m) - at(b));
      break;
    }
    case Predicate::foot:
      if (p[0] == newest(p)) put(p[0], 0.5 * (at(p[1]) + mirror(at(p[1]), at(p[2]), at(p[3]))));
      break;
    case Predicate::circle: circle(p, false); break;
    case Predicate::circle_cyclic: circle(p, true); break;
    case Predicate::concyclic: concyclic(p, false); break;
    case Predicate::concyclic_cyclic: concyclic(p, true); break;
    case Predicate::tangent: turn_line({p[2], p[1], p[1], p[0]}, true); break;
    case Predicate::bisects:
      if (p[0] == newest(p)) bisector(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::regular_polygon:
    case Predicate::square:
    case Predicate::equilateral: regular(p); break;
    case Predicate::convex:
    case Predicate::kite:
    case Predicate::trapezium:
    case Predicate::simple_polygon: round(p, false); break;
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
      if (phrase.predicate == Predicate::rectangle) turn_line({p[0], p[1], p[1], p[2]}, true);
      put(p[3], at(p[0]) + (at(p[2]) - at(p[1])));
      break;
    case Predicate::inside_polygon:
      if (p[0] == newest(p)) inside(p[0], from(1));
      break;
    case Predicate::inside_angle:
      if (p[0] == newest(p)) inside(p[0], from(1));
      break;
    case Predicate::same_side: side(p[0], p[1], p[2], p[3], true); break;
    case Predicate::opposite_sides: side(p[0], p[1], p[2], p[3], false); break;
    case Predicate::relation:  // left to the solver, as all sizes are
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::perpendicular_bisector:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::right_angled:
    case Predicate::tangent_circumcircle:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
    case Predicate::congruent:
    case Predicate::similar: break;
  }
  for (const PointId q : p) fresh_ = std::max(fresh_, PointId(q.value + 1));
}

// Off the exact figure, where the search would otherwise balance between two sides.
void jostle(std::vector<double>& x, std::size_t points, Random& random) {
  for (std::size_t k = 0; k < 2 * points; ++k) x[k] += random.between(-0.03, 0.03);
}

}  // namespace

std::vector<double> random_start(const std::vector<Phrase>& givens, const Layout& layout, Random& random, int effort) {
  std::vector<double> x(layout.variables());
  double apart = 1.2 / std::sqrt(static_cast<double>(std::max<std::size_t>(layout.points, 1)));
  for (std::size_t p = 0; p < layout.points; ++p)
    for (bool placed = false; !placed; apart *= 0.97) {
      x[2 * p] = random.between(-1, 1);
      x[2 * p + 1] = random.between(-1, 1);
      placed = true;
      for (std::size_t q = 0; q < p && placed; ++q)
        placed = norm(Vector{x[2 * p] - x[2 * q], x[2 * p + 1] - x[2 * q + 1]}) > apart;
    }
  for (std::size_t k = 0; k < layout.numbers.size(); ++k) x[2 * layout.points + k] = random.between(0.1, 1);
  Placer placer(x, random);
  for (int round = 0; round < effort; ++round)
    for (const Phrase& phrase : givens)
      if (phrase.predicate != Predicate::relation) placer.place(phrase);
  return x;
}

std::vector<double> altered_start(const std::vector<double>& figure, const Layout& layout, Random& random) {
  std::vector<double> x = figure;
  const std::size_t n = layout.points;
  if (n < 3) return x;
  const auto at = [&](std::size_t p) { return Vector{figure[2 * p], figure[2 * p + 1]}; };
  const auto put = [&](std::size_t p, Vector v) {
    x[2 * p] = v.x;
    x[2 * p + 1] = v.y;
  };
  const std::size_t p = random.below(n);
  const std::size_t a = (p + 1 + random.below(n - 1)) % n;
  std::size_t b = random.below(n);
  while (b == a || b == p) b = (b + 1) % n;
  switch (random.below(8)) {
    case 0:
    case 1: put(p, mirror(at(p), at(a), at(b))); break;  // one point over to the other side of a line
    case 2: {  // everything that is on its side of the line goes with it
      const double side = cross(at(b) - at(a), at(p) - at(a));
      for (std::size_t q = 0; q < n; ++q)
        if (cross(at(b) - at(a), at(q) - at(a)) * side > 0) put(q, mirror(at(q), at(a), at(b)));
      break;
    }
    case 3:  // two points change places
      put(p, at(a));
      put(a, at(p));
      break;
    case 4: put(p, 2 * at(a) - at(p)); break;  // a point beyond another one
    case 5: {  // along its line to b, as far from a: the other triangle with the same two sides and angle
      const Vector foot = 0.5 * (at(a) + mirror(at(a), at(p), at(b)));
      put(p, 2 * foot - at(p));
      break;
    }
    case 6:  // the same ray, much farther out or nearer
      put(p, at(a) + (random.chance(0.5) ? random.between(2, 5) : random.between(0.15, 0.5)) * (at(p) - at(a)));
      break;
    case 7: {  // the whole figure pressed flat against a line
      const double flat = random.between(0.2, 0.6);
      for (std::size_t q = 0; q < n; ++q) put(q, at(q) + (0.5 * (1 - flat)) * (mirror(at(q), at(a), at(b)) - at(q)));
      break;
    }
  }
  jostle(x, n, random);
  return x;
}

std::vector<double> turned_start(const std::vector<double>& figure, const Layout& layout, std::array<int, 3> points,
                                 Random& random) {
  std::vector<double> x = figure;
  const auto at = [&](int p) { return Vector{figure[2 * p], figure[2 * p + 1]}; };
  if (random.chance(0.5)) {  // otherwise the wish alone has to pull it over
    const std::size_t k = random.below(3);
    const int p = points[k];
    const Vector moved = mirror(at(p), at(points[(k + 1) % 3]), at(points[(k + 2) % 3]));
    x[2 * p] = moved.x;
    x[2 * p + 1] = moved.y;
  }
  jostle(x, layout.points, random);
  return x;
}

}  // namespace prover
