// What is known of order and sides, closed under the laws of order in the plane. The orientation of a triple
// of points (left, right) is a bit, the sense of a pair on a line of three or more points is a bit, and:
//   1. y off line l, a b c d on l: orient(y,a,b)·orient(y,c,d) = sense(a,b)·sense(c,d)
//   2. for a b c on a line the senses of ab, bc, ca are not all equal
//   3. Grassmann–Plücker: [xab][xcd] − [xac][xbd] + [xad][xbc] = 0, so its three terms have not all one sign
//   4. [abc] − [abd] + [acd] − [bcd] = 0 for any four points of the plane: not all one sign
// 1 is linear over the field of two elements (parity.hpp). The others add equations when all terms but one
// are known to agree; 3 and 4 are tried only when a question stays open, since they look at every five
// points. All of it speaks only of triples that are known not to be on a line; that is settled first:
//   a triangle, a polygon's corners, points beside a line by a side fact, points of two parallels, an angle
//   of a given; if c is off line ab, it is off it whichever two points of the line name it; and by laws 3 and
//   4, a triple whose orientation is the only open one and is needed to bring a sum to 0.
#pragma once
#include <array>
#include <span>
#include <vector>

#include "prover/check/lines.hpp"
#include "prover/check/parity.hpp"
#include "prover/figure/position.hpp"

namespace prover::replay {

// What a phrase says of lines and positions.
struct Placement {
  std::vector<Points> lines;  // each on one line
  std::vector<Position> positions;
  std::vector<std::array<PointId, 3>> rays;      // from the first, through the second and the third
  std::vector<std::array<PointId, 4>> parallel;  // lines ab and cd never meet
  std::vector<std::array<PointId, 4>> two_lines; // ab and cd are lines that cross: not one line
  bool readable = true;                          // false: says more about position than we can check
};

enum class Rays { unknown, same, opposite };

class Positions {
 public:
  explicit Positions(std::size_t points) : lines_(points) {}

  void assume(const Placement& placement);
  void assume(const Position& position);
  bool follows(const Position& position);
  bool follows(const Placement& placement);  // all but `parallel` and `two_lines`, which are no positions
  Rays rays(PointId vertex, PointId a, PointId b);
  const Lines& lines() const { return lines_; }
  std::size_t version() const { return version_; }  // changes with the answers

 private:
  using Triple = std::array<PointId, 3>;

  SignSum orientation(PointId a, PointId b, PointId c) const;
  SignSum sense(PointId a, PointId b) const;
  bool proper(PointId a, PointId b, PointId c) const;  // known not to be on one line
  std::size_t triple(PointId a, PointId b, PointId c) const;
  bool known_now(const Position& position) const;

  void build();
  void close_proper();
  void link_lines();
  void close_lines();
  bool not_all_equal(std::span<const SignSum> terms);  // whether something was learnt
  bool order_lines();
  struct Product {
    std::array<Triple, 2> factors;
    bool two = true;  // else the first factor only
    bool negative = false;
  };
  bool add_up_to_zero(std::span<const Product> products);
  bool five_points();
  bool four_points();
  void search_deeper();

  Lines lines_;
  std::vector<Position> positions_;
  std::vector<std::array<PointId, 3>> same_rays_;
  std::vector<std::array<PointId, 4>> parallel_;
  std::vector<std::array<PointId, 4>> two_lines_;
  std::vector<bool> proper_;      // by triple
  std::vector<Triple> off_line_;  // found to be proper, not yet in proper_
  Parity parity_{0};
  bool built_ = false, deep_ = false;
  std::size_t version_ = 0;
};

}  // namespace prover::replay
