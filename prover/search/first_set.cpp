#include "prover/search/first_set.hpp"

#include <algorithm>
#include <optional>
#include <set>

#include "prover/algebra/linear_system.hpp"
#include "prover/search/derivation.hpp"

namespace prover {

namespace {

// The members that the goal's certificate rests on, when instances enter cheapest first.
class CheapestFirst {
 public:
  explicit CheapestFirst(const SearchProblem& problem)
      : problem_(problem), system_(true), support_(problem.candidates.size()) {}

  std::optional<std::vector<int>> run() {
    struct Entry {
      std::int64_t cost;
      int index;
      bool operator<(const Entry& other) const {
        return cost != other.cost ? cost < other.cost : index < other.index;
      }
    };
    struct Waiting {
      int index;
      std::vector<Form> open;  // premises not yet known to follow, as last reduced
    };
    std::set<Entry> ready;
    std::vector<Waiting> waiting;
    auto admit = [&](int i) {
      const Candidate& c = problem_.candidates[static_cast<std::size_t>(i)];
      std::set<int> support;
      for (const Form& p : c.premises) collect(p, support);
      std::int64_t cost = c.weight;
      for (const int s : support) cost += problem_.candidates[static_cast<std::size_t>(s)].weight;
      support_[static_cast<std::size_t>(i)] = std::move(support);
      ready.insert({cost, i});
    };
    for (std::size_t i = 0; i < problem_.candidates.size(); ++i) {
      if (problem_.candidates[i].premises.empty())
        admit(static_cast<int>(i));
      else
        waiting.push_back({static_cast<int>(i), problem_.candidates[i].premises});
    }
    for (std::size_t last_rank = 0;;) {
      if (last_rank != system_.rank()) {
        last_rank = system_.rank();
        std::erase_if(waiting, [&](Waiting& w) {
          for (Form& form : w.open) {
            if (form.is_zero()) continue;
            const bool changed = std::any_of(form.terms.begin(), form.terms.end(),
                                             [&](const auto& term) { return system_.is_pivot(term.first); });
            if (changed) form = system_.reduce(form);
            if (!form.is_zero()) return false;
          }
          admit(w.index);
          return true;
        });
      }
      if (reached() || ready.empty()) break;
      const int i = ready.begin()->index;
      ready.erase(ready.begin());
      for (const Form& f : problem_.candidates[static_cast<std::size_t>(i)].conclusions) {
        system_.add(f, static_cast<int>(tags_.size()));
        tags_.push_back(i);
      }
    }
    if (!reached()) return std::nullopt;
    std::set<int> members;
    if (problem_.goal.empty()) {
      for (const auto& [tag, m] : system_.contradiction().parts) take(tags_[static_cast<std::size_t>(tag)], members);
    } else {
      for (const Form& g : problem_.goal) collect(g, members);
    }
    return std::vector<int>(members.begin(), members.end());
  }

 private:
  bool reached() const {
    if (problem_.goal.empty()) return system_.contradictory();
    return std::all_of(problem_.goal.begin(), problem_.goal.end(),
                       [&](const Form& g) { return system_.entails(g); });
  }
  void take(int member, std::set<int>& into) const {
    if (!into.insert(member).second) return;
    const auto& support = support_[static_cast<std::size_t>(member)];
    into.insert(support.begin(), support.end());  // already closed under support
  }
  void collect(const Form& form, std::set<int>& into) const {
    const auto certificate = system_.certificate(form);
    for (const auto& [tag, m] : certificate->parts) take(tags_[static_cast<std::size_t>(tag)], into);
  }

  const SearchProblem& problem_;
  LinearSystem system_;
  std::vector<int> tags_;                   // certificate tag → candidate
  std::vector<std::set<int>> support_;      // all that a candidate's premises rest on
};

// Drops members that are not needed, dearest first, in halving blocks.
std::vector<int> without_needless(const SearchProblem& problem, std::vector<int> members) {
  std::stable_sort(members.begin(), members.end(), [&](int a, int b) {
    return problem.candidates[static_cast<std::size_t>(a)].weight > problem.candidates[static_cast<std::size_t>(b)].weight;
  });
  for (std::size_t block = std::max<std::size_t>(1, members.size() / 2);; block /= 2) {
    for (std::size_t i = 0; i < members.size();) {
      std::vector<int> fewer(members.begin(), members.begin() + static_cast<std::ptrdiff_t>(i));
      fewer.insert(fewer.end(), members.begin() + static_cast<std::ptrdiff_t>(std::min(members.size(), i + block)),
                   members.end());
      if (derive(problem, fewer).reached)
        members = std::move(fewer);
      else
        i += block;
    }
    if (block <= 1) break;
  }
  return members;
}

}  // namespace

std::vector<int> first_set(const SearchProblem& problem) {
  auto members = CheapestFirst(problem).run();
  if (!members) return {};
  return derive(problem, without_needless(problem, std::move(*members))).fired;
}

}  // namespace prover
