// How well shaped a figure is: no needle triangles, no points on top of each other. A figure that is handed out is
// looked at, and two laths that are nearly one line, or two knots that are nearly one, cannot be read.
#pragma once
#include <Eigen/Core>
#include <vector>

#include "prover/sketch/sketch.hpp"

namespace prover::motion {

// The smallest sine of an angle of a triangle of three points that are not on one line, or the smallest distance of two
// points by the diameter of the figure, whichever is smaller: 0 is degenerate, 0.1 can be read.
double clearness(const Sketch& figure);

// The same as a barrier for motions: 0 for figures clearer than `comfort`, falling to minus infinity towards degenerate
// ones. Smooth, so that it can be weighed against what a motion is after.
class Barrier {
 public:
  // `x`: the variables of a figure; triples that are on one line in it are left out.
  Barrier(const std::vector<double>& x, std::size_t points);
  double value(const std::vector<double>& x, Eigen::VectorXd* gradient = nullptr) const;

 private:
  struct Triple {
    int a, b, c;
    double sign;
  };
  std::size_t points_;
  double comfort_;    // the clearance that is enough
  double distance_;   // the distance of two points that is enough, in variables
  std::vector<Triple> triples_;
};

}  // namespace prover::motion
