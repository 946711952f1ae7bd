// Which steps of a way earn what, before codes are written: made from the way, then spread or gathered, a mark at a time,
// until the total is the one that the question gives.
#pragma once
#include <string>
#include <vector>

#include "prover/marking/scheme.hpp"

namespace prover {

struct RowPlan {
  std::vector<int> steps;
  MarkFor kind = MarkFor::statement;  // statement, fact, answer, conclusion or construction
  bool statement = true;   // false: earns nothing by itself
  bool reason = false;
  bool together = false;   // statement and reason are one mark
  bool method = false;     // of an answer: a mark for the method of its line, too
  bool slight = false;     // unfolds a definition, adds neighbours, or is algebra
};

class SchemePlan {
 public:
  SchemePlan(const AnswerProof& way, const Catalogue& catalogue, const SchemePolicy& policy, bool finds);

  std::vector<RowPlan> rows;
  bool reasons_each = false;  // in a scheme that marks reasons overall: one each, to reach a total
  int overall = 0;            // … else so many marks, at most two

  bool has_reason(int step) const { return !keys_[index(step)].empty(); }
  bool counts(int step) const;  // its reason is asked for where reasons are marked overall
  std::vector<int> like(int step) const;  // the steps whose reason is given with this one's, in order

  bool spread();  // one mark more; false when there is nothing to split
  bool gather();  // one mark fewer; false when one mark is left

 private:
  static std::size_t index(int step) { return static_cast<std::size_t>(step) - 1; }
  void plan_step(const AnswerStep& step, const Catalogue& catalogue, bool finds);
  void waive_sum_of_answer(const AnswerProof& way, const Catalogue& catalogue);

  const SchemePolicy& policy_;
  std::vector<std::string> keys_;  // by step: what its reason is called among others of its like; empty: it needs none
};

}  // namespace prover
