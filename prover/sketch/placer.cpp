#include "prover/sketch/placer.hpp"

#include <algorithm>
#include <cmath>

namespace prover::sketching {

void Placer::order(const std::vector<PointId>& p) {
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

void Placer::meet(PointId p, PointId a, PointId b, PointId c, PointId d) {
  const Vector u = at(b) - at(a), v = at(d) - at(c);
  const double det = cross(u, v);
  if (std::fabs(det) <= 0.05 * norm(u) * norm(v)) return;
  put(p, at(a) + (cross(at(c) - at(a), v) / det) * u);
}

// Turns the newest point of line ab or cd round its partner, so that the lines make the angle of `turned`.
void Placer::turn_line(const std::vector<PointId>& p, bool right_angle) {
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

Vector Placer::circumcentre(Vector a, Vector b, Vector c) const {
  const Vector u = b - a, v = c - a;
  const double det = 2 * cross(u, v);
  if (std::fabs(det) < 1e-3) return (1.0 / 3) * (a + b + c);
  return a + (1 / det) * Vector{v.y * dot(u, u) - u.y * dot(v, v), u.x * dot(v, v) - v.x * dot(u, u)};
}

// Points round an ellipse in the given order; those named before this sentence keep their places where possible.
void Placer::round(const std::vector<PointId>& p, bool circular) {
  if (!brings_in_all(p)) return sort_round(p);
  const double turn = random_.between(0, 2 * pi), flat = circular ? 1 : random_.between(0.5, 1);
  const double n = static_cast<double>(p.size());
  for (std::size_t k = 0; k < p.size(); ++k) {
    const Vector u = unit(2 * pi * (static_cast<double>(k) + random_.between(-0.32, 0.32)) / n);
    put(p[k], product(unit(turn), {u.x, flat * u.y}));
  }
}

// Points that stood before change places among themselves until they run round in order.
void Placer::sort_round(const std::vector<PointId>& p) {
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
  std::sort(places.begin(), places.end(),
            [&](Vector a, Vector b) { return direction(a - middle) < direction(b - middle); });
  if (random_.chance(0.5)) std::reverse(places.begin(), places.end());
  const std::size_t first = random_.below(p.size());
  for (std::size_t k = 0; k < p.size(); ++k) put(p[k], places[(first + k) % p.size()]);
}

// Built on the side whose ends were named first.
void Placer::regular(const std::vector<PointId>& p) {
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

void Placer::circle(const std::vector<PointId>& p, bool cyclic) {
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

void Placer::concyclic(const std::vector<PointId>& p, bool cyclic) {
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

void Placer::side(PointId a, PointId d, PointId b, PointId c, bool same) {
  const Vector line = at(c) - at(b);
  const bool is_same = cross(line, at(a) - at(b)) * cross(line, at(d) - at(b)) > 0;
  if (is_same == same) return;
  const PointId moved = std::max(a, d);
  put(moved, mirror(at(moved), at(b), at(c)));
}

void Placer::inside(PointId p, const std::vector<PointId>& corners) {
  Vector sum;
  double weights = 0;
  for (const PointId q : corners) {
    const double weight = random_.between(0.25, 1);
    sum = sum + weight * at(q);
    weights += weight;
  }
  put(p, (1 / weights) * sum);
}

void Placer::bisector(PointId d, PointId a, PointId b, PointId c) {
  const Vector u = at(a) - at(b), v = at(c) - at(b);
  const Vector sum = (1 / std::max(norm(u), 1e-9)) * u + (1 / std::max(norm(v), 1e-9)) * v;
  const double length = norm(sum);
  if (length > 1e-3) put(d, at(b) + (norm(at(d) - at(b)) / length) * sum);
}

// Turns the newer arm about the vertex, on the side where it is.
void Placer::open_to(const Angle& angle, double size) {
  const PointId moved = std::max(angle.arm1, angle.arm2), stays = std::min(angle.arm1, angle.arm2);
  if (angle.vertex > moved || angle.exterior) return;
  const Vector u = at(stays) - at(angle.vertex), v = at(moved) - at(angle.vertex);
  const double length = norm(u);
  if (length <= 0) return;
  const double sign = cross(u, v) < 0 ? -1 : 1;
  put(moved, at(angle.vertex) + (norm(v) / length) * product(u, unit(sign * size)));
}

// A given angle, and lengths equal to each other; what has more terms is left to the solver.
void Placer::relation(const Relation& relation) {
  const Segment* first = nullptr;
  for (std::size_t i = 0; i < relation.comparisons.size(); ++i) {
    if (relation.comparisons[i] != Comparison::equal) return;
    const Expression& left = relation.expressions[i];
    const Expression& right = relation.expressions[i + 1];
    if (left.terms.size() != 1 || right.terms.size() != 1) return;
    if (i == 0) first = std::get_if<Segment>(&left.terms[0].quantity);
    const double ratio = right.terms[0].coefficient.to_double() / left.terms[0].coefficient.to_double();
    if (const auto* angle = std::get_if<Angle>(&left.terms[0].quantity)) {
      if (std::holds_alternative<One>(right.terms[0].quantity) && ratio > 0 && ratio < 360)
        open_to(*angle, ratio * degree);
    } else if (const auto* segment = std::get_if<Segment>(&right.terms[0].quantity); segment && first && ratio == 1) {
      const PointId moved = std::max(segment->a, segment->b), stays = std::min(segment->a, segment->b);
      const Vector v = at(moved) - at(stays);
      const double length = norm(v);
      if (length > 1e-6) put(moved, at(stays) + (norm(at(first->b) - at(first->a)) / length) * v);
    }
  }
}

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
    case Predicate::relation: relation(phrase.relation); break;
    case Predicate::triangle:  // left to the solver
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

}  // namespace prover::sketching
