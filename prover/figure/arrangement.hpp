// The lines of a figure and what is known of positions: which points stand on one line and in which order, on
// which side of a line a point lies. Text comes first: what sentences say, closed under four simple laws
// (below). Where the text is silent, drawn figures are asked, and answer only when all of them agree.
//
// Laws used to close the text (each is elementary plane order geometry):
//   1. a line with ordered points is one line: the side of a point is the same whichever two name it
//   2. the orientation of a triple is unchanged by cyclic shifts, and changes under a swap
//   3. along a line the side with respect to another line changes at most once
//   4. order on a line: from a-b-c and b-c-d follow a-b-d and a-c-d, and so on
// Signs of triples form classes in a union-find with parity, so "same side" is a comparison of two roots.
//
// Matching asks about positions more often than anything else. Lines and rays of pairs of points stand in tables
// (quadratic in the points), and what is known of a triple is kept once it was asked for. So an arrangement is for
// one thread, also where it is const.
#pragma once
#include <array>
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "prover/figure/position.hpp"

namespace prover {

using Coordinates = std::vector<std::array<double, 2>>;  // by PointId

// What the sentences say of lines and positions, collected by the statement room.
struct FigureText {
  std::size_t points = 0;
  std::vector<std::vector<PointId>> collinear;        // points that stand on one line
  std::vector<std::pair<PointId, PointId>> drawn;     // pairs that some sentence names as a segment, line or arm
  std::vector<Position> positions;
  std::vector<std::array<PointId, 3>> rays;           // P, A, B: P on ray AB
  std::vector<std::array<PointId, 4>> parallel;       // line ab, line cd
};

class Arrangement {
 public:
  Arrangement(const FigureText& text, std::vector<Coordinates> views);

  // Lines. Two points are on at most one line; pairs that no sentence joins have none.
  std::size_t point_count() const { return points_; }
  std::size_t line_count() const { return lines_.size(); }
  const std::vector<PointId>& points_on(LineId line) const { return lines_[line.index()].points; }
  LineId line(PointId a, PointId b) const {              // not valid when not drawn
    return a.valid() && b.valid() ? line_of_pair_[pair_index(a, b)] : LineId();
  }
  // The two points of a line with the lowest numbers.
  const std::array<PointId, 2>& ends_of(LineId line) const { return lines_[line.index()].ends; }
  bool stands_on(PointId p, LineId l) const {
    const PointId first = lines_[l.index()].points[0];
    return p == first || line(p, first) == l;
  }
  const std::vector<LineId>& lines_through(PointId p) const { return through_[p.index()]; }
  const std::vector<PointId>& joined_to(PointId p) const { return neighbours_[p.index()]; }  // after `freeze`
  PointId common_point(LineId a, LineId b) const;        // not valid when they have no named point in common
  LineId join(PointId a, PointId b);                     // draw a new line; only before `freeze`
  bool is_joined(LineId line) const { return lines_[line.index()].joined; }
  void freeze();                                         // after the last join: rays get their representatives

  // Rays. Every ray from a point along a line is named by one representative point on it.
  PointId ray(PointId vertex, PointId toward) const {
    return representative_.empty() ? toward : representative_[pair_index(vertex, toward)];
  }
  bool opposite_rays(PointId vertex, PointId a, PointId b) const;  // known to be opposite
  const std::vector<PointId>& rays_at(PointId vertex) const { return rays_at_[vertex.index()]; }

  // Positions. `source` says where a fact is known from; unknown when it is false or not known.
  PositionSource source(const Position& position) const;
  bool known(const Position& position) const { return source(position) != PositionSource::unknown; }
  // Where it is known from that the rays from `vertex` through a and b are the same, or opposite.
  PositionSource ray_source(PointId vertex, PointId a, PointId b) const;
  const std::vector<Coordinates>& views() const { return views_; }
  // The sentences about positions exclude each other.
  bool contradictory_text() const { return contradictory_; }

 private:
  struct Line {
    std::vector<PointId> points;
    bool joined = false;
    std::array<PointId, 2> ends;
  };
  struct Node {               // the side of a point with respect to a line
    std::int32_t parent = 0;
    std::int8_t parity = 0;   // relative to the parent
  };
  struct Sign {               // the orientation of a triple: that of a node, perhaps reversed
    std::int32_t node = 0;
    int parity = 0;
  };

  // What is known of a point r and two others p, q, as far as it was asked for.
  struct About {
    std::uint64_t seen = 0;      // how each figure shows the turn p, q, r: two bits, 0 where it does not show it
    std::int32_t side = -1;      // from the text: class of the turn, and its parity; -1 none
    bool off = false;            // from the text: not on one line
    bool text_asked = false, seen_asked = false;
    std::int8_t between = -1;     // r between p and q: a PositionSource, or -1
    std::int8_t not_collinear = -1;
  };
  std::size_t pair_index(PointId a, PointId b) const { return a.index() * points_ + b.index(); }
  About& about(PointId p, PointId q, PointId r) const;
  const About& text_about(PointId p, PointId q, PointId r) const;
  std::uint64_t turns_seen(PointId p, PointId q, PointId r) const;
  PositionSource source_of_side(const Position& position) const;
  PositionSource worked_out(const Position& position) const;

  LineId add_line(std::vector<PointId> points, bool joined);

  // order on lines (order.cpp)
  void close_order(LineId line, const FigureText& text);
  bool text_between(PointId a, PointId b, PointId c) const;
  bool seen_between(PointId a, PointId b, PointId c) const;
  int same_direction(PointId vertex, PointId a, PointId b, bool text_only) const;  // rays: +1 same, -1 opposite
  int direction(LineId line, PointId a, PointId b) const;  // along the line's first two points: +1, -1, 0 open

  // sides (sides.cpp)
  void close_off(const FigureText& text);
  bool text_off(PointId a, PointId b, PointId c) const;
  void close_sides(const FigureText& text);
  std::optional<Sign> sign(PointId a, PointId b, PointId c) const;
  std::pair<std::int32_t, int> root(std::int32_t node) const;
  void unite(Sign a, Sign b, int parity);
  void link_triple(PointId a, PointId b, PointId c);
  int text_side(PointId a, PointId b, PointId c, PointId d) const;  // +1 same, -1 opposite, 0 not known
  bool seen(const Position& position) const;
  int seen_orientation(const Coordinates& view, PointId a, PointId b, PointId c) const;

  std::size_t points_;
  std::vector<Line> lines_;
  std::vector<std::vector<LineId>> through_;
  std::vector<Coordinates> views_;
  std::vector<LineId> line_of_pair_;                       // by two points
  std::unordered_set<std::uint64_t> between_;              // (b; a, c) with a < c, from the text
  std::unordered_map<std::uint64_t, std::int8_t> rays_;    // (vertex; a, b) with a < b: +1 same ray, -1 opposite
  mutable std::vector<Node> nodes_;                        // by line, point
  std::vector<std::vector<bool>> off_;                     // by line, point: known not to be on it
  std::unordered_set<std::uint64_t> off_triple_;           // sorted triples said to be not collinear
  std::vector<PointId> representative_;                    // by vertex and another point; after `freeze`
  mutable std::vector<std::vector<About>> about_;          // by two points, then the third; after `freeze`
  std::vector<std::vector<PointId>> rays_at_;
  std::vector<std::vector<PointId>> neighbours_;           // by point: all points on lines through it, sorted
  bool contradictory_ = false;
};

}  // namespace prover
