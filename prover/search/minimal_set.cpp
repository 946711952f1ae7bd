#include "prover/search/minimal_set.hpp"

#include <algorithm>

namespace prover {

namespace {

// An elimination whose rows carry a label for each conclusion they come from: what the goal rests on can be read off.
class Traced {
 public:
  explicit Traced(const FlatProblem& problem)
      : problem_(problem), system_(problem.columns(), problem.constant(), Elimination::Ties::first) {}

  // The members that the goals rest on, or nothing when they do not follow.
  std::vector<int> support(const std::vector<int>& members) {
    rests_on_.assign(members.size(), {});
    std::vector<std::size_t> open(members.size());
    for (std::size_t k = 0; k < open.size(); ++k) open[k] = k;
    while (!open.empty()) {
      std::vector<std::size_t> still;
      for (const std::size_t k : open) {
        if (!premises_follow(members[k], k)) {
          still.push_back(k);
          continue;
        }
        fire(members[k], k);
        std::vector<int> direct;
        if (goals_follow(direct)) {
          std::vector<int> used = closed(direct);
          for (int& u : used) u = members[static_cast<std::size_t>(u)];
          return used;
        }
      }
      if (still.size() == open.size()) return {};
      open = std::move(still);
    }
    return {};
  }

 private:
  // The members whose conclusions the row is a sum of, if it is one.
  bool follows(std::span<const RowEntry> row, std::vector<int>& direct) {
    row_.assign(row.begin(), row.end());
    system_.reduce(row_);
    if (!row_.empty() && row_.front().column < problem_.columns()) return false;
    for (const RowEntry& entry : row_)
      direct.push_back(member_of_[static_cast<std::size_t>(entry.column - problem_.columns())]);
    return true;
  }
  bool premises_follow(int candidate, std::size_t k) {
    std::vector<int> direct;
    for (int r = problem_.first_row(candidate); r < problem_.first_conclusion(candidate); ++r)
      if (!follows(problem_.row(r), direct)) return false;
    rests_on_[k] = closed(direct);
    return true;
  }
  void fire(int candidate, std::size_t k) {
    for (int r = problem_.first_conclusion(candidate); r < problem_.first_row(candidate + 1); ++r) {
      const auto conclusion = problem_.row(r);
      row_.assign(conclusion.begin(), conclusion.end());
      row_.push_back({problem_.columns() + static_cast<std::int32_t>(member_of_.size()), 1});
      member_of_.push_back(static_cast<int>(k));
      system_.reduce(row_);
      if (row_.front().column == problem_.constant() && !problem_.wants_contradiction()) continue;
      system_.add(row_);
    }
  }
  bool goals_follow(std::vector<int>& direct) {
    const auto& goals = problem_.goal();
    return std::all_of(goals.begin(), goals.end(), [&](const Row& goal) { return follows(goal, direct); });
  }
  // Members with all that their premises rest on.
  std::vector<int> closed(std::vector<int> members) const {
    const std::size_t own = members.size();
    for (std::size_t k = 0; k < own; ++k) {
      const auto& below = rests_on_[static_cast<std::size_t>(members[k])];
      members.insert(members.end(), below.begin(), below.end());
    }
    std::sort(members.begin(), members.end());
    members.erase(std::unique(members.begin(), members.end()), members.end());
    return members;
  }

  const FlatProblem& problem_;
  Elimination system_;
  std::vector<std::vector<int>> rests_on_;  // by member: closed
  std::vector<int> member_of_;              // by label
  Row row_;
};

bool gives_goal(Closure& closure, const std::vector<int>& members, std::size_t without) {
  closure.clear();
  for (std::size_t k = 0; k < members.size() && !closure.reached(); ++k)
    if (k != without) closure.add(members[k]);
  return closure.reached();
}

}  // namespace

std::vector<int> minimal_subset(const FlatProblem& problem, const std::vector<int>& members) {
  std::vector<int> set = Traced(problem).support(members);
  // One equation each and no premises: the multipliers are unique and none is zero, so nothing can be spared.
  const bool plain = std::all_of(set.begin(), set.end(), [&](int i) {
    return !problem.has_premises(i) && problem.first_row(i + 1) - problem.first_conclusion(i) == 1;
  });
  if (plain) return set;
  std::vector<int> in_order;
  for (const int i : members)
    if (std::find(set.begin(), set.end(), i) != set.end()) in_order.push_back(i);
  leave_out_needless(problem, in_order, false);
  return in_order;
}

bool leave_out_needless(const FlatProblem& problem, std::vector<int>& members, bool only_weightless) {
  Closure closure(problem);
  for (std::size_t k = members.size(); k-- > 0;) {
    if (!gives_goal(closure, members, k)) continue;
    if (only_weightless && problem.weight(members[k]) > 0) return false;
    members.erase(members.begin() + static_cast<std::ptrdiff_t>(k));
  }
  return true;
}

bool is_minimal(const FlatProblem& problem, const std::vector<int>& members) {
  Closure closure(problem);
  for (std::size_t k = 0; k < members.size(); ++k)
    if (gives_goal(closure, members, k)) return false;
  return true;
}

std::vector<int> firing_order(const FlatProblem& problem, const std::vector<int>& members) {
  if (!problem.any_premises()) return members;
  Closure closure(problem);
  for (const int i : members) closure.add(i);
  return closure.fired();
}

}  // namespace prover
