// A statement with some of its givens left out, and the question whether its goals are then still proved, with the same
// values. What a sentence draws stays drawn: leaving out ∠KLM = 40° takes a size away, not the lath LM.
//
// The question is answered by what is cheapest:
//   no    no minimal set of givens that the saturation of the whole problem knows is among those kept. Fewer sentences
//         leave fewer positions and so fewer places for rules: what the whole problem does not derive, no part does.
//   yes   the proofs that are known replay on the kept sentences alone
//   no    a figure of the kept givens measures something else
//   else  it is solved anew; only checked proofs count
#pragma once
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "prover/evidence/sufficient_sets.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

struct FewerGivens {
  Statement statement;
  std::vector<int> place;  // by given of the whole statement: its index here, or −1
};
FewerGivens with_givens(const Statement& whole, const ElementSet& kept);

// Sentences that only say which points there are, and added lines: they are never left out.
ElementSet always_kept(const Statement& statement);

// All goals proved, checked, in one and the same case for every figure; with the lines drawn, and reading from figures
// only what nobody can draw otherwise. Cheaper than `solve`, which also joins points and tells cases apart.
std::optional<SolvedCase> proved_with_the_lines_drawn(const Statement& statement, const AttemptOptions& options,
                                                      const Budget& budget, bool may_read_figures = true);

class StillProved {
 public:
  // `solved`: one for each of `statements`, every goal proved in every case.
  StillProved(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
              const Budget& budget);

  bool operator()(const ElementSet& kept);
  // A limit ended the search for minimal sets in the saturation: some questions were then asked the dear way.
  bool projection_complete() const { return complete_; }

 private:
  using HypothesisSets = std::vector<std::vector<int>>;
  struct Derived {
    HypothesisSets sets;   // minimal sets of givens from which the saturation derives the goal
    bool complete = false;
  };
  Derived hypothesis_sets(const Statement& statement, const SolvedCase& one, std::size_t goal) const;
  bool derivable(const ElementSet& kept) const;
  bool proofs_stand(const ElementSet& kept) const;
  bool measures_otherwise(const FewerGivens& fewer) const;
  bool solved_anew(const ElementSet& kept);

  const std::vector<Statement>& statements_;
  const std::vector<Solved>& solved_;
  const AttemptOptions& options_;
  const Budget& budget_;
  std::vector<Derived> derived_;           // by statement, case and goal
  std::vector<std::set<std::string>> values_;  // by goal: in any case
  bool complete_ = true;
};

}  // namespace prover
