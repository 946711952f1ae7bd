// What a growing set of candidates derives: a member fires once its premises follow from what fired before, and
// waits until then.
#pragma once
#include "prover/search/elimination.hpp"
#include "prover/search/flat_problem.hpp"

namespace prover {

class Closure {
 public:
  explicit Closure(const FlatProblem& problem);

  void clear();
  void add(int candidate);
  bool reached() const { return goals_open_ == 0; }
  const Elimination& system() const { return system_; }
  const std::vector<int>& waiting() const { return waiting_; }
  const std::vector<int>& fired() const { return fired_; }   // in the order in which they fired
  const std::vector<Row>& goals() const { return goals_; }   // what is left of each goal; empty when it follows

 private:
  bool ready(int candidate);
  void fire(int candidate);

  const FlatProblem& problem_;
  Elimination system_;
  std::vector<int> waiting_, fired_;
  std::vector<Row> goals_;
  std::size_t goals_open_ = 0;
  Row row_;
};

}  // namespace prover
