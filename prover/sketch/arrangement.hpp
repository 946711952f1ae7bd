// What kind of figure a sketch is: its arrangement (on which side of which line each point is, and in which order
// points stand on a line), which of its distances are equal, how clear it is to the eye, and how far it is from
// another. Equal distances tell apart what is otherwise arranged alike: the two triangles with the same two sides
// and angle, a parallelogram and the other quadrilaterals with its properties.
#pragma once
#include <string>
#include <vector>

#include "prover/sketch/plane.hpp"

namespace prover::sketching {

// The sine of the smallest angle of the triangle a b c, with the sign of its turn: how far from collinear, whichever
// of the points are close together.
double clearance(Vector a, Vector b, Vector c);

inline constexpr double collinear_below = 1e-7;  // clearance

// Puts a figure in its normal place: mirrored so that its first triple that is not collinear turns left, points 0
// and 1 level, the middle of its box at the origin; scaled to a diameter of `diameter` unless that is 0. Sides of
// lines can then be compared from sketch to sketch.
void normalise(std::vector<double>& x, std::size_t points, double diameter);

struct Arrangement {
  std::string signs;        // a letter a triple: l, r, or which of the three is the middle one
  std::string obtuse;       // a letter a triple: which of the three has the angle above 90 degrees, if any
  std::string equals;       // which distances happen to be equal
  int collinear = 0;        // triples on a line
  double clear = 0;         // the smallest clearance of the others, or distance by diameter if that is smaller
  double nearest = 0;       // the smallest distance of two points, by diameter
};
Arrangement arrangement_of(const std::vector<double>& x, std::size_t points);

// The largest difference of coordinates and numbers, by the size of the figure.
double difference(const std::vector<double>& x, const std::vector<double>& y, std::size_t points);

}  // namespace prover::sketching
