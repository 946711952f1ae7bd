#include "prover/proof/proof_graph.hpp"

#include <algorithm>
#include <boost/graph/breadth_first_search.hpp>
#include <boost/graph/compressed_sparse_row_graph.hpp>
#include <utility>

namespace prover {

namespace {
// Rows of numbers: a graph of a hundred thousand instances is made at once and never changed.
using Adjacency = boost::compressed_sparse_row_graph<boost::directedS>;
}

struct ProofGraph::Graph {
  // Vertices 0 … instances − 1 are the instances, the rest the unknowns. Edges run backwards: from an unknown to the
  // instances that conclude something about it, from an instance to all unknowns it needs or gives.
  Adjacency backwards;
  std::size_t instances = 0, unknowns = 0;
};

ProofGraph::ProofGraph(const std::vector<Instance>& instances) : graph_(std::make_unique<Graph>()) {
  graph_->instances = instances.size();
  auto each_unknown = [](const Instance& instance, auto&& act) {
    for (const Form& f : instance.conclusions)
      for (const auto& [u, c] : f.terms) act(u, true);
    for (const Form& f : instance.premises)
      for (const auto& [u, c] : f.terms) act(u, false);
  };
  for (const Instance& i : instances)
    each_unknown(i, [&](UnknownId u, bool) { graph_->unknowns = std::max(graph_->unknowns, u.index() + 1); });
  std::vector<std::pair<std::size_t, std::size_t>> edges;
  for (std::size_t i = 0; i < instances.size(); ++i)
    each_unknown(instances[i], [&](UnknownId u, bool concluded) {
      edges.emplace_back(i, graph_->instances + u.index());
      if (concluded) edges.emplace_back(graph_->instances + u.index(), i);
    });
  graph_->backwards = Adjacency(boost::edges_are_unsorted_multi_pass, edges.begin(), edges.end(),
                                graph_->instances + graph_->unknowns);
}

ProofGraph::~ProofGraph() = default;

std::vector<int> ProofGraph::relevant_to(const std::vector<Form>& goal) const {
  std::vector<boost::default_color_type> colour(boost::num_vertices(graph_->backwards), boost::white_color);
  auto colour_map = boost::make_iterator_property_map(colour.begin(), boost::get(boost::vertex_index, graph_->backwards));
  boost::queue<std::size_t> queue;
  for (const Form& f : goal)
    for (const auto& [u, c] : f.terms)
      if (u.index() < graph_->unknowns && colour[graph_->instances + u.index()] == boost::white_color)
        boost::breadth_first_visit(graph_->backwards, graph_->instances + u.index(), queue,
                                   boost::default_bfs_visitor(), colour_map);
  std::vector<int> relevant;
  for (std::size_t i = 0; i < graph_->instances; ++i)
    if (goal.empty() || colour[i] != boost::white_color) relevant.push_back(static_cast<int>(i));
  return relevant;
}

}  // namespace prover
