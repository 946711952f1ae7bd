// Cuts. Let N be a subspace of forms that misses a goal. A candidate leaks when its premises lie in N and a
// conclusion does not. Every proof set has a leaking member: without one, all that it derives stays in N, by
// induction. So the leaking candidates are a cut, and N is its certificate: whoever doubts it tests each candidate
// once. (Landmarks and cuts for delete-free planning: Helmert and Domshlak, "Landmarks, critical paths and abstractions",
// ICAPS 2009; hitting sets over them: Bonet and Helmert, ECAI 2010; both cited from memory.)
//
// N is the common kernel of a few dual vectors. For a column d that is no pivot of the closure's elimination, the dual
// vector has an entry at d and at the pivots whose rows contain d, such that every row's product with it is zero: so
// all that the closure derives is inside, and only candidates that touch these columns are looked at, however large
// the figure is.
#pragma once
#include <cstdint>

#include "prover/search/closure.hpp"

namespace prover {

struct Cut {
  std::vector<int> members;   // the leaking candidates
  std::vector<Row> duals;     // a form is in N when its product with each of these is zero
};

class CutFinder {
 public:
  explicit CutFinder(const FlatProblem& problem);

  // The cut for N of the closure and `seed`, a column of what is left of a goal, widened by columns of premises
  // until no waiting member of the closure leaks.
  void find(const Closure& closure, std::int32_t seed, Cut& cut);

 private:
  Row dual_of(const Elimination& system, std::int32_t column);
  void take_outside(Row dual, Cut& cut);
  void touch_constants(std::int64_t dual);
  void touch(std::int32_t row, std::int64_t product);
  std::int32_t widening_column(const Closure& closure, int waiting);
  bool premises_inside(const Cut& cut, int candidate) const;

  const FlatProblem& problem_;
  std::vector<std::int64_t> sum_;                 // by row: its product with the dual vector at hand
  std::vector<std::uint32_t> row_stamp_, crossing_stamp_;
  std::vector<std::uint32_t> column_stamp_;       // columns in which a dual vector has an entry
  std::uint32_t pass_ = 0, round_ = 0;
  std::vector<std::int32_t> touched_rows_;
  std::vector<int> crossing_;                     // candidates with a conclusion that is not inside
  Row row_;
};

}  // namespace prover
