// Circles: points on one, its tangents, its inside. No circle has variables of its own.
#include <algorithm>

#include "prover/sketch/clause_builder.hpp"

namespace prover::sketching {

void Builder::on_one_circle(int centre, const std::vector<int>& p) {
  for (std::size_t i = 1; i < p.size(); ++i) need(equal_lengths(centre, p[0], centre, p[i]));
}

void Builder::on_some_circle(const std::vector<int>& p) {
  if (p.size() < 4) return;
  for (std::size_t i = 3; i < p.size(); ++i) need(concyclic(p[0], p[1], p[2], p[i]));
  triangle(p[0], p[1], p[2]);
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

// A circle known by its centre is as large as the text says elsewhere; without that nothing can be said.
void Builder::against_circle(int p, int centre, double sign) {
  const auto index = static_cast<std::size_t>(centre);
  if (index >= layout_.on_circle.size() || !layout_.on_circle[index].valid()) return impossible();
  need({.form = Form::lengths, .equation = false,
        .terms = {{.coefficient = sign, .a = centre, .b = layout_.on_circle[index].value},
                  {.coefficient = -sign, .a = centre, .b = p}}});
}

}  // namespace prover::sketching
