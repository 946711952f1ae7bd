// The figure as a graph: points and lines as vertices, "stands on" as edges; and, where coordinates are at hand, the
// plane graph of the drawn segments with the rays round every point in order, whose faces are the polygons that a
// reader sees. Boost.Graph stays behind this header.
#pragma once
#include <memory>
#include <vector>

#include "prover/figure/arrangement.hpp"

namespace prover {

class FigureGraph {
 public:
  explicit FigureGraph(const Arrangement& arrangement);
  ~FigureGraph();
  FigureGraph(FigureGraph&&) noexcept;

  // Points that some chain of lines connects; a figure in several parts has several groups.
  std::vector<std::vector<PointId>> connected_points() const;

  // The neighbours of every point along drawn lines, in order round it (counterclockwise) in the given figure.
  std::vector<std::vector<PointId>> neighbours_in_order(const Coordinates& view) const;
  // The bounded faces of the plane graph of drawn segments, corners in order, straight corners left out. Empty
  // when two segments cross at a point without a name: the graph is then not plane.
  std::vector<std::vector<PointId>> faces(const Coordinates& view) const;

 private:
  struct Graph;
  std::unique_ptr<Graph> graph_;
  const Arrangement& arrangement_;
};

}  // namespace prover
