// Order types: Goodman and Pollack, "Multidimensional sorting", 1983.
#include "prover/sketch/arrangement.hpp"

#include <algorithm>
#include <cmath>

namespace prover::sketching {
namespace {

Vector at(const std::vector<double>& x, std::size_t p) { return {x[2 * p], x[2 * p + 1]}; }

double diameter_of(const std::vector<double>& x, std::size_t points) {
  double square = 0;
  for (std::size_t p = 0; p < points; ++p)
    for (std::size_t q = p + 1; q < points; ++q) {
      const Vector v = at(x, q) - at(x, p);
      square = std::max(square, dot(v, v));
    }
  return std::sqrt(square);
}

// A letter pair for each two neighbours among the sorted distances that are equal.
std::string equal_distances(const std::vector<double>& x, std::size_t points) {
  struct Distance {
    double square;
    std::size_t pair;
  };
  std::vector<Distance> all;
  for (std::size_t p = 0; p < points; ++p)
    for (std::size_t q = p + 1; q < points; ++q) {
      const Vector v = at(x, q) - at(x, p);
      all.push_back({dot(v, v), p * points + q});
    }
  std::sort(all.begin(), all.end(), [](const Distance& a, const Distance& b) { return a.square < b.square; });
  std::string result;
  for (std::size_t i = 0; i < all.size();) {
    std::size_t end = i + 1;
    while (end < all.size() && all[end].square - all[end - 1].square < 1e-8 * all[end].square) ++end;
    if (end - i > 1) {
      std::vector<std::size_t> group;
      for (std::size_t k = i; k < end; ++k) group.push_back(all[k].pair);
      std::sort(group.begin(), group.end());
      result += std::to_string(group.front());
      for (std::size_t k = 1; k < group.size(); ++k) (result += '=') += std::to_string(group[k]);
      result += ' ';
    }
    i = end;
  }
  return result;
}

// The sign of the first triple that is not on a line.
double first_turn(const std::vector<double>& x, std::size_t points) {
  for (std::size_t a = 0; a < points; ++a)
    for (std::size_t b = a + 1; b < points; ++b)
      for (std::size_t c = b + 1; c < points; ++c) {
        const double turn = clearance(at(x, a), at(x, b), at(x, c));
        if (std::fabs(turn) > collinear_below) return turn;
      }
  return 1;
}

}  // namespace

double clearance(Vector a, Vector b, Vector c) {
  const Vector u = b - a, v = c - b, w = a - c;
  const double uu = dot(u, u), vv = dot(v, v), ww = dot(w, w);
  const double shortest = std::min({uu, vv, ww});
  // The two longest sides meet opposite the shortest.
  const double product = shortest == uu ? vv * ww : shortest == vv ? uu * ww : uu * vv;
  return product > 0 ? cross(u, c - a) / std::sqrt(product) : 0;
}

void normalise(std::vector<double>& x, std::size_t points, double diameter) {
  if (points == 0) return;
  if (first_turn(x, points) < 0)
    for (std::size_t p = 0; p < points; ++p) x[2 * p + 1] = -x[2 * p + 1];
  const double size = diameter_of(x, points);
  if (size <= 0) return;
  const Vector base = points > 1 ? at(x, 1) - at(x, 0) : Vector{1, 0};
  const double length = norm(base);
  const Vector level = length > 0 ? (1 / length) * conjugate(base) : Vector{1, 0};
  const double scale = diameter > 0 ? diameter / size : 1;
  Vector low{1e300, 1e300}, high{-1e300, -1e300};
  std::vector<Vector> placed(points);
  for (std::size_t p = 0; p < points; ++p) {
    placed[p] = scale * product(at(x, p) - at(x, 0), level);
    low = {std::min(low.x, placed[p].x), std::min(low.y, placed[p].y)};
    high = {std::max(high.x, placed[p].x), std::max(high.y, placed[p].y)};
  }
  const Vector middle = 0.5 * (low + high);
  for (std::size_t p = 0; p < points; ++p) {
    x[2 * p] = placed[p].x - middle.x;
    x[2 * p + 1] = placed[p].y - middle.y;
  }
}

Arrangement arrangement_of(const std::vector<double>& x, std::size_t points) {
  Arrangement result;
  const double size = std::max(diameter_of(x, points), 1e-12);
  result.clear = 1;
  double nearest = 1;
  for (std::size_t a = 0; a < points; ++a)
    for (std::size_t b = a + 1; b < points; ++b) {
      nearest = std::min(nearest, norm(at(x, b) - at(x, a)) / size);
      for (std::size_t c = b + 1; c < points; ++c) {
        const Vector u = at(x, a), v = at(x, b), w = at(x, c);
        const double turn = clearance(u, v, w);
        if (std::fabs(turn) > collinear_below) {
          result.signs += turn > 0 ? 'l' : 'r';
          result.clear = std::min(result.clear, std::fabs(turn));
          result.obtuse += dot(v - u, w - u) < 0   ? '1'
                           : dot(u - v, w - v) < 0 ? '2'
                           : dot(u - w, v - w) < 0 ? '3'
                                                   : '0';
        } else {
          ++result.collinear;
          result.obtuse += '-';
          result.signs += dot(v - u, w - u) < 0 ? '1' : dot(u - v, w - v) < 0 ? '2' : '3';
        }
      }
    }
  result.equals = equal_distances(x, points);
  result.nearest = nearest;
  result.clear = std::min(result.clear, nearest);
  return result;
}

double difference(const std::vector<double>& x, const std::vector<double>& y, std::size_t points) {
  double worst = 0;
  const double size = std::max(diameter_of(x, points), 1e-12);
  for (std::size_t i = 0; i < 2 * points; ++i) worst = std::max(worst, std::fabs(x[i] - y[i]) / size);
  for (std::size_t i = 2 * points; i < x.size(); ++i)
    worst = std::max(worst, std::fabs(x[i] - y[i]) / (1 + std::fabs(x[i])));
  return worst;
}

}  // namespace prover::sketching
