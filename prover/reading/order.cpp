#include "prover/reading/order.hpp"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <map>
#include <queue>
#include <unordered_map>

#include "prover/algebra/linear_system.hpp"
#include "prover/reading/modular_echelon.hpp"

namespace prover {

namespace {

using Row = ModularEchelon::Row;

// A set of unknowns, by column.
class Columns {
 public:
  void insert(std::size_t column) {
    if (words_.size() <= column / 64) words_.resize(column / 64 + 1);
    words_[column / 64] |= std::uint64_t{1} << column % 64;
  }
  void add(const Columns& other) {
    if (words_.size() < other.words_.size()) words_.resize(other.words_.size());
    for (std::size_t i = 0; i < other.words_.size(); ++i) words_[i] |= other.words_[i];
  }
  int in_common(const Columns& other) const {
    int count = 0;
    for (std::size_t i = 0; i < std::min(words_.size(), other.words_.size()); ++i) count += std::popcount(words_[i] & other.words_[i]);
    return count;
  }

 private:
  std::vector<std::uint64_t> words_;
};

struct Step {
  std::vector<Row> premises, conclusions;
  Columns mentions;                // unknowns that the givens leave open, one for those that they tie together
  RuleId rule;
  bool wide = false;
  std::vector<UnknownId> equal;    // the two things, when that they are equal is all it says
};

constexpr int kAgain = 1;  // a rule taken up again

// The steps as rows, and what a prefix of them costs.
class Steps {
 public:
  Steps(const std::vector<const Instance*>& first, const std::vector<const Instance*>& rest, const std::vector<Form>& goal,
        UnknownId lettered = {}) {
    LinearSystem given;
    for (const Instance* i : first)
      for (const Form& f : i->conclusions) given.add(f);
    // As good as a number; which one does not matter, as long as nothing vanishes by accident.
    if (lettered.valid()) given.add(Form::of(lettered).add(Form::number(Rational(10'007, 97))));
    auto note = [&](const Form& f) {
      for (const auto& [u, c] : f.terms) column_.emplace(u, 0);
    };
    for (const Instance* i : rest)
      for (const auto* forms : {&i->premises, &i->conclusions})
        for (const Form& f : *forms) note(given.reduce(f));
    for (const Form& g : goal) note(given.reduce(g));
    // By unknown, whatever the order of the steps: what is left of an equation is counted, and must not depend on it.
    std::size_t columns = 0;
    for (auto& [u, column] : column_) column = columns++;
    for (const Instance* i : rest) {
      Step step;
      step.rule = i->rule;
      for (const Form& f : i->premises) step.premises.push_back(row(given.reduce(f), step.mentions));
      for (const Form& f : i->conclusions) {
        step.conclusions.push_back(row(given.reduce(f), step.mentions));
        step.wide |= f.terms.size() > 2;
        if (i->conclusions.size() == 1 && f.terms.size() == 2 && f.constant.is_zero())
          step.equal = {f.terms[0].first, f.terms[1].first};
      }
      steps_.push_back(std::move(step));
    }
    for (const Form& g : goal) row(given.reduce(g), asked_);
  }

  std::size_t size() const { return steps_.size(); }
  bool may_follow(const ModularEchelon& known, std::size_t j) const {
    const auto& premises = steps_[j].premises;
    return std::all_of(premises.begin(), premises.end(), [&](const Row& p) { return known.entails(p); });
  }
  void say(ModularEchelon& known, std::size_t j) const {
    for (const Row& r : steps_[j].conclusions) known.add(r);
  }
  // What it costs to say j now, whatever was said just before. `said[i]`: i has been said.
  OrderCost cost(const ModularEchelon& known, const std::vector<bool>& said, std::size_t j) const {
    OrderCost out;
    for (const Row& r : steps_[j].conclusions) out.open += known.left_open(r);
    // After this line: everything mentioned so far that is still needed.
    Columns mentioned = steps_[j].mentions, needed = asked_;
    for (std::size_t i = 0; i < size(); ++i)
      if (i != j) (said[i] ? mentioned : needed).add(steps_[i].mentions);
    out.distance = mentioned.in_common(needed);
    if (steps_[j].wide) out.narrow = static_cast<int>(std::count(said.begin(), said.end(), true));
    out.turned = static_cast<int>(std::count(said.begin(), said.begin() + static_cast<std::ptrdiff_t>(j), false));
    return out;
  }
  // And what it costs to say it after `last` (size(): nothing before it).
  int cost_after(std::size_t last, const std::vector<bool>& said, std::size_t j) const {
    if (last >= size()) return 0;
    bool again = false, left = false;
    for (std::size_t i = 0; i < size(); ++i) {
      if (!said[i]) continue;
      again |= steps_[last].rule != steps_[j].rule && steps_[i].rule == steps_[j].rule;
      left |= share_one(i, j);
    }
    return (again ? kAgain : 0) + (left && !share_one(last, j) ? kAgain : 0);
  }

 private:
  bool share_one(std::size_t i, std::size_t j) const {
    const auto& a = steps_[i].equal;
    const auto& b = steps_[j].equal;
    return std::any_of(a.begin(), a.end(), [&](UnknownId u) { return std::find(b.begin(), b.end(), u) != b.end(); });
  }
  Row row(const Form& f, Columns& mentions) const {
    Row out(column_.size() + 1);
    for (const auto& [u, c] : f.terms) {
      const std::size_t at = column_.at(u);
      mentions.insert(at);
      out[at] = ModularEchelon::modulo(c);
    }
    out.back() = ModularEchelon::modulo(f.constant);
    return out;
  }

  std::map<UnknownId, std::size_t> column_;
  std::vector<Step> steps_;
  Columns asked_;
};

OrderCost operator+(const OrderCost& a, const OrderCost& b) {
  return {a.open + b.open, a.distance + b.distance, a.narrow + b.narrow, a.turned + b.turned};
}

// The cheapest path through the sets of steps said so far (Dijkstra). What a step costs depends on the set and on the
// step before, not on the order before that.
std::vector<std::size_t> best_order(const Steps& steps) {
  struct State {
    std::uint32_t said = 0;
    std::size_t last = 0;
    auto operator<=>(const State&) const = default;
  };
  struct Reached {
    OrderCost cost;
    State from;
    bool done = false;
  };
  const std::size_t n = steps.size();
  const std::uint32_t all = (1u << n) - 1;
  std::map<State, Reached> reached;
  struct Prefix {  // by what has been said, in whatever order
    ModularEchelon known;
    std::vector<bool> said, may_follow;
    std::vector<OrderCost> costs;
  };
  std::unordered_map<std::uint32_t, Prefix> prefixes;
  const auto prefix = [&](ModularEchelon known, std::uint32_t mask) {
    Prefix out{std::move(known), std::vector<bool>(n), std::vector<bool>(n), std::vector<OrderCost>(n)};
    for (std::size_t i = 0; i < n; ++i) out.said[i] = (mask >> i & 1u) != 0;
    for (std::size_t j = 0; j < n; ++j) {
      out.may_follow[j] = !out.said[j] && steps.may_follow(out.known, j);
      if (out.may_follow[j]) out.costs[j] = steps.cost(out.known, out.said, j);
    }
    return out;
  };
  using Entry = std::pair<OrderCost, State>;
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
  const State start{0, n};
  reached[start] = {};
  prefixes.emplace(0, prefix({}, 0));
  queue.push({{}, start});
  while (!queue.empty()) {
    const auto [cost, state] = queue.top();
    queue.pop();
    Reached& here = reached[state];
    if (here.done) continue;
    here.done = true;
    if (state.said == all) {
      std::vector<std::size_t> order;
      for (State s = state; s.said != 0; s = reached[s].from) order.push_back(s.last);
      std::reverse(order.begin(), order.end());
      return order;
    }
    if (!prefixes.contains(state.said)) {
      ModularEchelon next = prefixes.at(state.said & ~(1u << state.last)).known;
      steps.say(next, state.last);
      prefixes.emplace(state.said, prefix(std::move(next), state.said));
    }
    const Prefix& so_far = prefixes.at(state.said);
    for (std::size_t j = 0; j < n; ++j) {
      if (!so_far.may_follow[j]) continue;
      const State next{state.said | 1u << j, j};
      OrderCost total = cost + so_far.costs[j];
      total.distance += steps.cost_after(state.last, so_far.said, j);
      const auto [at, fresh] = reached.try_emplace(next);
      if (!fresh && (at->second.done || at->second.cost <= total)) continue;
      at->second = {total, state, false};
      queue.push({total, next});
    }
  }
  return {};  // a prime divided something: the caller looks at the order exactly
}

std::vector<std::size_t> next_best_order(const Steps& steps) {
  std::vector<std::size_t> order;
  std::vector<bool> said(steps.size());
  ModularEchelon known;
  std::size_t last = steps.size();
  while (order.size() < steps.size()) {
    std::size_t best = steps.size();
    OrderCost least;
    for (std::size_t j = 0; j < steps.size(); ++j) {
      if (said[j] || !steps.may_follow(known, j)) continue;
      OrderCost cost = steps.cost(known, said, j);
      cost.distance += steps.cost_after(last, said, j);
      if (best == steps.size() || cost < least) {
        best = j;
        least = cost;
      }
    }
    if (best == steps.size()) return {};
    steps.say(known, best);
    said[best] = true;
    order.push_back(last = best);
  }
  return order;
}

bool premises_first(const std::vector<const Instance*>& ordered) {
  LinearSystem system;
  for (const Instance* i : ordered) {
    for (const Form& p : i->premises)
      if (!system.entails(p)) return false;
    for (const Form& f : i->conclusions) system.add(f);
  }
  return true;
}

// Givens and added lines stand first, whatever follows. A line that is added is known by its shape: no premises, two
// places, and the one fact that they are joined.
bool stands_first(const Instance& instance) {
  return instance.hypothesis >= 0 || (instance.premises.empty() && instance.conclusions.size() == 1 &&
                                      instance.places.size() == 2 && instance.conclusions[0].constant.is_zero() &&
                                      instance.conclusions[0].terms.size() == 1);
}

}  // namespace

OrderCost order_cost(const std::vector<Instance>& ordered, const std::vector<Form>& goal) {
  std::vector<const Instance*> first, rest;
  for (const Instance& i : ordered) (stands_first(i) ? first : rest).push_back(&i);
  const Steps steps(first, rest, goal);
  OrderCost total;
  std::vector<bool> said(rest.size());
  ModularEchelon known;
  for (std::size_t j = 0; j < rest.size(); ++j) {
    total = total + steps.cost(known, said, j);
    total.distance += steps.cost_after(j == 0 ? rest.size() : j - 1, said, j);
    steps.say(known, j);
    said[j] = true;
  }
  return total;
}

std::vector<std::size_t> reading_order(const std::vector<const Instance*>& members, const std::vector<Form>& goal,
                                       UnknownId lettered) {
  constexpr std::size_t most_exactly = 12;
  std::vector<std::size_t> ordered, others;
  for (std::size_t i = 0; i < members.size(); ++i)
    if (members[i]->hypothesis >= 0) ordered.push_back(i);
  for (std::size_t i = 0; i < members.size(); ++i)
    if (members[i]->hypothesis < 0) (stands_first(*members[i]) ? ordered : others).push_back(i);
  std::vector<const Instance*> first, rest;
  for (const std::size_t i : ordered) first.push_back(members[i]);
  for (const std::size_t i : others) rest.push_back(members[i]);
  const Steps steps(first, rest, goal, lettered);
  const auto order = rest.size() <= most_exactly ? best_order(steps) : next_best_order(steps);
  for (const std::size_t j : order) {
    ordered.push_back(others[j]);
    first.push_back(rest[j]);
  }
  if (order.size() == rest.size() && premises_first(first)) return ordered;
  for (std::size_t i = 0; i < members.size(); ++i) {
    if (i < ordered.size()) ordered[i] = i;
    else ordered.push_back(i);
  }
  return ordered;
}

std::vector<Instance> order_for_reading(std::vector<Instance> members, const std::vector<Form>& goal) {
  std::vector<const Instance*> all;
  for (const Instance& i : members) all.push_back(&i);
  std::vector<Instance> out;
  out.reserve(members.size());
  for (const std::size_t i : reading_order(all, goal, {})) out.push_back(members[i]);
  return out;
}

}  // namespace prover
