// One key for each quantity and fact, whatever it is called: angles by rays, lengths by ends, facts by the
// lines and points they speak of. Two names get one key exactly when `Positions` shows that they mean the
// same. Keys are numbers that stay for the life of a Naming; which key a name gets may change as lines are
// merged.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "prover/check/equation.hpp"
#include "prover/check/positions.hpp"
#include "prover/fact/unknown.hpp"

namespace prover::replay {

class Naming {
 public:
  explicit Naming(Positions& positions) : positions_(positions) {}

  // Nothing for what has no meaning: equal ends, an arm that ends in the vertex, one line twice, wrong
  // counts.
  std::optional<Equation> angle(PointId arm1, PointId vertex, PointId arm2);  // 0 or 180 where that is known
  std::optional<Equation> length(PointId a, PointId b);
  std::optional<Equation> fact(FactKind kind, const Points& points);
  Equation number(const std::string& name);
  Equation excess(const std::string& name);
  std::optional<Equation> of(const Unknown& unknown);

  // The named rays from a point of line ab, one name each.
  Points rays_along(PointId vertex, PointId a, PointId b);
  UnknownKind kind_of(int key) const { return kinds_[static_cast<std::size_t>(key)]; }
  // An angle whose arms are known not to be on one line.
  bool is_proper_angle(int key);
  Positions& positions() { return positions_; }

 private:
  PointId ray(PointId vertex, PointId toward);
  Points line(PointId a, PointId b) const;  // two points that stand for it
  int key(UnknownKind kind, int detail, const Points& points);

  Positions& positions_;
  std::map<std::vector<int>, int> keys_;
  std::map<std::string, int> numbers_;
  std::vector<UnknownKind> kinds_;
  std::map<int, Points> angles_;  // by key: vertex and a point of each arm
};

}  // namespace prover::replay
