#include "benchmarks/search/families.hpp"

namespace prover {

// A zigzag P0, P1, …, PN, every second point on one of two parallels; each P(i) P(i+1) P(i+2) is isosceles. At P(i)
// three angles lie between the parallel and the strokes: before, middle, after. The outermost strokes, into P0 and
// out of PN, end nowhere.
void draw_fan(EquationBook& book, int strokes) {
  const UnknownId below = book.line(0), above = book.line(0);
  book.parallel(below, above);
  std::vector<UnknownId> stroke_lines;
  for (int i = -1; i <= strokes; ++i) stroke_lines.push_back(book.line(i % 2 == 0 ? 55 : 125));
  std::vector<UnknownId> before, middle, after;
  for (std::size_t i = 0; i <= static_cast<std::size_t>(strokes); ++i) {
    const Form in = Form::of(stroke_lines[i]), out = Form::of(stroke_lines[i + 1]);
    const bool is_below = i % 2 == 0;
    const Form parallel = Form::of(is_below ? below : above);
    const Form half_turn = Form::number(180);
    const auto minus = [](Form a, const Form& b) { return a.add(b, -1); };
    before.push_back(book.angle(55, is_below ? minus(parallel, in).add(half_turn) : minus(in, parallel)));
    middle.push_back(book.angle(70, is_below ? minus(in, out) : minus(out, in)));
    after.push_back(book.angle(55, is_below ? minus(out, parallel) : minus(parallel, out).add(half_turn)));
  }
  const auto size = static_cast<std::size_t>(strokes);
  for (std::size_t i = 0; i <= size; ++i)
    book.equation(Reason::straight_angle, {{1, before[i]}, {1, middle[i]}, {1, after[i]}}, 180);
  for (std::size_t i = 0; i < size; ++i) book.equation(Reason::alternate, {{1, after[i]}, {-1, before[i + 1]}}, 0);
  for (std::size_t i = 0; i + 2 <= size; ++i) {
    book.equation(Reason::triangle_sum, {{1, after[i]}, {1, middle[i + 1]}, {1, before[i + 2]}}, 180);
    book.equation(Reason::isosceles, {{1, after[i]}, {-1, before[i + 2]}}, 0);
    book.equation(Reason::exterior_angle,
                  {{1, middle[i + 2]}, {1, after[i + 2]}, {-1, after[i]}, {-1, middle[i + 1]}}, 0);
  }
  book.goal({{1, before[0]}, {1, middle[0]}, {1, before[size]}}, 180);
}

// Triangle i lies between lines i, i + 1 and i + 2; its base angles are equal, and its apex is a base angle of the next.
// So the apex is 180° less twice the one before, and the goal's multipliers double at each step. Only equilateral
// triangles keep all sizes between 0° and 180°, which the equations do not say.
void draw_doubling_fan(EquationBook& book, int triangles) {
  const auto size = static_cast<std::size_t>(triangles);
  std::vector<UnknownId> lines, base, other_base;
  for (std::size_t i = 0; i < size + 3; ++i) lines.push_back(book.line(60.0 * static_cast<double>(i)));
  for (std::size_t i = 0; i <= size; ++i) {
    base.push_back(book.angle(60, Form::of(lines[i + 1]).add(Form::of(lines[i]), -1)));
    other_base.push_back(book.angle(60, Form::number(180).add(Form::of(lines[i])).add(Form::of(lines[i + 2]), -1)));
  }
  for (std::size_t i = 0; i <= size; ++i) book.equation(Reason::isosceles, {{1, base[i]}, {-1, other_base[i]}}, 0);
  for (std::size_t i = 0; i < size; ++i)
    book.equation(Reason::triangle_sum, {{1, base[i]}, {1, other_base[i]}, {1, base[i + 1]}}, 180);
  int constant = 0, multiplier = 1;
  for (std::size_t i = 0; i < size; ++i) {
    constant = 180 - 2 * constant;
    multiplier *= -2;
  }
  book.goal({{1, base[size]}, {-multiplier, base[0]}}, constant);
}

}  // namespace prover
