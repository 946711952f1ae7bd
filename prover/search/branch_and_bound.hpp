// The exact search: iterative deepening branch and bound over cuts that are found as they are needed.
//
//   bound     Cuts are packed: each takes the least residual weight of its free members from all of them and adds it
//             to the bound; members whose residual is nought join the chosen ones, and the next cut is made disjoint
//             from these, until they give the goal. (Residuals stay non-negative, so the bound is a feasible dual.)
//   level     All sets up to a weight B are looked for; what the bound shows to be heavier is cut off, and the least
//             weight cut off becomes the next B. So the bound rises while the best set falls, until they meet.
//   branch    on the free members of the smallest cut that is not hit yet, cheapest residual first; members
//             already tried are forbidden to the branches after them, so that no set is met twice.
//
// Every pruning rests on cuts alone; the pool of cuts is therefore a certificate: the lightest set that hits all of
// them weighs as much as the optimum.
#pragma once
#include <functional>
#include <limits>
#include <random>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/search/cut_pool.hpp"

namespace prover {

class BranchAndBound {
 public:
  static constexpr std::int64_t kInfinite = std::numeric_limits<std::int64_t>::max() / 4;

  struct Options {
    std::function<std::vector<int>()> first;                              // a set at once, when the first bound takes long
    std::function<void(const std::vector<int>&, std::int64_t)> on_better;  // each better set with its weight
    bool with_certificate = false;
  };
  BranchAndBound(const FlatProblem& problem, const Budget& budget, Options options);

  // A set from elsewhere, to start from.
  void offer(const std::vector<int>& members);
  // Until the optimum is proved, the goal is shown not to follow, or the budget ends.
  void minimise();
  // After minimise: all minimal sets by rising weight, until `most` are known, the next would weigh more than
  // `heaviest`, or the budget ends.
  void enumerate(std::size_t most, std::int64_t heaviest);

  bool stopped() const { return stopped_; }              // the budget ended it
  bool follows() const { return root_bound_ < kInfinite; }
  const std::vector<int>& best() const { return best_; }
  std::int64_t best_weight() const { return best_weight_; }
  std::int64_t lower_bound() const { return lower_bound_; }
  const std::vector<std::vector<int>>& sets() const { return sets_; }
  std::int64_t complete_below() const { return complete_below_; }
  bool exhausted() const { return exhausted_; }          // enumerate: there are no others at all
  const std::vector<Cut>& certificate() const { return certificate_; }  // all cuts in the pool

 private:
  enum class Mode { one, all };
  void root();
  void note_root();
  void level(std::int64_t limit);
  void search();
  void leaf();
  void found();
  void offer_from_closure();
  void offer_now_and_then();
  std::int64_t pack(bool root);
  std::int64_t charge(const std::vector<int>& members);
  void keep(const Cut& cut);
  void keep_cut();
  void close_chosen();
  bool next_cut(Cut& cut);
  void choose(int candidate);
  void drop(int candidate);
  std::int64_t& residual(int candidate);
  bool out_of_budget();
  int smallest_open_cut() const;

  const FlatProblem& problem_;
  const Budget& budget_;
  Options options_;
  CutPool pool_;
  CutFinder finder_;
  Closure closure_;
  std::vector<Cut> certificate_;
  std::vector<int> weightless_;                 // candidates that cost nothing are always there
  std::int64_t least_weight_ = kInfinite;       // of those that cost something

  std::vector<int> chosen_;
  std::int64_t cost_ = 0, limit_ = 0, next_limit_ = kInfinite;
  std::vector<std::int64_t> residual_;
  std::vector<std::uint32_t> residual_stamp_;
  std::uint32_t packing_ = 0;
  std::vector<int> spent_;                      // free candidates whose residual is nought
  std::vector<std::int64_t> root_residual_;
  std::int64_t root_bound_ = 0, lower_bound_ = 0;
  bool by_share_ = true;                        // how a cut is valued (`next_cut`)

  Mode mode_ = Mode::one;
  std::vector<int> best_;
  std::int64_t best_weight_ = kInfinite;
  std::vector<std::vector<int>> sets_;
  std::size_t most_ = 0;
  std::int64_t new_from_ = 0, complete_below_ = 0;  // sets lighter than new_from_ are known already
  bool stopped_ = false, full_ = false, exhausted_ = false;
  std::size_t nodes_ = 0, ticks_ = 0, next_offer_ = 0, offer_pause_ = 1;
  std::vector<std::int32_t> seeds_;
  std::vector<std::uint64_t> open_;             // cuts not hit: free members, then number
  std::minstd_rand random_{1};              // the same on every machine
};

}  // namespace prover
