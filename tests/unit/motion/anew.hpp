// Measuring by arithmetic of the tests' own: coordinates in, degrees and lengths out, with the C library's arctangent. It
// shares nothing with the sketch, so that a mistake there shows here.
#pragma once
#include <array>
#include <cmath>
#include <map>
#include <string>
#include <utility>

namespace anew {

using Place = std::pair<double, double>;
using Points = std::map<std::string, Place>;

inline double length(Place a, Place b) { return std::hypot(b.first - a.first, b.second - a.second); }
inline double degrees(Place a, Place vertex, Place b) {
  const double ux = a.first - vertex.first, uy = a.second - vertex.second;
  const double vx = b.first - vertex.first, vy = b.second - vertex.second;
  return std::atan2(std::fabs(ux * vy - uy * vx), ux * vx + uy * vy) * 180 / std::acos(-1.0);
}
inline double angle(const Points& p, const std::string& letters) {
  return degrees(p.at(letters.substr(0, 1)), p.at(letters.substr(1, 1)), p.at(letters.substr(2, 1)));
}
inline double length(const Points& p, const std::string& letters) {
  return length(p.at(letters.substr(0, 1)), p.at(letters.substr(1, 1)));
}
// On which side of line ab the point c is, by the sine of the angle at a.
inline double side(const Points& p, const std::string& letters) {
  const Place a = p.at(letters.substr(0, 1)), b = p.at(letters.substr(1, 1)), c = p.at(letters.substr(2, 1));
  const double turn = (b.first - a.first) * (c.second - a.second) - (b.second - a.second) * (c.first - a.first);
  return turn / (length(a, b) * length(a, c));
}
inline double parallel(const Points& p, const std::string& letters) {  // degrees between two lines
  const Place a = p.at(letters.substr(0, 1)), b = p.at(letters.substr(1, 1)), c = p.at(letters.substr(2, 1)), d = p.at(letters.substr(3, 1));
  const double ux = b.first - a.first, uy = b.second - a.second, vx = d.first - c.first, vy = d.second - c.second;
  return std::atan2(std::fabs(ux * vy - uy * vx), std::fabs(ux * vx + uy * vy)) * 180 / std::acos(-1.0);
}

}  // namespace anew
