#include "prover/search/branch_and_bound.hpp"

#include <algorithm>

#include "prover/search/minimal_set.hpp"

namespace prover {

namespace {

constexpr std::size_t kSeeds = 6;     // columns of the goal that are tried for a cut
constexpr int kFewCandidates = 4000;  // so many are barred one by one, more through their cuts
constexpr int kManyCuts = 300;        // a first bound of so many cuts takes a while: first a set, whatever it weighs

}  // namespace

BranchAndBound::BranchAndBound(const FlatProblem& problem, const Budget& budget, Options options)
    : problem_(problem), budget_(budget), options_(std::move(options)), pool_(problem.size()), finder_(problem),
      closure_(problem), residual_(static_cast<std::size_t>(problem.size()), 0),
      residual_stamp_(static_cast<std::size_t>(problem.size()), 0) {
  for (int i = 0; i < problem.size(); ++i)
    if (problem.weight(i) == 0)
      weightless_.push_back(i);
    else
      least_weight_ = std::min(least_weight_, problem.weight(i));
}

bool BranchAndBound::out_of_budget() {
  if (!stopped_ && (++ticks_ & 15) == 0) stopped_ = budget_.exhausted();
  return stopped_;
}

std::int64_t& BranchAndBound::residual(int candidate) {
  const auto i = static_cast<std::size_t>(candidate);
  if (residual_stamp_[i] != packing_) {
    residual_stamp_[i] = packing_;
    residual_[i] = problem_.weight(candidate);
  }
  return residual_[i];
}

void BranchAndBound::choose(int candidate) {
  pool_.set(candidate, Choice::chosen);
  chosen_.push_back(candidate);
  cost_ += problem_.weight(candidate);
}

void BranchAndBound::drop(int candidate) {
  chosen_.pop_back();
  cost_ -= problem_.weight(candidate);
  pool_.set(candidate, Choice::forbidden);
}

// What a cut adds to the bound.
std::int64_t BranchAndBound::charge(const std::vector<int>& members) {
  std::int64_t least = kInfinite;
  for (const int i : members) {
    if (pool_.choice(i) != Choice::free) continue;
    least = std::min(least, residual(i));
    if (least == 0) return 0;
  }
  if (least == kInfinite) return least;
  for (const int i : members) {
    if (pool_.choice(i) != Choice::free) continue;
    std::int64_t& rest = residual(i);
    rest -= least;
    if (rest == 0) spent_.push_back(i);
  }
  return least;
}

// The best of a few cuts disjoint from all that closure_ holds: the one that adds most to the bound, or that adds most
// for each of its free members, which are spent with it. Seeds are taken in a random order, the same every time.
bool BranchAndBound::next_cut(Cut& best) {
  if (closure_.reached()) return false;
  seeds_.clear();
  for (const Row& goal : closure_.goals())
    for (const RowEntry& entry : goal)
      if (entry.column != problem_.constant() || goal.size() == 1) seeds_.push_back(entry.column);
  for (std::size_t k = seeds_.size(); k > 1; --k) std::swap(seeds_[k - 1], seeds_[random_() % k]);
  if (seeds_.size() > kSeeds) seeds_.resize(kSeeds);
  auto better = [&](std::int64_t charge, std::int64_t free, std::int64_t than_charge, std::int64_t than_free) {
    if (!by_share_) return charge != than_charge ? charge > than_charge : free < than_free;
    return static_cast<double>(charge) * static_cast<double>(than_free) >
           static_cast<double>(than_charge) * static_cast<double>(free);
  };
  std::int64_t best_charge = -1, best_free = 1;
  Cut cut;
  for (const std::int32_t seed : seeds_) {
    finder_.find(closure_, seed, cut);
    std::int64_t charge = kInfinite, free = 0;
    for (const int i : cut.members)
      if (pool_.choice(i) == Choice::free) {
        ++free;
        charge = std::min(charge, residual(i));
      }
    if (free > 0 && best_charge >= 0 && !better(charge, free, best_charge, best_free)) continue;
    best_charge = charge;
    best_free = free;
    std::swap(best, cut);
    if (free == 0) break;
  }
  return true;
}

void BranchAndBound::keep(const Cut& cut) {
  if (options_.with_certificate) certificate_.push_back(cut);
  pool_.add(cut.members);
}

// A cut disjoint from what is chosen, valued by whole weights and not by what a packing has left of them.
void BranchAndBound::keep_cut() {
  Cut cut;
  ++packing_;
  next_cut(cut);
  keep(cut);
}

void BranchAndBound::close_chosen() {
  closure_.clear();
  for (const int i : weightless_) closure_.add(i);
  for (const int i : chosen_) closure_.add(i);
}

std::int64_t BranchAndBound::pack(bool root) {
  ++packing_;
  spent_.clear();
  std::int64_t bound = 0;
  auto too_heavy = [&] { return !root && cost_ + bound > limit_; };
  open_.clear();
  for (int k = 0; k < pool_.size(); ++k)
    if (!pool_.hit(k)) {
      if (pool_.free_in(k) == 0) return kInfinite;
      open_.push_back(static_cast<std::uint64_t>(pool_.free_in(k)) << 32U | static_cast<std::uint32_t>(k));
    }
  std::sort(open_.begin(), open_.end());  // fewest free members first
  for (const std::uint64_t entry : open_) {
    bound += charge(pool_.members(static_cast<int>(entry & 0xffff'ffffU)));
    if (too_heavy()) return bound;
  }
  close_chosen();
  std::size_t entered = 0;
  Cut cut;
  for (;;) {
    for (; entered < spent_.size(); ++entered) closure_.add(spent_[entered]);
    if (out_of_budget() || !next_cut(cut)) return bound;
    const std::int64_t more = charge(cut.members);
    keep(cut);
    if (more >= kInfinite) return kInfinite;
    if (root && best_weight_ >= kInfinite && pool_.size() == kManyCuts && options_.first) offer(options_.first());
    bound += more;
    if (too_heavy()) return bound;
  }
}

void BranchAndBound::offer(const std::vector<int>& members) {
  if (members.empty() && !closure_.reached()) return;
  std::int64_t weight = 0;
  for (const int i : members) weight += problem_.weight(i);
  if (weight >= best_weight_) return;
  best_ = members;
  best_weight_ = weight;
  if (options_.on_better) options_.on_better(best_, best_weight_);
}

// Two ways to value a cut; the one that gives the better bound here is kept for the search.
void BranchAndBound::root() {
  by_share_ = true;
  root_bound_ = pack(true);
  lower_bound_ = root_bound_;
  if (root_bound_ >= kInfinite || stopped_) return;
  note_root();
  if (root_bound_ == best_weight_) return;
  const std::int64_t by_share = root_bound_;
  CutPool other(problem_.size());
  std::swap(pool_, other);
  const std::size_t first_cuts = certificate_.size();
  by_share_ = false;
  const std::int64_t by_charge = pack(true);
  if (stopped_) return;
  if (by_charge > by_share) {
    root_bound_ = by_charge;
    certificate_.erase(certificate_.begin(), certificate_.begin() + static_cast<std::ptrdiff_t>(first_cuts));
    note_root();
  } else {
    by_share_ = true;
    if (closure_.reached()) offer_from_closure();
    certificate_.resize(first_cuts);
    std::swap(pool_, other);
  }
}

void BranchAndBound::note_root() {
  root_residual_.resize(static_cast<std::size_t>(problem_.size()));
  for (int i = 0; i < problem_.size(); ++i) root_residual_[static_cast<std::size_t>(i)] = residual(i);
  lower_bound_ = root_bound_;
  if (closure_.reached()) offer_from_closure();
}

// What fired gives the goal: two minimal sets inside it, by what fired first and by what fired last.
void BranchAndBound::offer_from_closure() {
  std::vector<int> fired = closure_.fired();
  offer(minimal_subset(problem_, fired));
  std::reverse(fired.begin(), fired.end());
  offer(minimal_subset(problem_, fired));
}

// A minimal set costs more than a node: after one that is no better we wait, each time twice as long.
void BranchAndBound::offer_now_and_then() {
  if (nodes_ < next_offer_) return;
  const std::int64_t before = best_weight_;
  offer(minimal_subset(problem_, closure_.fired()));
  offer_pause_ = best_weight_ < before ? 1 : 2 * offer_pause_;
  next_offer_ = nodes_ + offer_pause_;
}

// Forbids what the root's packing shows to be too heavy, and searches.
void BranchAndBound::level(std::int64_t limit) {
  limit_ = limit;
  next_limit_ = kInfinite;
  std::vector<int> barred;
  for (int i = 0; i < problem_.size(); ++i) {
    const std::int64_t with = root_bound_ + root_residual_[static_cast<std::size_t>(i)];
    if (with <= limit_ || problem_.weight(i) == 0) continue;
    next_limit_ = std::min(next_limit_, with);
    pool_.set(i, Choice::forbidden);
    barred.push_back(i);
  }
  search();
  for (const int i : barred) pool_.set(i, Choice::free);
}

int BranchAndBound::smallest_open_cut() const {
  int best = -1;
  for (int k = 0; k < pool_.size(); ++k)
    if (!pool_.hit(k) && (best < 0 || pool_.free_in(k) < pool_.free_in(best))) best = k;
  return best;
}

// closure_ holds what is chosen, and the goal follows from it.
void BranchAndBound::found() {
  if (mode_ == Mode::one) {
    offer(minimal_subset(problem_, closure_.fired()));
    limit_ = std::min(limit_, best_weight_ - 1);
    return;
  }
  if (cost_ < new_from_) return;
  std::vector<int> members = weightless_;
  members.insert(members.end(), chosen_.begin(), chosen_.end());
  if (!leave_out_needless(problem_, members, true)) return;  // a lighter set inside it is found elsewhere
  sets_.push_back(firing_order(problem_, members));
  full_ = sets_.size() >= most_;
}

// Room for one more member at most: it must be in every cut that is not hit. Those that fail leave a cut each, so
// that later leaves end sooner.
void BranchAndBound::leaf() {
  for (;;) {
    const int smallest = smallest_open_cut();
    close_chosen();
    if (closure_.reached()) return found();
    if (smallest < 0) {
      keep_cut();
      continue;
    }
    if (pool_.free_in(smallest) == 0) return;
    int open = 0;
    for (int k = 0; k < pool_.size(); ++k) open += !pool_.hit(k);
    const std::vector<int> members = pool_.members(smallest);
    for (const int i : members) {
      if (pool_.choice(i) != Choice::free) continue;
      const std::int64_t with = cost_ + problem_.weight(i);
      if (with > limit_) {
        next_limit_ = std::min(next_limit_, with);
        continue;
      }
      next_limit_ = std::min(next_limit_, with + least_weight_);
      if (pool_.unhit_with(i) < open) continue;
      if (out_of_budget()) return;
      ++nodes_;
      choose(i);
      close_chosen();
      if (closure_.reached()) {
        found();
      } else {
        keep_cut();
        ++open;
      }
      drop(i);
      pool_.set(i, Choice::free);
      if (full_) return;
    }
    return;
  }
}

void BranchAndBound::search() {
  if (full_ || out_of_budget()) return;
  ++nodes_;
  if (limit_ - cost_ < 2 * least_weight_) return leaf();
  const std::int64_t bound = pack(false);
  if (stopped_) return;
  if (cost_ + bound > limit_) {
    if (bound < kInfinite) next_limit_ = std::min(next_limit_, cost_ + bound);
    return;
  }
  // Here the closure of what is chosen and spent gives the goal.
  if (bound == 0) return found();
  if (mode_ == Mode::one) {
    offer_now_and_then();
    limit_ = std::min(limit_, best_weight_ - 1);
    if (cost_ + bound > limit_) return;
  }
  const int cut = smallest_open_cut();
  std::vector<std::pair<std::int64_t, int>> branches;
  for (const int i : pool_.members(cut))
    if (pool_.choice(i) == Choice::free) branches.emplace_back(residual(i), i);
  std::sort(branches.begin(), branches.end());
  // What would bring the bound above the limit is out of the question below here.
  std::vector<int> barred;
  const std::int64_t room = limit_ - cost_ - bound;
  auto bar = [&](int i) {
    if (pool_.choice(i) != Choice::free || residual(i) <= room) return;
    next_limit_ = std::min(next_limit_, cost_ + bound + residual(i));
    pool_.set(i, Choice::forbidden);
    barred.push_back(i);
  };
  if (problem_.size() <= kFewCandidates) {
    for (int i = 0; i < problem_.size(); ++i) bar(i);
  } else {
    for (int k = 0; k < pool_.size(); ++k)
      if (!pool_.hit(k))
        for (const int i : pool_.members(k)) bar(i);
  }
  for (const auto& [rest, i] : branches) {
    if (pool_.choice(i) != Choice::free) continue;
    if (cost_ + problem_.weight(i) > limit_) {
      next_limit_ = std::min(next_limit_, cost_ + problem_.weight(i));
    } else {
      choose(i);
      search();
      drop(i);
    }
    pool_.set(i, Choice::forbidden);
    barred.push_back(i);
    if (stopped_ || full_) break;
  }
  for (const int i : barred) pool_.set(i, Choice::free);
}

void BranchAndBound::minimise() {
  mode_ = Mode::one;
  root();
  if (stopped_ || root_bound_ >= kInfinite) return;
  for (int round = 0; lower_bound_ < best_weight_; ++round) {
    // Weights may be finely graded: after a few levels take wider steps, but never past the best.
    const std::int64_t gap = best_weight_ - lower_bound_;
    std::int64_t step = 0;
    if (round >= 3) step = gap / (round < 6 ? 16 : round < 9 ? 8 : round < 12 ? 4 : round < 15 ? 2 : 1);
    level(std::min(lower_bound_ + step, best_weight_ - 1));
    if (stopped_) return;
    lower_bound_ = std::min(best_weight_, next_limit_);
    if (lower_bound_ >= kInfinite) return;
  }
  lower_bound_ = best_weight_;
}

void BranchAndBound::enumerate(std::size_t most, std::int64_t heaviest) {
  mode_ = Mode::all;
  most_ = most;
  complete_below_ = lower_bound_;
  if (stopped_ || root_bound_ >= kInfinite) {
    exhausted_ = !stopped_;
    return;
  }
  new_from_ = 0;
  for (std::int64_t limit = lower_bound_; limit <= heaviest; limit = next_limit_) {
    level(limit);
    if (stopped_ || full_) return;
    complete_below_ = next_limit_;
    new_from_ = limit + 1;
    if (next_limit_ >= kInfinite) {
      exhausted_ = true;
      return;
    }
  }
}

}  // namespace prover
