#include "prover/figure/figure_graph.hpp"

#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/connected_components.hpp>
#include <boost/graph/planar_face_traversal.hpp>
#include <cmath>
#include <map>
#include <set>

namespace prover {

namespace {

using PlaneGraph = boost::adjacency_list<boost::vecS, boost::vecS, boost::undirectedS, boost::no_property,
                                         boost::property<boost::edge_index_t, int>>;
using Edge = boost::graph_traits<PlaneGraph>::edge_descriptor;

double direction(const Coordinates& view, PointId from, PointId to) {
  return std::atan2(view[to.index()][1] - view[from.index()][1], view[to.index()][0] - view[from.index()][0]);
}

// The points of a line in the order in which a figure shows them.
std::vector<PointId> along(const std::vector<PointId>& points, const Coordinates& view) {
  std::vector<PointId> order = points;
  const auto& o = view[points[0].index()];
  const auto& e = view[points[1].index()];
  auto place = [&](PointId p) {
    return (view[p.index()][0] - o[0]) * (e[0] - o[0]) + (view[p.index()][1] - o[1]) * (e[1] - o[1]);
  };
  std::sort(order.begin(), order.end(), [&](PointId p, PointId q) { return place(p) < place(q); });
  return order;
}

using SegmentEnds = std::pair<PointId, PointId>;

std::vector<SegmentEnds> segments(const Arrangement& arrangement, const Coordinates& view) {
  std::vector<SegmentEnds> all;
  for (std::size_t l = 0; l < arrangement.line_count(); ++l) {
    const auto order = along(arrangement.points_on(LineId(static_cast<std::int64_t>(l))), view);
    for (std::size_t i = 0; i + 1 < order.size(); ++i) all.emplace_back(order[i], order[i + 1]);
  }
  return all;
}

double side(const Coordinates& v, PointId a, PointId b, PointId c) {
  const auto &p = v[a.index()], &q = v[b.index()], &r = v[c.index()];
  return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
}

bool cross(const Coordinates& v, const SegmentEnds& s, const SegmentEnds& t) {
  if (s.first == t.first || s.first == t.second || s.second == t.first || s.second == t.second) return false;
  return side(v, s.first, s.second, t.first) * side(v, s.first, s.second, t.second) < 0 &&
         side(v, t.first, t.second, s.first) * side(v, t.first, t.second, s.second) < 0;
}

struct FaceCollector : boost::planar_face_traversal_visitor {
  std::vector<std::vector<PointId>>* faces;
  std::vector<PointId> current;
  void begin_face() { current.clear(); }
  void end_face() { faces->push_back(current); }
  template <class Vertex>
  void next_vertex(Vertex v) {
    current.emplace_back(static_cast<std::int64_t>(v));
  }
};

}  // namespace

struct FigureGraph::Graph {
  // Vertices 0 … points − 1 are the points, the rest the lines.
  boost::adjacency_list<boost::vecS, boost::vecS, boost::undirectedS> incidence;
};

FigureGraph::FigureGraph(const Arrangement& arrangement)
    : graph_(std::make_unique<Graph>()), arrangement_(arrangement) {
  const std::size_t points = arrangement.point_count();
  graph_->incidence = decltype(graph_->incidence)(points + arrangement.line_count());
  for (std::size_t l = 0; l < arrangement.line_count(); ++l)
    for (PointId p : arrangement.points_on(LineId(static_cast<std::int64_t>(l))))
      boost::add_edge(p.index(), points + l, graph_->incidence);
}

FigureGraph::~FigureGraph() = default;
FigureGraph::FigureGraph(FigureGraph&&) noexcept = default;

std::vector<std::vector<PointId>> FigureGraph::connected_points() const {
  std::vector<int> component(boost::num_vertices(graph_->incidence));
  boost::connected_components(graph_->incidence, component.data());
  std::map<int, std::vector<PointId>> groups;
  for (std::size_t p = 0; p < arrangement_.point_count(); ++p)
    groups[component[p]].emplace_back(static_cast<std::int64_t>(p));
  std::vector<std::vector<PointId>> all;
  for (auto& [c, group] : groups) all.push_back(std::move(group));
  return all;
}

std::vector<std::vector<PointId>> FigureGraph::neighbours_in_order(const Coordinates& view) const {
  std::vector<std::vector<PointId>> round(arrangement_.point_count());
  for (const auto& [a, b] : segments(arrangement_, view)) {
    round[a.index()].push_back(b);
    round[b.index()].push_back(a);
  }
  for (std::size_t p = 0; p < round.size(); ++p)
    std::sort(round[p].begin(), round[p].end(), [&](PointId q, PointId r) {
      const PointId centre(static_cast<std::int64_t>(p));
      return direction(view, centre, q) < direction(view, centre, r);
    });
  return round;
}

std::vector<std::vector<PointId>> FigureGraph::faces(const Coordinates& view) const {
  const auto edges = segments(arrangement_, view);
  for (std::size_t i = 0; i < edges.size(); ++i)
    for (std::size_t j = i + 1; j < edges.size(); ++j)
      if (cross(view, edges[i], edges[j])) return {};
  PlaneGraph graph(arrangement_.point_count());
  std::map<SegmentEnds, Edge> edge_of;
  int index = 0;
  for (const auto& [a, b] : edges) {
    const Edge e = boost::add_edge(a.index(), b.index(), index++, graph).first;
    edge_of[{a, b}] = edge_of[{b, a}] = e;
  }
  const auto round = neighbours_in_order(view);
  std::vector<std::vector<Edge>> embedding(round.size());
  for (std::size_t p = 0; p < round.size(); ++p)
    for (PointId q : round[p]) embedding[p].push_back(edge_of[{PointId(static_cast<std::int64_t>(p)), q}]);
  std::vector<std::vector<PointId>> faces;
  FaceCollector collector;
  collector.faces = &faces;
  boost::planar_face_traversal(graph, &embedding[0], collector);
  std::vector<std::vector<PointId>> bounded;
  for (auto& face : faces) {
    if (std::set<PointId>(face.begin(), face.end()).size() != face.size()) continue;  // a bridge on the way
    std::vector<PointId> corners;
    for (std::size_t i = 0; i < face.size(); ++i) {
      const PointId a = face[(i + face.size() - 1) % face.size()], b = face[i], c = face[(i + 1) % face.size()];
      if (arrangement_.line(a, b) != arrangement_.line(b, c)) corners.push_back(b);
    }
    if (corners.size() < 3) continue;
    double area = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const auto &p = view[corners[i].index()], &q = view[corners[(i + 1) % corners.size()].index()];
      area += p[0] * q[1] - p[1] * q[0];
    }
    // The traversal turns clockwise round bounded faces when edges are given counterclockwise; the outer face
    // turns the other way and has the largest area.
    bounded.push_back(std::move(corners));
    if (area == 0) bounded.pop_back();
  }
  if (bounded.size() > 1) {
    auto size = [&](const std::vector<PointId>& f) {
      double area = 0;
      for (std::size_t i = 0; i < f.size(); ++i) {
        const auto &p = view[f[i].index()], &q = view[f[(i + 1) % f.size()].index()];
        area += p[0] * q[1] - p[1] * q[0];
      }
      return std::abs(area);
    };
    bounded.erase(std::max_element(bounded.begin(), bounded.end(),
                                   [&](const auto& f, const auto& g) { return size(f) < size(g); }));
  }
  return bounded;
}

}  // namespace prover
