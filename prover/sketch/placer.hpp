// Puts points roughly where one sentence after the other wants them: projections, each onto one sentence, a few
// rounds of them. Points are numbered in the order in which the text names them, so the point of a sentence with the
// highest number is the one that the sentence brings in, and the one that moves.
#pragma once
#include <algorithm>
#include <vector>

#include "prover/sketch/constraint.hpp"
#include "prover/sketch/plane.hpp"
#include "prover/sketch/random.hpp"

namespace prover::sketching {

class Placer {
 public:
  Placer(std::vector<double>& x, Random& random) : x_(x), random_(random) {}

  void place(const Phrase& phrase);

 private:
  std::vector<double>& x_;
  Random& random_;
  PointId fresh_{0};  // points before this one were named by earlier sentences

  Vector at(PointId p) const { return {x_[2 * p.index()], x_[2 * p.index() + 1]}; }
  void put(PointId p, Vector v) {
    x_[2 * p.index()] = v.x;
    x_[2 * p.index() + 1] = v.y;
  }
  static PointId newest(const std::vector<PointId>& points) { return *std::max_element(points.begin(), points.end()); }

  void on_line(PointId p, PointId a, PointId b) { put(p, 0.5 * (at(p) + mirror(at(p), at(a), at(b)))); }

  void order(const std::vector<PointId>& p);
  void meet(PointId p, PointId a, PointId b, PointId c, PointId d);
  void turn_line(const std::vector<PointId>& p, bool right_angle);
  Vector circumcentre(Vector a, Vector b, Vector c) const;
  void round(const std::vector<PointId>& p, bool circular);
  bool brings_in_all(const std::vector<PointId>& p) const {
    return *std::min_element(p.begin(), p.end()) >= fresh_;
  }
  void sort_round(const std::vector<PointId>& p);
  void regular(const std::vector<PointId>& p);
  void circle(const std::vector<PointId>& p, bool cyclic);
  void concyclic(const std::vector<PointId>& p, bool cyclic);
  void side(PointId a, PointId d, PointId b, PointId c, bool same);
  void inside(PointId p, const std::vector<PointId>& corners);
  void bisector(PointId d, PointId a, PointId b, PointId c);
  void open_to(const Angle& angle, double size);
  void relation(const Relation& relation);
};

}  // namespace prover::sketching
