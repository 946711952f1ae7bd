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
  void run(const MatchPlan& plan, std::size_t step);
  void place_fact(const MatchPlan& plan, std::size_t step, const Phrase& phrase, const KnownFact& fact);
  void place_lines(const MatchPlan& plan, std::size_t step, const Phrase& phrase, LineId first, LineId second);
  void place_tangent(const MatchPlan& plan, std::size_t step, const Phrase& phrase, const KnownFact& fact);
  void place_points(const MatchPlan& plan, std::size_t step, const Phrase& phrase,
                    const std::vector<PointId>& points);
  bool first_of_its_images() const;
  bool positions_known(const Phrase& phrase) const;
  bool fact_known(const Phrase& phrase) const;
  template <class Continue>
  void with_line(const MatchPlan& plan, PointId a, PointId b, LineId line, Continue&& go_on);
  template <class Continue>
  void with(std::size_t variable, PointId point, Continue&& go_on);

  const Catalogue& catalogue_;
  RuleId rule_;
  Knowledge& knowledge_;
  const std::vector<MatchPlan>* plans_;  // one for each fact condition, or one
  std::vector<PointId> places_;       // by variable; not valid while open
  std::size_t since_ = 0, until_ = 0; // the new facts
  std::size_t steps_ = 0;             // the clock is asked once in a while
  std::size_t most_steps_;
  bool out_of_time_ = false;
};

}  // namespace prover
