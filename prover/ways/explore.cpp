#include "prover/ways/explore.hpp"

#include <algorithm>
#include <deque>
#include <limits>
#include <map>

#include "prover/search/derivation.hpp"

namespace prover {

namespace {

constexpr std::size_t kMostProbes = 48;
constexpr std::size_t kMostSets = 600;

class Explorer {
 public:
  Explorer(const CarryingProblem& carrying, IdeaNames& names, std::int64_t heaviest, const Budget& budget)
      : carrying_(carrying), names_(names), heaviest_(heaviest), budget_(budget) {}

  IdeasFound run(std::vector<int> best, const std::set<std::string>& wanted) {
    note(std::move(best));
    if (!wanted.empty()) favour(wanted, budget_.share(0.3));
    // Where only light ideas are sought, the enumeration finds them all.
    if (heaviest_ == std::numeric_limits<std::int64_t>::max()) probe(budget_.share(0.4));
    const LightSets all = lightest_sets(carrying_.problem, {{budget_, {}}, kMostSets, heaviest_});
    for (const LightSet& set : all.sets) note(facts_among(carrying_, set.members));
    found_.complete_below = all.complete_below;
    // Nothing was cut where the search ended because all that is sought was found.
    found_.stop = all.stop == StopReason::instance_limit && all.complete_below > heaviest_ ? StopReason::goal_reached : all.stop;
    std::stable_sort(found_.ideas.begin(), found_.ideas.end(), [](const Idea& a, const Idea& b) { return a.weight < b.weight; });
    return std::move(found_);
  }

 private:
  std::int64_t weight(int fact) const {
    const int candidate = carrying_.facts[static_cast<std::size_t>(fact)].candidate;
    return carrying_.problem.candidates[static_cast<std::size_t>(candidate)].weight;
  }

  // The lightest set of facts stands for the idea. A minimal set of candidates may hold a fact in the place of small
  // change: without it there is another set, and no idea is lost.
  void note(std::vector<int> facts) {
    facts = minimal(std::move(facts));
    std::int64_t all = 0;
    for (const int f : facts) all += weight(f);
    const auto [place, fresh] = named_.try_emplace(names_.of(facts), found_.ideas.size());
    if (fresh) {
      found_.ideas.push_back({facts, {}, all});
      return;
    }
    Idea& idea = found_.ideas[place->second];
    if (facts == idea.facts || std::find(idea.others.begin(), idea.others.end(), facts) != idea.others.end()) return;
    idea.others.push_back(facts);
    if (all >= idea.weight) return;
    std::swap(idea.others.back(), idea.facts);
    idea.weight = all;
  }

  // Facts that only save small change go, the dearest first.
  std::vector<int> minimal(std::vector<int> facts) const {
    std::vector<int> by_weight = facts;
    std::stable_sort(by_weight.begin(), by_weight.end(), [&](int a, int b) { return weight(a) > weight(b); });
    for (const int f : by_weight) {
      std::vector<int> fewer = facts;
      std::erase(fewer, f);
      std::vector<int> members;
      for (std::size_t c = 0; c < carrying_.fact.size(); ++c)
        if (carrying_.fact[c] < 0 || std::find(fewer.begin(), fewer.end(), carrying_.fact[c]) != fewer.end())
          members.push_back(static_cast<int>(c));
      if (derive(carrying_.problem, members).reached) facts = std::move(fewer);
    }
    return facts;
  }

  // The lightest ideas when facts of these kinds cost next to nothing: ideas that cite them, where there are any.
  void favour(const std::set<std::string>& wanted, const Budget& budget) {
    SearchProblem cheap = carrying_.problem;
    for (const CarryingFact& fact : carrying_.facts)
      if (wanted.contains(fact.kind)) {
        std::int64_t& weight = cheap.candidates[static_cast<std::size_t>(fact.candidate)].weight;
        weight = std::min<std::int64_t>(weight, 1);
      }
    for (const LightSet& set : lightest_sets(cheap, {{budget, {}}, kMostProbes}).sets)
      note(facts_among(carrying_, set.members));
  }

  // A proof that cites no fact of a kind differs for sure from those that do: forbid the kinds of each idea found, one
  // by one and together with what was forbidden before.
  void probe(const Budget& budget) {
    std::set<std::set<std::string>> tried{{}};
    std::deque<std::set<std::string>> open;
    const auto forbid_more = [&](const std::set<std::string>& before, const std::vector<int>& facts) {
      for (const int f : facts) {
        std::set<std::string> more = before;
        more.insert(carrying_.facts[static_cast<std::size_t>(f)].kind);
        if (tried.insert(more).second) open.push_back(std::move(more));
      }
    };
    forbid_more({}, found_.ideas[0].facts);
    for (std::size_t probes = 0; probes < kMostProbes && !open.empty() && !budget.exhausted(); ++probes) {
      const std::set<std::string> forbidden = std::move(open.front());
      open.pop_front();
      SearchProblem rest;
      rest.goal = carrying_.problem.goal;
      std::vector<int> fact;
      for (std::size_t c = 0; c < carrying_.fact.size(); ++c) {
        const int f = carrying_.fact[c];
        if (f >= 0 && forbidden.contains(carrying_.facts[static_cast<std::size_t>(f)].kind)) continue;
        rest.candidates.push_back(carrying_.problem.candidates[c]);
        fact.push_back(f);
      }
      const auto light = lightest_set(rest, {budget, {}});
      if (!light) continue;
      std::vector<int> facts;
      for (const int m : light->members)
        if (fact[static_cast<std::size_t>(m)] >= 0) facts.push_back(fact[static_cast<std::size_t>(m)]);
      std::sort(facts.begin(), facts.end());
      note(facts);
      forbid_more(forbidden, facts);
    }
  }

  const CarryingProblem& carrying_;
  IdeaNames& names_;
  std::int64_t heaviest_;
  const Budget& budget_;
  IdeasFound found_;
  std::map<std::string, std::size_t> named_;
};

}  // namespace

IdeasFound explore(const CarryingProblem& carrying, std::vector<int> best, IdeaNames& names, std::int64_t heaviest,
                   const std::set<std::string>& wanted, const Budget& budget) {
  if (carrying.free_suffices) return {{{}}, 0, StopReason::saturated};
  return Explorer(carrying, names, heaviest, budget).run(std::move(best), wanted);
}

}  // namespace prover
