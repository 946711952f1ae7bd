// The proof graph: every rule instance that fires and every unknown it speaks of, all derivations kept. Two
// questions are asked of it: which instances can matter to a goal at all, and in what order the steps of a proof
// rest on each other. Boost.Graph stays behind this header.
#pragma once
#include <memory>
#include <vector>

#include "prover/rule/instance.hpp"

namespace prover {

class ProofGraph {
 public:
  explicit ProofGraph(const std::vector<Instance>& instances);
  ~ProofGraph();

  // Indices of the instances that are connected with the goal through shared unknowns, in their order: all others
  // can have no part in any proof of it.
  std::vector<int> relevant_to(const std::vector<Form>& goal) const;

 private:
  struct Graph;
  std::unique_ptr<Graph> graph_;
};

}  // namespace prover
