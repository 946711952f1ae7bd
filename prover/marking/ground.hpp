// What a pupil's lines are judged against: everything that follows in the figure, with all its derivations. There are
// several grounds, from the cheapest to the widest (positions of the text; positions that figures show; all named points
// joined and every rule of the catalogue), and a line stands when it stands on one of them.
#pragma once
#include <memory>
#include <optional>
#include <vector>

#include "prover/proof/proof_graph.hpp"
#include "prover/verdict/attempt.hpp"

namespace prover {

// A claim of the pupil's as the ground sees it.
struct GroundClaim {
  bool meant = false;               // it has a meaning here
  bool follows = false;             // from the givens, by some way
  std::vector<Form> forms;
  std::vector<Position> positions;
};

class Ground {
 public:
  // `statement`: its goals are those of the problem and every claim of the pupil, so that what they speak of is drawn.
  Ground(const Statement& statement, const std::vector<Sketch>& views, const AttemptOptions& options, const Budget& budget);

  const Statement& statement() const { return *statement_; }
  const AttemptOptions& options() const { return options_; }
  const Arrangement& arrangement() const { return workings_->arrangement; }
  UnknownTable& unknowns() const { return workings_->unknowns; }
  const Saturation& saturation() const { return workings_->saturation; }
  const std::vector<Sketch>& views() const { return workings_->views; }
  const Instance& instance(int i) const { return saturation().instances[static_cast<std::size_t>(i)]; }
  const Rule& rule_of(int i) const { return options_.catalogue[instance(i).rule]; }

  GroundClaim claim(const Phrase& phrase) const;
  std::vector<int> relevant_to(const std::vector<Form>& forms) const { return graph_->relevant_to(forms); }

 private:
  const Statement* statement_;
  AttemptOptions options_;
  std::shared_ptr<Workings> workings_;
  std::unique_ptr<ProofGraph> graph_;
};

}  // namespace prover
