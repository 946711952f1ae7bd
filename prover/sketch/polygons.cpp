// Polygons: convex, simple, regular; inside and outside.
#include "prover/sketch/clause_builder.hpp"

namespace prover::sketching {

// A polygon is convex when every corner turns the same way and it winds once: then every fan triangle does too.
void Builder::convex(const std::vector<int>& p) {
  const std::size_t n = p.size();
  if (n < 3) return;
  std::vector<Triple> triples;
  for (std::size_t i = 0; i < n; ++i) triples.push_back({p[i], p[(i + 1) % n], p[(i + 2) % n]});
  for (std::size_t i = 2; i + 2 < n; ++i) triples.push_back({p[0], p[i], p[i + 1]});
  if (n > 4)
    for (std::size_t i = 2; i + 2 < n; ++i) triples.push_back({p[0], p[1], p[i + 1]});
  same_turn(triples);
}

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

}  // namespace prover::sketching
