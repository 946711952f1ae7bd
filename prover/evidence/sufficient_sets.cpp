#include "prover/evidence/sufficient_sets.hpp"

#include <algorithm>
#include <optional>

namespace prover {

namespace {

bool inside(const ElementSet& small, const ElementSet& large) {
  for (std::size_t i = 0; i < small.size(); ++i)
    if (small[i] && !large[i]) return false;
  return true;
}

class Enumeration {
 public:
  Enumeration(const ElementSet& kept, const std::function<bool(const ElementSet&)>& suffices, std::size_t most_questions,
              const Budget& budget)
      : kept_(kept), suffices_(suffices), most_questions_(most_questions), budget_(budget) {}

  SufficientSets run() {
    const ElementSet all(kept_.size(), true);
    if (ask(all)) keep_smallest_within(all);
    while (!stopped_ && !smallest_.empty()) {
      const std::optional<ElementSet> rest = rest_to_ask_about();
      if (!rest) break;
      if (ask(*rest)) keep_smallest_within(*rest);
    }
    SufficientSets out;
    for (const ElementSet& set : smallest_) {
      std::vector<int> members;
      for (std::size_t i = 0; i < set.size(); ++i)
        if (set[i]) members.push_back(static_cast<int>(i));
      out.sets.push_back(std::move(members));
    }
    std::sort(out.sets.begin(), out.sets.end(), [](const auto& a, const auto& b) {
      return a.size() != b.size() ? a.size() < b.size() : a < b;
    });
    out.stop = !stopped_ ? StopReason::saturated : budget_.exhausted() ? budget_.reason() : StopReason::instance_limit;
    out.questions = questions_;
    return out;
  }

 private:
  bool ask(const ElementSet& set) {
    if (std::any_of(smallest_.begin(), smallest_.end(), [&](const ElementSet& yes) { return inside(yes, set); })) return true;
    if (std::any_of(without_.begin(), without_.end(), [&](const ElementSet& no) { return inside(set, no); })) return false;
    if (stopped_ || questions_ >= most_questions_ || budget_.exhausted()) {
      stopped_ = true;
      return false;
    }
    ++questions_;
    const bool yes = suffices_(set);
    if (budget_.exhausted()) stopped_ = true;  // the answer may be no more than a lack of time
    if (!yes) without_.push_back(set);
    return yes;
  }

  // The last ones are left out first: what opens a problem is what a reader expects to keep.
  void keep_smallest_within(ElementSet set) {
    for (std::size_t i = set.size(); i-- > 0;) {
      if (!set[i] || kept_[i]) continue;
      set[i] = false;
      if (!ask(set)) set[i] = true;
    }
    if (!stopped_) smallest_.push_back(std::move(set));
  }

  // All elements but a smallest set that meets every set in `smallest_`; one whose answer is not known yet.
  std::optional<ElementSet> rest_to_ask_about() {
    std::vector<ElementSet> hitting{ElementSet(kept_.size(), false)};
    constexpr std::size_t most_hitting = 4000;
    for (const ElementSet& set : smallest_) {
      std::vector<ElementSet> next;
      for (const ElementSet& hit : hitting) {
        bool met = false;
        for (std::size_t i = 0; i < set.size(); ++i) met |= hit[i] && set[i];
        if (met) {
          next.push_back(hit);
          continue;
        }
        for (std::size_t i = 0; i < set.size(); ++i) {
          if (!set[i] || kept_[i]) continue;
          next.push_back(hit);
          next.back()[i] = true;
        }
      }
      std::vector<ElementSet> least;
      for (std::size_t a = 0; a < next.size(); ++a) {
        bool is_least = true;
        for (std::size_t b = 0; b < next.size() && is_least; ++b)
          is_least = a == b || !inside(next[b], next[a]) || (next[a] == next[b] && a < b);
        if (is_least) least.push_back(next[a]);
      }
      hitting = std::move(least);
      if (hitting.size() > most_hitting) {
        stopped_ = true;
        return std::nullopt;
      }
    }
    for (ElementSet hit : hitting) {
      hit.flip();
      if (std::none_of(without_.begin(), without_.end(), [&](const ElementSet& no) { return inside(hit, no); })) return hit;
    }
    return std::nullopt;
  }

  const ElementSet& kept_;
  const std::function<bool(const ElementSet&)>& suffices_;
  std::size_t most_questions_;
  const Budget& budget_;
  std::vector<ElementSet> smallest_, without_;
  std::size_t questions_ = 0;
  bool stopped_ = false;
};

}  // namespace

SufficientSets sufficient_sets(const ElementSet& kept, const std::function<bool(const ElementSet&)>& suffices,
                               std::size_t most_questions, const Budget& budget) {
  return Enumeration(kept, suffices, most_questions, budget).run();
}

}  // namespace prover
