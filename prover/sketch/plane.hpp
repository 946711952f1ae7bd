// Vectors of the plane, and an arctangent of our own. The C library's atan2 is free to round the last bit as the
// processor likes, and one bit at the start of an iteration can end in another figure; with nothing but the four
// operations and the square root, which IEEE 754 fixes to the bit, the same seed gives the same sketch everywhere.
#pragma once
#include <cmath>

namespace prover::sketching {

inline constexpr double pi = 3.14159265358979323846;
inline constexpr double degree = pi / 180;

struct Vector {
  double x = 0, y = 0;
  friend Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y}; }
  friend Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y}; }
  friend Vector operator*(double s, Vector a) { return {s * a.x, s * a.y}; }
};
inline double dot(Vector a, Vector b) { return a.x * b.x + a.y * b.y; }
inline double cross(Vector a, Vector b) { return a.x * b.y - a.y * b.x; }
inline double norm(Vector a) { return std::sqrt(dot(a, a)); }
inline Vector left_of(Vector a) { return {-a.y, a.x}; }  // turned by a right angle
// As complex numbers: lengths multiply, directions add.
inline Vector product(Vector a, Vector b) { return {a.x * b.x - a.y * b.y, a.x * b.y + a.y * b.x}; }
inline Vector conjugate(Vector a) { return {a.x, -a.y}; }
inline Vector mirror(Vector p, Vector a, Vector b) {  // p mirrored in the line ab
  const Vector u = b - a;
  const double length = dot(u, u);
  if (length <= 0) return p;
  const Vector foot = a + (dot(p - a, u) / length) * u;
  return 2 * foot - p;
}

// The arctangent of t, for -1 <= t <= 1: a half-angle step, then the power series (its tail is below 1e-18).
inline double arctangent(double t) {
  double shift = 0;
  if (t > 0.41421356237309503) {
    t = (t - 1) / (t + 1);
    shift = pi / 4;
  } else if (t < -0.41421356237309503) {
    t = (t + 1) / (1 - t);
    shift = -pi / 4;
  }
  t = t / (1 + std::sqrt(1 + t * t));
  const double z = t * t;
  double sum = 0;
  for (int k = 25; k >= 1; k -= 2) sum = 1.0 / k - z * sum;
  return shift + 2 * t * sum;
}

// The direction of a vector, in (-pi, pi]; 0 for the zero vector.
inline double direction(Vector v) {
  const double width = std::fabs(v.x), height = std::fabs(v.y);
  if (width == 0 && height == 0) return 0;
  double angle = height <= width ? arctangent(height / width) : pi / 2 - arctangent(width / height);
  if (v.x < 0) angle = pi - angle;
  return v.y < 0 ? -angle : angle;
}

// The unit vector in a direction, |angle| <= 2 pi; by power series, for the same reason.
inline Vector unit(double angle) {
  const double part = angle / 64;
  const double z = part * part;
  Vector v{1 - z / 2 * (1 - z / 12 * (1 - z / 30 * (1 - z / 56))),
           part * (1 - z / 6 * (1 - z / 20 * (1 - z / 42 * (1 - z / 72))))};
  for (int k = 0; k < 6; ++k) v = product(v, v);
  return (1 / norm(v)) * v;
}

}  // namespace prover::sketching
