// The law of sines over a whole figure. Lengths are nodes, those in a known ratio the same one; each triangle joins its
// three sides, since they are as the sines of the angles opposite. Going round a cycle gives a condition: a product of
// sines equals a product of sines (round a point this is the trigonometric form of Ceva's theorem). Where a length is
// known to be a sum of others, paths to all of them give a condition with more terms.
#pragma once
#include <array>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/trigonometry/known_angles.hpp"
#include "prover/trigonometry/trig_sum.hpp"
#include "prover/verdict/attempt.hpp"

namespace prover {

struct SineCondition {
  std::vector<SineProduct> terms;               // their sum is 0; angles as closed forms
  std::vector<UnknownId> angles;                // the angles whose sines occur in the triangles used
  std::vector<std::array<PointId, 3>> triangles;
  std::vector<Form> lengths;                    // what is used of lengths, each "= 0"
};

class SineGraph {
 public:
  SineGraph(const Statement& statement, Workings& workings, const KnownAngles& known);

  // The open directions in which angles move: closed forms without constant and without settled angles, each once. A
  // direction is what one condition can settle.
  const std::vector<Form>& directions() const { return directions_; }

  // Conditions in which all angles that are not fixed move in the given direction; those with few sines first.
  std::vector<SineCondition> conditions(std::size_t direction, const Budget& budget) const;

  // What says that a sum of lengths (with coefficients, no constant) is zero; nothing when they are not connected.
  std::optional<SineCondition> condition_for(const Form& lengths) const;

 private:
  static constexpr int kFixed = -1;
  struct Side {
    UnknownId length;
    int node = 0;
    Rational factor;  // length = factor · node
  };
  struct Triangle {
    std::array<PointId, 3> points;
    std::array<UnknownId, 3> angles;  // at each of the points
    std::array<Side, 3> sides;        // opposite each of the points
  };
  struct Edge {                       // to / from = factor · sin over / sin under
    int from = 0, to = 0;
    int over = 0, under = 0;
    Rational factor;
    int triangle = 0, from_corner = 0, to_corner = 0;
  };
  struct Ratio {
    Rational factor = 1;
    std::map<int, int> sines;         // class → exponent, never 0
    void multiply(int sine, int exponent);
    void multiply(const Ratio& other, int sign);
  };
  struct Tree {                       // shortest paths from a root
    std::vector<int> parent_edge;     // -1 at the root and where not reached
    std::vector<bool> reached;
    std::vector<Ratio> value;         // node / root
  };
  using Allowed = std::function<bool(int moves)>;

  bool add_triangle(PointId a, PointId b, PointId c, const Workings& workings);
  Side side(PointId a, PointId b);
  int node_of(const Form& normalised);
  int sine_class(const Form& angle);
  Ratio along(const Edge& edge, bool forwards) const;
  Tree tree(int root, const Allowed& allowed) const;
  void toggle_path(const Tree& tree, int node, std::set<int>& edges) const;
  // Σ factor · ratio = 0 over the edges named; `links`: nodes with the lengths used beside those of the edges.
  SineCondition condition(std::vector<Ratio> terms, const std::set<int>& edges, const std::vector<Side>& links,
                          std::vector<Form> more) const;
  void around(int root, const Allowed& allowed, std::vector<SineCondition>& out) const;
  std::vector<SineCondition> only(std::size_t direction, std::vector<SineCondition> all) const;
  Form moving_part(const Form& closed) const;

  const KnownAngles& known_;
  UnknownTable& unknowns_;
  std::vector<Triangle> triangles_;
  std::vector<Form> nodes_;           // normalised lengths
  std::vector<Side> some_side_;       // by node: a length of it
  std::map<Form, int, FormOrder> node_numbers_;
  std::vector<Edge> edges_;
  std::vector<std::vector<int>> at_;  // by node
  std::vector<Form> sines_;           // by class: the angle as it occurs first
  std::vector<int> moves_;            // by class: its direction, or kFixed
  std::map<Form, int, FormOrder> class_numbers_;
  std::vector<Form> directions_;
};

}  // namespace prover
