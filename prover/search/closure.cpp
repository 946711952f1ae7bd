#include "prover/search/closure.hpp"

#include <algorithm>

namespace prover {

Closure::Closure(const FlatProblem& problem) : problem_(problem),
      system_(problem.columns(), problem.constant(),
              problem.any_premises() ? Elimination::Ties::last : Elimination::Ties::first) {
  clear();
}

void Closure::clear() {
  system_.clear();
  waiting_.clear();
  fired_.clear();
  goals_ = problem_.goal();
  goals_open_ = static_cast<std::size_t>(
      std::count_if(goals_.begin(), goals_.end(), [](const Row& goal) { return !goal.empty(); }));
}

bool Closure::ready(int candidate) {
  for (int r = problem_.first_row(candidate); r < problem_.first_conclusion(candidate); ++r) {
    const auto premise = problem_.row(r);
    row_.assign(premise.begin(), premise.end());
    system_.reduce(row_);
    if (!row_.empty()) return false;
  }
  return true;
}

void Closure::fire(int candidate) {
  fired_.push_back(candidate);
  for (int r = problem_.first_conclusion(candidate); r < problem_.first_row(candidate + 1); ++r) {
    const auto conclusion = problem_.row(r);
    row_.assign(conclusion.begin(), conclusion.end());
    system_.reduce(row_);
    // 0 = c settles nothing but a contradiction: what follows from it is no proof of anything else.
    if (row_.empty() || (row_.front().column == problem_.constant() && !problem_.wants_contradiction())) continue;
    system_.add(row_);
    for (Row& goal : goals_) {
      if (goal.empty()) continue;
      system_.reduce(goal);
      make_primitive(goal);
      if (goal.empty()) --goals_open_;
    }
  }
}

void Closure::add(int candidate) {
  if (!ready(candidate)) {
    waiting_.push_back(candidate);
    return;
  }
  fire(candidate);
  for (bool more = !waiting_.empty(); more;) {
    more = false;
    for (std::size_t k = 0; k < waiting_.size(); ++k) {
      const int next = waiting_[k];
      if (!ready(next)) continue;
      waiting_.erase(waiting_.begin() + static_cast<std::ptrdiff_t>(k--));
      fire(next);
      more = !waiting_.empty();
    }
  }
}

}  // namespace prover
