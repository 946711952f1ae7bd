// Starts: scattered points that the placer puts in place, and changed copies of figures.
#include "prover/sketch/starts.hpp"

#include <algorithm>
#include <cmath>

#include "prover/sketch/placer.hpp"

namespace prover::sketching {
namespace {

// Off the exact figure, where the search would otherwise balance between two sides.
void jostle(std::vector<double>& x, std::size_t points, Random& random) {
  for (std::size_t k = 0; k < 2 * points; ++k) x[k] += random.between(-0.03, 0.03);
}

}  // namespace

std::vector<double> random_start(const std::vector<Phrase>& givens, const Layout& layout, Random& random, int rounds,
                                 bool sizes) {
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
  for (int round = 0; round < rounds; ++round)
    for (const Phrase& phrase : givens)
      if (sizes || phrase.predicate != Predicate::relation) placer.place(phrase);
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

}  // namespace prover::sketching
