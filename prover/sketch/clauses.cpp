// What each predicate asks of a figure. Where a predicate leaves something open (which way round a polygon runs,
// which two sides of an isosceles triangle agree), it has branches.
#include <algorithm>
#include <array>
#include <initializer_list>

#include "prover/sketch/constraint.hpp"
#include "prover/sketch/plane.hpp"

namespace prover {
namespace {

struct Triple {
  int a, b, c;
};

// A direction a→b, counted `times`.
struct Ray {
  double times;
  int a, b;
};

Constraint turn(std::initializer_list<Ray> rays, double period, double constant = 0) {
  Constraint result{.form = Form::turn, .constant = constant, .period = period};
  for (const Ray& ray : rays)
    result.terms.push_back({.coefficient = ray.times, .a = ray.a, .b = ray.b});
  return result;
}

Constraint left(double sign, Triple t) {
  return {.form = Form::orientation, .equation = false, .terms = {{.coefficient = sign, .a = t.a, .b = t.b, .c = t.c}}};
}

Constraint acute_angle(int a, int vertex, int b, double allowance = 0) {
  return {.form = Form::opening, .equation = false, .constant = allowance, .terms = {{.a = a, .b = vertex, .c = b}}};
}

Constraint equal_lengths(int a, int b, int c, int d) {
  return {.form = Form::lengths, .terms = {{.a = a, .b = b}, {.coefficient = -1, .a = c, .b = d}}};
}

Constraint equal_angles(Triple s, Triple t) {
  return {.form = Form::angles, .terms = {{.a = s.a, .b = s.b, .c = s.c},
                                          {.coefficient = -1, .a = t.a, .b = t.b, .c = t.c}}};
}

Constraint collinear(int a, int b, int c) { return turn({{1, a, b}, {-1, a, c}}, pi); }
Constraint in_order(int a, int b, int c) { return turn({{1, a, b}, {-1, b, c}}, 2 * pi); }
Constraint parallel(int a, int b, int c, int d) { return turn({{1, a, b}, {-1, c, d}}, pi); }
Constraint perpendicular(int a, int b, int c, int d) { return turn({{1, a, b}, {-1, c, d}}, pi, pi / 2); }
// Equal inscribed angles, as directed angles between lines.
Constraint concyclic(int p, int q, int r, int s) { return turn({{1, p, r}, {-1, p, q}, {-1, s, r}, {1, s, q}}, pi); }

// The two equations sum of weight · point = 0, measured by the distance from→to.
struct Weighted {
  double weight;
  int point;
};
Branch balanced(std::initializer_list<Weighted> sum, int from, int to) {
  Branch result;
  for (int axis = 0; axis < 2; ++axis) {
    Constraint row{.form = Form::linear, .from = from, .to = to};
    for (const Weighted& w : sum) row.terms.push_back({.coefficient = w.weight, .a = 2 * w.point + axis});
    result.push_back(std::move(row));
  }
  return result;
}

class Builder {
 public:
  Builder(const Phrase& phrase, const Layout& layout) : layout_(layout) {
    for (const PointId p : phrase.points) points_.push_back(p.value);
  }

  std::vector<Clause> build(Predicate predicate);

 private:
  const Layout& layout_;
  std::vector<int> points_;
  std::vector<Clause> clauses_;

  int operator[](std::size_t i) const { return points_[i]; }
  std::size_t count() const { return points_.size(); }
  std::vector<int> rest(std::size_t first) const { return {points_.begin() + static_cast<std::ptrdiff_t>(first), points_.end()}; }

  void need(Constraint constraint) { clauses_.push_back({{{std::move(constraint)}}}); }
  void need(const Branch& branch) { clauses_.push_back({{branch}}); }
  void choice(std::vector<Branch> branches) { clauses_.push_back({std::move(branches)}); }
  void impossible() { clauses_.push_back({}); }
  // All triples turn the same way: left, or right.
  void same_turn(const std::vector<Triple>& triples) {
    std::vector<Branch> branches(2);
    for (const Triple& t : triples) {
      branches[0].push_back(left(1, t));
      branches[1].push_back(left(-1, t));
    }
    choice(std::move(branches));
  }
  void triangle(int a, int b, int c) { same_turn({{a, b, c}, {b, c, a}, {c, a, b}}); }

  // A polygon is convex when every corner turns the same way and it winds once: then every fan triangle does too.
  void convex(const std::vector<int>& p) {
    const std::size_t n = p.size();
    if (n < 3) return;
    std::vector<Triple> triples;
    for (std::size_t i = 0; i < n; ++i) triples.push_back({p[i], p[(i + 1) % n], p[(i + 2) % n]});
    for (std::size_t i = 2; i + 2 < n; ++i) triples.push_back({p[0], p[i], p[i + 1]});
    if (n > 4)
      for (std::size_t i = 2; i + 2 < n; ++i) triples.push_back({p[0], p[1], p[i + 1]});
    same_turn(triples);
  }
  void simple(const std::vector<int>& p);
  void regular(const std::vector<int>& p);
  void on_one_circle(int centre, const std::vector<int>& p) {
    for (std::size_t i = 1; i < p.size(); ++i) need(equal_lengths(centre, p[0], centre, p[i]));
  }
  void on_some_circle(const std::vector<int>& p) {
    if (p.size() < 4) return;
    for (std::size_t i = 3; i < p.size(); ++i) need(concyclic(p[0], p[1], p[2], p[i]));
    triangle(p[0], p[1], p[2]);
  }
  void tangent_to_circumcircle(int p, int t, std::array<int, 3> circle);
  void inside_polygon(int p, const std::vector<int>& polygon);
  void outside_polygon(int p, const std::vector<int>& polygon);
  void against_circle(int p, int centre, double sign);
  void line_order(const std::vector<int>& p) {
    for (std::size_t i = 0; i + 2 < p.size(); ++i) need(in_order(p[i], p[i + 1], p[i + 2]));
  }
  void isosceles_at(int a, int b, int c) {
    need(equal_lengths(a, b, a, c));
    triangle(a, b, c);
  }
  void parallel_lines(int a, int b, int c, int d) {
    need(parallel(a, b, c, d));
    std::vector<Triple> apart;  // not one and the same line
    if (c != a && c != b) apart.push_back({a, b, c});
    if (d != a && d != b) apart.push_back({a, b, d});
    if (apart.size() == 2) same_turn(apart); else impossible();
  }
};

void Builder::simple(const std::vector<int>& p) {
  const std::size_t n = p.size();
  for (std::size_t i = 0; i < n; ++i) {
    triangle(p[i], p[(i + 1) % n], p[(i + 2) % n]);
    for (std::size_t j = i + 2; j < n; ++j) {
      if (i == 0 && j == n - 1) continue;
      const int a = p[i], b = p[i + 1], c = p[j], d = p[(j + 1) % n];
      std::vector<Branch> branches;  // two segments do not cross: one lies on one side of the line of the other
      for (const double sign : {1.0, -1.0}) {
        branches.push_back({left(sign, {a, b, c}), left(sign, {a, b, d})});
        branches.push_back({left(sign, {c, d, a}), left(sign, {c, d, b})});
      }
      choice(std::move(branches));
    }
  }
}

// Each side is the side before it, turned by the outer angle: linear in the coordinates, for either sense.
void Builder::regular(const std::vector<int>& p) {
  const std::size_t n = p.size();
  if (n < 3) return impossible();
  std::vector<Branch> branches;
  for (const double sense : {1.0, -1.0}) {
    const Vector z = unit(sense * 2 * pi / static_cast<double>(n));
    Branch branch;
    for (std::size_t i = 0; i + 2 < n; ++i) {
      const int a = p[i], b = p[i + 1], c = p[i + 2];
      Constraint x{.form = Form::linear, .from = a, .to = b}, y = x;
      // (c - b) - z (b - a) = 0
      x.terms = {{.a = 2 * c}, {.coefficient = -1 - z.x, .a = 2 * b}, {.coefficient = z.x, .a = 2 * a},
                 {.coefficient = z.y, .a = 2 * b + 1}, {.coefficient = -z.y, .a = 2 * a + 1}};
      y.terms = {{.a = 2 * c + 1}, {.coefficient = -1 - z.x, .a = 2 * b + 1}, {.coefficient = z.x, .a = 2 * a + 1},
                 {.coefficient = -z.y, .a = 2 * b}, {.coefficient = z.y, .a = 2 * a}};
      branch.push_back(std::move(x));
      branch.push_back(std::move(y));
    }
    branch.push_back(left(sense, {p[0], p[1], p[2]}));
    branches.push_back(std::move(branch));
  }
  choice(std::move(branches));
}

// The angle of tangent and chord equals the inscribed angle over the chord (Euclid III.32), as directed angles.
void Builder::tangent_to_circumcircle(int p, int t, std::array<int, 3> circle) {
  auto at = std::find(circle.begin(), circle.end(), t);
  if (at == circle.end()) {
    need(concyclic(circle[0], circle[1], circle[2], t));
    at = circle.begin() + 2;
  }
  std::iter_swap(circle.begin() + 2, at);
  const int u = circle[0], v = circle[1];
  need(turn({{1, t, p}, {-1, t, u}, {-1, v, t}, {1, v, u}}, pi));
  triangle(t, u, v);
}

void Builder::inside_polygon(int p, const std::vector<int>& polygon) {
  const std::size_t n = polygon.size();
  if (n < 3) return impossible();
  std::vector<Branch> branches;  // in some triangle of corners (for more than three corners that only leads there)
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j)
      for (std::size_t k = j + 1; k < n; ++k)
        for (const double sign : {1.0, -1.0}) {
          const int a = polygon[i], b = polygon[j], c = polygon[k];
          branches.push_back({left(sign, {p, a, b}), left(sign, {p, b, c}), left(sign, {p, c, a})});
        }
  if (n > 3) {
    Constraint within{.form = Form::winding, .equation = false};
    for (std::size_t i = 0; i < n; ++i)
      within.terms.push_back({.a = p, .b = polygon[i], .c = polygon[(i + 1) % n]});
    need(within);
  }
  choice(std::move(branches));
  clauses_.back().steers = n > 3;
}

void Builder::outside_polygon(int p, const std::vector<int>& polygon) {
  const std::size_t n = polygon.size();
  if (n < 3) return impossible();
  Constraint without{.form = Form::winding, .equation = false};
  for (std::size_t i = 0; i < n; ++i)
    without.terms.push_back({.coefficient = -1, .a = p, .b = polygon[i], .c = polygon[(i + 1) % n]});
  need(without);
  std::vector<Branch> branches;  // beyond a side, which a dent makes neither enough nor needed
  for (std::size_t i = 0; i < n; ++i)
    for (const double sign : {1.0, -1.0}) {
      const int a = polygon[i], b = polygon[(i + 1) % n], c = polygon[(i + 2) % n];
      branches.push_back({left(sign, {a, b, c}), left(-sign, {a, b, p})});
    }
  choice(std::move(branches));
  clauses_.back().steers = true;
}

// A circle known by its centre is as large as the text says elsewhere; without that nothing can be said.
void Builder::against_circle(int p, int centre, double sign) {
  const auto index = static_cast<std::size_t>(centre);
  if (index >= layout_.on_circle.size() || !layout_.on_circle[index].valid()) return impossible();
  need({.form = Form::lengths, .equation = false,
        .terms = {{.coefficient = sign, .a = centre, .b = layout_.on_circle[index].value},
                  {.coefficient = -sign, .a = centre, .b = p}}});
}

std::vector<Clause> Builder::build(Predicate predicate) {
  const Builder& p = *this;
  switch (predicate) {
    case Predicate::relation: break;
    case Predicate::triangle: triangle(p[0], p[1], p[2]); break;
    case Predicate::acute:
      triangle(p[0], p[1], p[2]);
      need(Branch{acute_angle(p[0], p[1], p[2]), acute_angle(p[1], p[2], p[0]), acute_angle(p[2], p[0], p[1])});
      break;
    case Predicate::line_order: line_order(points_); break;
    case Predicate::collinear:
      for (std::size_t i = 2; i < count(); ++i) need(collinear(p[0], p[1], p[i]));
      break;
    case Predicate::on_ray: need(turn({{1, p[1], p[0]}, {-1, p[1], p[2]}}, 2 * pi)); break;
    case Predicate::on_segment: need(in_order(p[1], p[0], p[2])); break;
    case Predicate::on_line: need(collinear(p[1], p[2], p[0])); break;
    case Predicate::parallel: parallel_lines(p[0], p[1], p[2], p[3]); break;
    case Predicate::perpendicular: need(perpendicular(p[0], p[1], p[2], p[3])); break;
    case Predicate::meet:
      if (p[0] != p[1] && p[0] != p[2]) need(collinear(p[1], p[2], p[0]));
      if (p[0] != p[3] && p[0] != p[4]) need(collinear(p[3], p[4], p[0]));
      break;
    case Predicate::cross:
      need(in_order(p[1], p[0], p[2]));
      need(in_order(p[3], p[0], p[4]));
      break;
    case Predicate::midpoint: need(balanced({{2, p[0]}, {-1, p[1]}, {-1, p[2]}}, p[1], p[2])); break;
    case Predicate::foot:
      if (p[0] != p[2] && p[0] != p[3]) need(collinear(p[2], p[3], p[0]));
      need(perpendicular(p[1], p[0], p[2], p[3]));
      break;
    case Predicate::perpendicular_bisector:
      for (const int end : {p[0], p[1]}) {
        // The midpoint of LM may itself be one of the two; it is as far from L as from M too.
        need(equal_lengths(end, p[2], end, p[3]));
      }
      break;
    case Predicate::isosceles:
      choice({{equal_lengths(p[0], p[1], p[0], p[2])},
              {equal_lengths(p[1], p[0], p[1], p[2])},
              {equal_lengths(p[2], p[0], p[2], p[1])}});
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::isosceles_at: isosceles_at(p[0], p[1], p[2]); break;
    case Predicate::equilateral: regular({p[0], p[1], p[2]}); break;
    case Predicate::right_angled:
      need(perpendicular(p[0], p[1], p[0], p[2]));
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::circle: on_one_circle(p[0], rest(1)); break;
    case Predicate::circle_cyclic:
      on_one_circle(p[0], rest(1));
      if (count() > 4) convex(rest(1));
      break;
    case Predicate::concyclic: on_some_circle(points_); break;
    case Predicate::concyclic_cyclic:
      on_some_circle(points_);
      if (count() > 3) convex(points_);
      break;
    case Predicate::diameter: need(balanced({{2, p[2]}, {-1, p[0]}, {-1, p[1]}}, p[0], p[1])); break;
    case Predicate::tangent: {
      need(perpendicular(p[0], p[1], p[2], p[1]));
      const auto centre = static_cast<std::size_t>(p[2]);
      if (centre < layout_.on_circle.size()) {
        const PointId known = layout_.on_circle[centre];
        if (known.valid() && known.value != p[1]) need(equal_lengths(p[2], p[1], p[2], known.value));
      }
      break;
    }
    case Predicate::tangent_circumcircle: tangent_to_circumcircle(p[0], p[1], {p[2], p[3], p[4]}); break;
    case Predicate::bisects:
      // Twice the direction of BD is that of BA and BC together; the acute half keeps D off the opposite ray. A
      // straight angle may be bisected too, hence the allowance.
      need(Branch{turn({{2, p[2], p[0]}, {-1, p[2], p[1]}, {-1, p[2], p[3]}}, 2 * pi),
                  acute_angle(p[0], p[2], p[1], 1e-3), acute_angle(p[0], p[2], p[3], 1e-3)});
      break;
    case Predicate::regular_polygon: regular(points_); break;
    case Predicate::convex: convex(points_); break;
    case Predicate::simple_polygon: simple(points_); break;
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
      if (predicate == Predicate::square) {
        regular(points_);
        break;
      }
      need(balanced({{1, p[0]}, {-1, p[1]}, {1, p[2]}, {-1, p[3]}}, p[0], p[2]));
      if (predicate == Predicate::rectangle) need(perpendicular(p[0], p[1], p[1], p[2]));
      if (predicate == Predicate::rhombus) need(equal_lengths(p[0], p[1], p[1], p[2]));
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::kite:
      need(equal_lengths(p[0], p[1], p[0], p[3]));
      need(equal_lengths(p[2], p[1], p[2], p[3]));
      convex(points_);
      break;
    case Predicate::trapezium:
      need(turn({{1, p[0], p[1]}, {-1, p[3], p[2]}}, 2 * pi));
      same_turn({{p[0], p[1], p[2]}, {p[0], p[1], p[3]}});
      break;
    case Predicate::inside_polygon: inside_polygon(p[0], rest(1)); break;
    case Predicate::inside_angle:
      same_turn({{p[2], p[1], p[0]}, {p[2], p[0], p[3]}, {p[2], p[1], p[3]}});
      break;
    case Predicate::inside_circle: against_circle(p[0], p[1], 1); break;
    case Predicate::outside_polygon: outside_polygon(p[0], rest(1)); break;
    case Predicate::outside_circle: against_circle(p[0], p[1], -1); break;
    case Predicate::same_side: same_turn({{p[2], p[3], p[0]}, {p[2], p[3], p[1]}}); break;
    case Predicate::opposite_sides: same_turn({{p[2], p[3], p[0]}, {p[3], p[2], p[1]}}); break;
    case Predicate::congruent:
      for (std::size_t i = 0; i < 3; ++i)
        need(equal_lengths(p[i], p[(i + 1) % 3], p[3 + i], p[3 + (i + 1) % 3]));
      triangle(p[0], p[1], p[2]);
      break;
    case Predicate::similar:
      for (std::size_t i = 0; i < 3; ++i)
        need(equal_angles({p[(i + 2) % 3], p[i], p[(i + 1) % 3]}, {p[3 + (i + 2) % 3], p[3 + i], p[3 + (i + 1) % 3]}));
      triangle(p[0], p[1], p[2]);
      triangle(p[3], p[4], p[5]);
      break;
  }
  return std::move(clauses_);
}

// The fewest points a predicate can speak of; the parser keeps to it, a phrase made elsewhere may not.
std::size_t least_points(Predicate predicate) {
  switch (predicate) {
    case Predicate::relation: return 0;
    case Predicate::circle:
    case Predicate::circle_cyclic:
    case Predicate::inside_circle:
    case Predicate::outside_circle: return 2;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::line_order:
    case Predicate::collinear:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line:
    case Predicate::midpoint:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::diameter:
    case Predicate::tangent:
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::simple_polygon: return 3;
    case Predicate::parallel:
    case Predicate::perpendicular:
    case Predicate::foot:
    case Predicate::perpendicular_bisector:
    case Predicate::bisects:
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite:
    case Predicate::trapezium:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::outside_polygon:
    case Predicate::same_side:
    case Predicate::opposite_sides: return 4;
    case Predicate::meet:
    case Predicate::cross:
    case Predicate::tangent_circumcircle: return 5;
    case Predicate::congruent:
    case Predicate::similar: return 6;
  }
  return 0;
}

}  // namespace

std::vector<Clause> clauses_of(const Phrase& phrase, const Layout& layout) {
  if (phrase.predicate == Predicate::relation) return clauses_of(phrase.relation, layout);
  bool known = phrase.points.size() >= least_points(phrase.predicate);
  for (const PointId p : phrase.points) known = known && p.valid() && p.index() < layout.points;
  if (!known) return {Clause{}};
  return Builder(phrase, layout).build(phrase.predicate);
}

}  // namespace prover
