#include "benchmarks/search/families.hpp"
#include "prover/sketch/random.hpp"

namespace prover {

// The transversals are steep enough and far enough apart that their directions differ and no three lines meet.
void draw_grid(EquationBook& book, const GridShape& shape) {
  sketching::Random random(shape.seed);
  std::vector<DrawnLines::Line> lines;
  for (int i = 0; i < shape.parallels; ++i) lines.push_back({0, 10.0 * i, 0});
  const double apart = 120.0 / shape.transversals;
  for (int j = 0; j < shape.transversals; ++j) {
    const double degrees = 30 + apart * (j + 0.5 + random.between(-0.3, 0.3));
    lines.push_back({7.0 * j - 30 + random.between(-2, 2), random.between(-3, 3), degrees});
  }
  const DrawnLines::Pairs pairs = shape.pairs;
  DrawnLines drawn(book, std::move(lines));
  drawn.write_crossings();
  drawn.write_parallels(pairs);
  drawn.write_triangles();

  const int first = shape.parallels, last = shape.parallels + shape.transversals - 1;
  if (shape.chain > 0) {  // ∠(t0, t1) + ∠(t1, t2) + … = ∠(t0, tk), the last told by its vertical angle
    EquationBook::Terms terms;
    for (int j = first; j + 1 < first + shape.chain; ++j) terms.emplace_back(1, drawn.angle(j, j + 1, 1, 1));
    terms.emplace_back(-1, drawn.angle(first, first + shape.chain - 1, -1, -1));
    book.goal(terms, 0);
    return;
  }
  // The angles of the triangle of one parallel and two transversals, each told by its vertical angle, two of them
  // at other parallels.
  const auto moved = [&](int parallel, int transversal, int other) {
    return drawn.angle(parallel, transversal, -drawn.sense(0, transversal, other), -drawn.sense(transversal, 0, other));
  };
  book.goal({{1, moved(shape.parallels - 1, first, last)},
             {1, moved(shape.parallels / 2, last, first)},
             {1, drawn.corner(first, last, 0, -1)}},
            180);
}

}  // namespace prover
