#include "benchmarks/search/drawn_lines.hpp"

#include <cmath>
#include <numbers>

namespace prover {

DrawnLines::DrawnLines(EquationBook& book, std::vector<Line> lines) : book_(book), lines_(std::move(lines)) {
  std::vector<UnknownId> directions;
  for (int i = 0; i < count(); ++i) {
    directions.push_back(book_.line(at(i).degrees));
    for (int k = 0; k < i; ++k)
      if (parallel(i, k)) {
        book_.parallel(directions[static_cast<std::size_t>(k)], directions.back());
        break;
      }
  }
  first_angle_.resize(lines_.size(), std::vector<UnknownId>(lines_.size()));
  for (int i = 0; i < count(); ++i)
    for (int j = i + 1; j < count(); ++j) {
      if (parallel(i, j)) continue;
      const bool turned = at(i).degrees > at(j).degrees;
      const double size = std::abs(at(i).degrees - at(j).degrees);
      const Form steeper = Form::of(directions[static_cast<std::size_t>(turned ? i : j)]);
      const Form between = Form(steeper).add(Form::of(directions[static_cast<std::size_t>(turned ? j : i)]), -1);
      const Form beside = Form::number(180).add(between, -1);
      first_angle_[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)] = book_.angle(size, between);  // + +
      book_.angle(180 - size, beside);                                                                    // + −
      book_.angle(180 - size, beside);                                                                    // − +
      book_.angle(size, between);                                                                         // − −
    }
}

UnknownId DrawnLines::angle(int line, int other, int sense, int other_sense) const {
  if (line > other) {
    std::swap(line, other);
    std::swap(sense, other_sense);
  }
  const UnknownId first = first_angle_[static_cast<std::size_t>(line)][static_cast<std::size_t>(other)];
  return UnknownId(first.value + (sense < 0 ? 2 : 0) + (other_sense < 0 ? 1 : 0));
}

DrawnLines::Place DrawnLines::along(int line) const {
  const double radians = at(line).degrees * std::numbers::pi / 180;
  return {std::cos(radians), std::sin(radians)};
}

DrawnLines::Place DrawnLines::crossing(int a, int b) const {
  if (a > b) std::swap(a, b);  // the same bits from either side
  const Place u = along(a), v = along(b);
  const double dx = at(b).x - at(a).x, dy = at(b).y - at(a).y;
  const double t = (dx * v[1] - dy * v[0]) / (u[0] * v[1] - u[1] * v[0]);
  return {at(a).x + t * u[0], at(a).y + t * u[1]};
}

int DrawnLines::sense(int line, int from, int to) const {
  const Place p = crossing(line, from), q = crossing(line, to), u = along(line);
  return (q[0] - p[0]) * u[0] + (q[1] - p[1]) * u[1] > 0 ? 1 : -1;
}

UnknownId DrawnLines::corner(int a, int b, int c, int which) const {
  return angle(a, b, which * sense(a, b, c), which * sense(b, a, c));
}

void DrawnLines::write_crossings() {
  for (int i = 0; i < count(); ++i)
    for (int j = i + 1; j < count(); ++j) {
      if (parallel(i, j)) continue;
      const auto at_senses = [&](int a, int b) { return angle(i, j, a, b); };
      book_.equation(Reason::vertical, {{1, at_senses(1, 1)}, {-1, at_senses(-1, -1)}}, 0);
      book_.equation(Reason::vertical, {{1, at_senses(1, -1)}, {-1, at_senses(-1, 1)}}, 0);
      for (const int s : {1, -1}) {
        book_.equation(Reason::linear_pair, {{1, at_senses(s, 1)}, {1, at_senses(s, -1)}}, 180);
        book_.equation(Reason::linear_pair, {{1, at_senses(1, s)}, {1, at_senses(-1, s)}}, 180);
      }
    }
}

void DrawnLines::write_parallels(Pairs which) {
  for (int i = 0; i < count(); ++i)
    for (int k = i + 1; k < count(); ++k) {
      if (!parallel(i, k) || (which == Pairs::neighbours && k != i + 1)) continue;
      for (int t = 0; t < count(); ++t) {
        if (parallel(t, i)) continue;
        const int inner = sense(t, i, k);  // along the transversal, from one parallel to the other
        for (const int s : {1, -1}) {
          for (const int r : {1, -1})
            book_.equation(Reason::corresponding, {{1, angle(i, t, s, r)}, {-1, angle(k, t, s, r)}}, 0);
          book_.equation(Reason::alternate, {{1, angle(i, t, s, inner)}, {-1, angle(k, t, -s, -inner)}}, 0);
          book_.equation(Reason::cointerior, {{1, angle(i, t, s, inner)}, {1, angle(k, t, s, -inner)}}, 180);
        }
      }
    }
}

void DrawnLines::write_triangles() {
  for (int i = 0; i < count(); ++i)
    for (int j = i + 1; j < count(); ++j)
      for (int k = j + 1; k < count(); ++k) {
        if (parallel(i, j) || parallel(j, k) || parallel(i, k)) continue;
        const std::array<std::array<int, 3>, 3> corners = {{{i, j, k}, {j, k, i}, {k, i, j}}};
        EquationBook::Terms sum;
        for (const auto& [a, b, c] : corners) sum.emplace_back(1, corner(a, b, c));
        book_.equation(Reason::triangle_sum, sum, 180);
        for (std::size_t which = 0; which < 3; ++which) {
          const auto& [a, b, c] = corners[which];
          const UnknownId far = sum[(which + 1) % 3].second, farther = sum[(which + 2) % 3].second;
          const int along_a = sense(a, b, c), along_b = sense(b, a, c);
          for (const UnknownId outer : {angle(a, b, -along_a, along_b), angle(a, b, along_a, -along_b)})
            book_.equation(Reason::exterior_angle, {{1, outer}, {-1, far}, {-1, farther}}, 0);
        }
      }
}

}  // namespace prover
