#include "prover/search/plain_first_set.hpp"

#include <algorithm>
#include <numeric>
#include <unordered_set>

#include "prover/search/elimination.hpp"

namespace prover {

namespace {

struct Tie {           // unknown = sign · unknown of the other end, up to a constant
  std::int32_t to;
  int sign;
  int candidate;
};

// Classes of unknowns tied by equations of two, and the forest of the equations that tied them.
class Classes {
 public:
  explicit Classes(std::int32_t columns)
      : parent_(static_cast<std::size_t>(columns)), sign_(static_cast<std::size_t>(columns), 1),
        rank_(static_cast<std::size_t>(columns), 0), ties_(static_cast<std::size_t>(columns)) {
    std::iota(parent_.begin(), parent_.end(), 0);
  }
  // The class of an unknown, and the sign of the unknown in terms of the class.
  std::pair<std::int32_t, int> find(std::int32_t column) {
    std::int32_t root = column;
    int sign = 1;
    while (parent(root) != root) {
      sign *= sign_[static_cast<std::size_t>(root)];
      root = parent(root);
    }
    for (int left = sign; parent(column) != root && column != root;) {  // point straight at the root
      const std::int32_t next = parent(column);
      const int own = sign_[static_cast<std::size_t>(column)];
      sign_[static_cast<std::size_t>(column)] = static_cast<signed char>(left);
      parent_[static_cast<std::size_t>(column)] = root;
      left *= own;
      column = next;
    }
    return {root, sign};
  }
  // a = sign · b. False when they are of one class already.
  bool tie(std::int32_t a, std::int32_t b, int sign, int candidate) {
    auto [ra, sa] = find(a);
    auto [rb, sb] = find(b);
    if (ra == rb) return false;
    if (rank_[static_cast<std::size_t>(ra)] > rank_[static_cast<std::size_t>(rb)]) std::swap(ra, rb);
    parent_[static_cast<std::size_t>(ra)] = rb;
    sign_[static_cast<std::size_t>(ra)] = static_cast<signed char>(sa * sign * sb);
    if (rank_[static_cast<std::size_t>(ra)] == rank_[static_cast<std::size_t>(rb)]) ++rank_[static_cast<std::size_t>(rb)];
    ties_[static_cast<std::size_t>(a)].push_back({b, sign, candidate});
    ties_[static_cast<std::size_t>(b)].push_back({a, sign, candidate});
    return true;
  }
  const std::vector<Tie>& ties(std::int32_t column) const { return ties_[static_cast<std::size_t>(column)]; }

 private:
  std::int32_t parent(std::int32_t column) const { return parent_[static_cast<std::size_t>(column)]; }
  std::vector<std::int32_t> parent_;
  std::vector<signed char> sign_;
  std::vector<int> rank_;
  std::vector<std::vector<Tie>> ties_;
};

// A row in one unknown for each class; the constant takes no part, because one figure meets all equations.
Row in_classes(std::span<const RowEntry> row, Classes& classes, std::int32_t constant) {
  Row mapped;
  for (const RowEntry& entry : row) {
    if (entry.column == constant) continue;
    const auto [root, sign] = classes.find(entry.column);
    mapped.push_back({root, sign * entry.factor});
  }
  std::sort(mapped.begin(), mapped.end(), [](const RowEntry& a, const RowEntry& b) { return a.column < b.column; });
  std::size_t last = 0;
  for (std::size_t k = 1; k < mapped.size(); ++k) {
    if (mapped[k].column == mapped[last].column)
      mapped[last].factor = checked_sum(mapped[last].factor, mapped[k].factor);
    else
      mapped[++last] = mapped[k];
  }
  if (!mapped.empty()) mapped.resize(last + 1);
  std::erase_if(mapped, [](const RowEntry& entry) { return entry.factor == 0; });
  make_primitive(mapped);
  return mapped;
}

struct RowHash {
  std::size_t operator()(const Row& row) const {
    std::size_t hash = 1469598103934665603ULL;
    for (const RowEntry& entry : row) {
      hash = (hash ^ static_cast<std::size_t>(entry.column)) * 1099511628211ULL;
      hash = (hash ^ static_cast<std::size_t>(entry.factor)) * 1099511628211ULL;
    }
    return hash;
  }
};

// Passes what every unknown still needs up its tree; an edge with something on it is used.
void add_used_ties(const Classes& classes, std::vector<std::int64_t> needs, const std::vector<std::int32_t>& touched,
                   std::vector<int>& members) {
  struct Visit {
    std::int32_t column, from;
    int sign, candidate;
  };
  std::vector<bool> seen(needs.size(), false);
  for (const std::int32_t start : touched) {
    if (seen[static_cast<std::size_t>(start)]) continue;
    seen[static_cast<std::size_t>(start)] = true;
    std::vector<Visit> order{{start, -1, 1, -1}};
    for (std::size_t k = 0; k < order.size(); ++k) {
      const std::int32_t at = order[k].column;
      for (const Tie& tie : classes.ties(at)) {
        if (seen[static_cast<std::size_t>(tie.to)]) continue;
        seen[static_cast<std::size_t>(tie.to)] = true;
        order.push_back({tie.to, at, tie.sign, tie.candidate});
      }
    }
    for (std::size_t k = order.size(); k-- > 1;) {
      const std::int64_t need = needs[static_cast<std::size_t>(order[k].column)];
      if (need == 0) continue;
      std::int64_t& above = needs[static_cast<std::size_t>(order[k].from)];
      above = checked_sum(above, checked_product(order[k].sign, need));
      members.push_back(order[k].candidate);
    }
  }
}

}  // namespace

bool is_plain(const FlatProblem& problem) {
  return !problem.any_premises() && problem.goal().size() == 1 && !problem.wants_contradiction() &&
         problem.row_count() == static_cast<std::size_t>(problem.size());
}

std::vector<int> plain_first_set(const FlatProblem& problem) {
  const std::int32_t constant = problem.constant();
  Classes classes(problem.columns());
  std::vector<int> longer;
  for (int i = 0; i < problem.size(); ++i) {
    const auto row = problem.row(i);
    const std::size_t unknowns = row.size() - (!row.empty() && row.back().column == constant);
    if (unknowns == 2 && std::abs(row[0].factor) == std::abs(row[1].factor) &&
        classes.tie(row[0].column, row[1].column, row[0].factor == row[1].factor ? -1 : 1, i))
      continue;
    longer.push_back(i);
  }
  // Shorter equations first; those that say the same once are left out.
  std::vector<std::pair<Row, int>> mapped;
  std::unordered_set<Row, RowHash> known;
  for (const int i : longer) {
    Row row = in_classes(problem.row(i), classes, constant);
    if (!row.empty() && known.insert(row).second) mapped.emplace_back(std::move(row), i);
  }
  std::stable_sort(mapped.begin(), mapped.end(),
                   [](const auto& a, const auto& b) { return a.first.size() < b.first.size(); });
  Elimination system(constant, constant, Elimination::Ties::first);
  const std::int32_t goal_label = constant + static_cast<std::int32_t>(mapped.size());
  Row goal;
  for (const RowEntry& entry : problem.goal()[0]) {  // unlike in_classes: must keep its scale
    if (entry.column == constant) continue;
    const auto [root, sign] = classes.find(entry.column);
    Row scratch;
    combine(goal, 1, Row{{root, 1}}, sign * entry.factor, scratch);
  }
  goal.push_back({goal_label, 1});
  system.reduce(goal);
  for (std::size_t k = 0; k < mapped.size() && goal.front().column < constant; ++k) {
    Row row = mapped[k].first;
    row.push_back({constant + static_cast<std::int32_t>(k), 1});
    if (system.add(std::move(row))) system.reduce(goal);
  }
  if (goal.front().column < constant) return {};

  // σ · goal + Σ t · row of classes = 0. With the true rows, unknown by unknown, what is left flows along the ties.
  std::vector<int> members;
  std::vector<std::int64_t> needs(static_cast<std::size_t>(problem.columns()), 0);
  std::vector<std::int32_t> touched;
  auto need = [&](std::span<const RowEntry> row, std::int64_t times) {
    for (const RowEntry& entry : row) {
      if (entry.column == constant) continue;
      std::int64_t& at = needs[static_cast<std::size_t>(entry.column)];
      at = checked_sum(at, checked_product(times, entry.factor));
      touched.push_back(entry.column);
    }
  };
  // A mapped row was divided by a common factor (and a sign): its true row counts that much less.
  std::int64_t scale = 1;
  auto divisor = [&](int candidate, const Row& row) {
    std::int64_t factor = 0;
    for (const RowEntry& entry : problem.row(candidate))
      if (entry.column != constant) {
        const auto [root, sign] = classes.find(entry.column);
        if (root == row.front().column) factor = checked_sum(factor, sign * entry.factor);
      }
    return factor / row.front().factor;
  };
  for (const RowEntry& label : goal)
    if (label.column != goal_label) {
      const auto& [row, candidate] = mapped[static_cast<std::size_t>(label.column - constant)];
      scale = checked_product(scale, std::abs(divisor(candidate, row)) / std::gcd(scale, divisor(candidate, row)));
    }
  for (const RowEntry& label : goal) {
    if (label.column == goal_label) {
      need(problem.goal()[0], checked_product(scale, label.factor));
      continue;
    }
    const auto& [row, candidate] = mapped[static_cast<std::size_t>(label.column - constant)];
    need(problem.row(candidate), checked_product(scale / divisor(candidate, row), label.factor));
    members.push_back(candidate);
  }
  add_used_ties(classes, std::move(needs), touched, members);
  std::sort(members.begin(), members.end());
  return members;
}

}  // namespace prover
