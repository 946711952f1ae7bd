// What predicates are made of: the constraints on a few points, and a builder that collects clauses. Only
// clauses.cpp, polygons.cpp and circles.cpp need it.
#pragma once
#include <array>
#include <initializer_list>
#include <utility>
#include <vector>

#include "prover/sketch/constraint.hpp"
#include "prover/sketch/plane.hpp"

namespace prover::sketching {

// Three points, b the corner or a→b the line, as the function says.
struct Triple {
  int a, b, c;
};

// A direction a→b, counted `times`.
struct Ray {
  double times;
  int a, b;
};

inline Constraint turn(std::initializer_list<Ray> rays, double period, double constant = 0) {
  Constraint result{.form = Form::turn, .constant = constant, .period = period};
  for (const Ray& ray : rays)
    result.terms.push_back({.coefficient = ray.times, .a = ray.a, .b = ray.b});
  return result;
}

inline Constraint left(double sign, Triple t) {
  return {.form = Form::orientation, .equation = false, .terms = {{.coefficient = sign, .a = t.a, .b = t.b, .c = t.c}}};
}

inline Constraint acute_angle(int a, int vertex, int b, double allowance = 0) {
  return {.form = Form::opening, .equation = false, .constant = allowance, .terms = {{.a = a, .b = vertex, .c = b}}};
}

inline Constraint equal_lengths(int a, int b, int c, int d) {
  return {.form = Form::lengths, .terms = {{.a = a, .b = b}, {.coefficient = -1, .a = c, .b = d}}};
}

inline Constraint equal_angles(Triple s, Triple t) {
  return {.form = Form::angles, .terms = {{.a = s.a, .b = s.b, .c = s.c},
                                          {.coefficient = -1, .a = t.a, .b = t.b, .c = t.c}}};
}

inline Constraint collinear(int a, int b, int c) { return turn({{1, a, b}, {-1, a, c}}, pi); }
inline Constraint in_order(int a, int b, int c) { return turn({{1, a, b}, {-1, b, c}}, 2 * pi); }
inline Constraint parallel(int a, int b, int c, int d) { return turn({{1, a, b}, {-1, c, d}}, pi); }
inline Constraint perpendicular(int a, int b, int c, int d) { return turn({{1, a, b}, {-1, c, d}}, pi, pi / 2); }
// Equal inscribed angles, as directed angles between lines.
inline Constraint concyclic(int p, int q, int r, int s) {
  return turn({{1, p, r}, {-1, p, q}, {-1, s, r}, {1, s, q}}, pi);
}

// The two equations sum of weight · point = 0, measured by the distance from→to.
struct Weighted {
  double weight;
  int point;
};
inline Branch balanced(std::initializer_list<Weighted> sum, int from, int to) {
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
  std::vector<int> rest(std::size_t first) const {
    return {points_.begin() + static_cast<std::ptrdiff_t>(first), points_.end()};
  }

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

  void convex(const std::vector<int>& p);
  void simple(const std::vector<int>& p);
  void regular(const std::vector<int>& p);
  void on_one_circle(int centre, const std::vector<int>& p);
  void on_some_circle(const std::vector<int>& p);
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
  void parallel_lines(int a, int b, int c, int d);
};

}  // namespace prover::sketching
