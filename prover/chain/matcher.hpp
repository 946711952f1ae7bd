// Places for a rule: runs a match plan over the figure and the known facts, and offers an instance for every way
// in which all position conditions hold. Equations among the givens become premises; they may follow later.
#pragma once
#include <vector>

#include "prover/chain/knowledge.hpp"
#include "prover/chain/plan_book.hpp"

namespace prover {

class Matcher {
 public:
  Matcher(const Catalogue& catalogue, RuleId rule, const PlanBook& plans, Knowledge& knowledge,
          std::size_t most_steps = static_cast<std::size_t>(-1));

  // Rules without fact conditions: all places, once.
  void match_figure();
  // Rules with fact conditions: all places in which some condition is one of the facts from index `since` on.
  void match_facts(std::size_t since, std::size_t until);
  const MatchPlan& plan() const { return plans_->front(); }
  RuleId rule() const { return rule_; }
  std::size_t tried() const { return steps_; }  // steps of its plan so far: what looking for places has cost

  // The same for places found elsewhere: only when the rule's positions are known there, and once for all its images.
  void offer_where_known(const std::vector<PointId>& places);
  // The instance at the given places, when all that depends on the figure alone holds.
  void offer_at(const std::vector<PointId>& places);

 private:
  // True: no other candidate for this move can give another instance.
  bool run(const MatchProgram& program, std::size_t move);
  bool go_on(const MatchProgram& program, std::size_t move);  // from the move on, when its tests are passed
  bool place(const MatchProgram& program, std::size_t move, PointId point);
  bool read_facts(const MatchProgram& program, std::size_t move);
  bool read_points(const MatchProgram& program, std::size_t move, const KnownFact& fact);
  bool passes(const MatchTest& test) const;
  bool in_order(const std::vector<int>& symmetry, std::size_t size) const;
  bool first_of_its_images() const;
  bool known(const Position& over_variables) const;
  bool fact_known(const Phrase& phrase) const;
  PointId at(int variable) const { return places_[static_cast<std::size_t>(variable)]; }
  bool stopped();

  const Catalogue& catalogue_;
  RuleId rule_;
  Knowledge& knowledge_;
  const RulePlans* rule_plans_;
  const std::vector<MatchPlan>* plans_;  // one for each fact condition, or one
  std::vector<PointId> places_;       // by variable
  std::vector<LineId> lines_;         // registers of the program
  Instance instance_;                 // the last one offered: its memory is used again
  std::size_t since_ = 0, until_ = 0; // the new facts
  std::size_t steps_ = 0;             // the clock is asked once in a while
  std::size_t most_steps_;
  bool out_of_time_ = false;
};

}  // namespace prover
