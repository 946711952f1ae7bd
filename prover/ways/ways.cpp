#include "prover/ways/ways.hpp"

#include <algorithm>
#include <limits>
#include <map>

#include "prover/base/log.hpp"
#include "prover/ways/explore.hpp"
#include "prover/ways/variants.hpp"

namespace prover {

namespace {

constexpr std::size_t kMostInFull = 3;      // variants of one idea that are shown without being asked for
constexpr std::size_t kMostVariants = 12;
constexpr std::size_t kMostOthers = 6;
constexpr std::size_t kIdeasPerShown = 4;   // so many ideas get a proof for each that is shown, to rank them by it

// An idea with its proofs, not yet checked.
struct Draft {
  std::vector<Variant> proofs;
  std::vector<Variant> others;  // from other facts
  bool joins_points = false;
  std::set<std::string> kinds;  // of theorem
};

class WayFinder {
 public:
  WayFinder(std::size_t goal, const Statement& statement, const Attempt& attempt, const AttemptOptions& options,
            const WaysLimits& limits, StageTimes& times)
      : goal_(statement.goals[goal]), attempt_(attempt), best_(attempt.goals[goal]), options_(options), limits_(limits),
        times_(times), claim_{goal_, attempt.workings->goals[goal].forms, attempt.workings->goals[goal].positions, false},
        scene_{statement, attempt.workings->arrangement, attempt.workings->unknowns, attempt.workings->views, options} {}

  WaysFound run() {
    {
      StageTimer timer(times_.search);
      search_ = goal_search(attempt_.workings->saturation, claim_, scene_);
      carrying_ = carrying_problem(search_, options_.catalogue);
      IdeaNames names(carrying_, symmetries(scene_.statement, claim_.forms, scene_.arrangement, scene_.unknowns),
                      scene_.arrangement, scene_.unknowns);
      const std::vector<int> first = facts_said(carrying_, best_->light.members);
      std::set<std::string> wanted;
      for (const RuleId rule : limits_.with) wanted.insert(idea_table().fact(options_.catalogue[rule]));
      ideas_ = explore(carrying_, first, names, heaviest(), wanted, limits_.budget.share(0.7));
      log::info("ways: {} carrying facts in {} candidates, {} ideas, {}", carrying_.facts.size(),
                search_.problem.candidates.size(), ideas_.ideas.size(), name_of(ideas_.stop));
      draft(names, first);
    }
    found_.complete_below = ideas_.complete_below;
    found_.stop = ideas_.stop;
    for (std::size_t i = 0; i < drafts_.size(); ++i) {
      const bool interrupted = limits_.budget.stop.stop_requested() && !found_.ways.empty();
      if (interrupted) found_.stop = StopReason::interrupted;
      if (found_.ways.size() == limits_.most || interrupted) {
        found_.more = drafts_.size() - i + undrafted_;
        found_.complete_below = std::min(found_.complete_below, drafts_[i].proofs[0].light.weight);
        break;
      }
      if (++alike_[drafts_[i].kinds] > limits_.most_alike)
        ++found_.elsewhere;
      else
        show(drafts_[i]);
    }
    return std::move(found_);
  }

 private:
  // With every two points joined there are thousands of ideas, nearly all of them detours; sought are those that cost
  // little more than the best proof, the line and one theorem.
  std::int64_t heaviest() const {
    return limits_.only_with_joined_points ? best_->light.weight + limits_.line_and_theorem
                                           : std::numeric_limits<std::int64_t>::max();
  }
  // The kinds of theorem that an idea cites, lines drawn apart.
  std::set<std::string> kinds_of(const Idea& idea) const {
    std::set<std::string> kinds;
    for (const int f : idea.facts)
      if (!is_joined_line(f)) kinds.insert(carrying_.facts[static_cast<std::size_t>(f)].kind);
    return kinds;
  }
  bool is_joined_line(int fact) const {
    const int member = carrying_.facts[static_cast<std::size_t>(fact)].members[0];
    return options_.catalogue[search_.instances[static_cast<std::size_t>(member)]->rule].builtin == Builtin::join;
  }
  bool joins_points(const Idea& idea) const {
    return std::any_of(idea.facts.begin(), idea.facts.end(), [&](int f) { return is_joined_line(f); });
  }
  bool line_for_nothing(const Idea& idea) const {
    const std::set<std::string> kinds = kinds_of(idea);
    return std::any_of(limits_.without_lines.begin(), limits_.without_lines.end(), [&](const std::set<std::string>& less) {
      return std::includes(kinds.begin(), kinds.end(), less.begin(), less.end());
    });
  }

  // Gives ideas their proofs, until those left are heavier than all that would be shown.
  void draft(IdeaNames& names, const std::vector<int>& first) {
    if (limits_.only_with_joined_points)
      std::erase_if(ideas_.ideas, [&](const Idea& idea) { return !joins_points(idea) || line_for_nothing(idea); });
    for (const Idea& idea : ideas_.ideas)
      if (!joins_points(idea)) found_.kinds.push_back(kinds_of(idea));
    const Budget budget = limits_.budget.share(0.7);
    std::size_t done = 0;
    for (; done < ideas_.ideas.size() && drafts_.size() < kIdeasPerShown * limits_.most; ++done) {
      if (budget.exhausted() && !drafts_.empty()) break;
      const Idea& idea = ideas_.ideas[done];
      Draft draft{variants(idea.facts, carrying_, search_, options_.catalogue, budget), {}, joins_points(idea), kinds_of(idea)};
      add_others(idea, draft, budget);
      // The proof that `prove` shows is the first of its idea, whatever else was found in time.
      if (!limits_.only_with_joined_points && !seeded_ && says_best(idea, names, first)) seed(draft);
      if (draft.proofs.empty() && budget.exhausted()) break;
      select(draft);
      if (draft.proofs.empty())
        ++found_.left_out;
      else
        drafts_.push_back(std::move(draft));
    }
    if (done < ideas_.ideas.size()) {
      undrafted_ = ideas_.ideas.size() - done;
      ideas_.complete_below = std::min(ideas_.complete_below, ideas_.ideas[done].weight);
      if (ideas_.stop == StopReason::saturated && undrafted_ > 0 && budget.exhausted()) ideas_.stop = budget.reason();
    }
    // A proof may weigh more than its facts.
    if (std::erase_if(drafts_, [&](const Draft& d) { return d.proofs[0].light.weight > heaviest(); }) > 0)
      ideas_.complete_below = std::min(ideas_.complete_below, heaviest());
    std::stable_sort(drafts_.begin(), drafts_.end(), [](const Draft& a, const Draft& b) {
      return a.proofs[0].light.weight < b.proofs[0].light.weight;
    });
  }
  // Further sets of facts, as far as they cite something else; their proofs are only mentioned.
  void add_others(const Idea& idea, Draft& draft, const Budget& budget) const {
    for (const std::vector<int>& facts : idea.others) {
      if (draft.others.size() == kMostOthers || budget.exhausted()) return;
      auto other = lightest_variant(facts, carrying_, search_, options_.catalogue, budget);
      const auto cites_same = [&](const Variant& v) { return v.cited == other->cited; };
      if (other && std::none_of(draft.proofs.begin(), draft.proofs.end(), cites_same) &&
          std::none_of(draft.others.begin(), draft.others.end(), cites_same))
        draft.others.push_back(std::move(*other));
    }
  }
  bool says_best(const Idea& idea, IdeaNames& names, const std::vector<int>& first) const {
    if (carrying_.free_suffices) return true;
    return std::includes(first.begin(), first.end(), idea.facts.begin(), idea.facts.end()) ||
           names.of(idea.facts) == names.of(first);
  }
  void seed(Draft& draft) {
    seeded_ = true;
    Variant best{best_->light, {}};
    for (const int m : best.light.members) {
      const RuleId rule = search_.instances[static_cast<std::size_t>(m)]->rule;
      if (idea_table().role(options_.catalogue[rule]) != IdeaRole::small_change) best.cited.insert(rule);
    }
    const auto same = std::find_if(draft.proofs.begin(), draft.proofs.end(), [&](const Variant& v) { return v.cited == best.cited; });
    if (same != draft.proofs.end() && same->light.weight < best.light.weight) return;
    if (same != draft.proofs.end()) draft.proofs.erase(same);
    const auto heavier = std::find_if(draft.proofs.begin(), draft.proofs.end(),
                                      [&](const Variant& v) { return v.light.weight >= best.light.weight; });
    draft.proofs.insert(heavier, std::move(best));
  }

  // Only what was asked for.
  void select(Draft& draft) const {
    const auto not_asked_for = [&](const Variant& v) {
      if (limits_.most_steps > 0 && steps_of(v) > limits_.most_steps) return true;
      return !std::all_of(limits_.with.begin(), limits_.with.end(), [&](RuleId wanted) { return cites(v, wanted); });
    };
    std::erase_if(draft.proofs, not_asked_for);
    std::erase_if(draft.others, not_asked_for);
    if (draft.proofs.empty() && !draft.others.empty()) std::swap(draft.proofs, draft.others);
    if (draft.proofs.size() > kMostVariants) draft.proofs.resize(kMostVariants);
  }
  bool cites(const Variant& v, RuleId wanted) const {
    return std::any_of(v.light.members.begin(), v.light.members.end(), [&](int m) {
      const RuleId rule = search_.instances[static_cast<std::size_t>(m)]->rule;
      return rule == wanted || options_.catalogue[rule].family == options_.catalogue[wanted].id;
    });
  }
  std::size_t steps_of(const Variant& v) const {
    return static_cast<std::size_t>(std::count_if(v.light.members.begin(), v.light.members.end(), [&](int m) {
      const Rule& rule = options_.catalogue[search_.instances[static_cast<std::size_t>(m)]->rule];
      return rule.kind != RuleKind::hypothesis && !rule.free_step;
    }));
  }

  void show(Draft& draft) {
    Way way;
    way.joins_points = draft.joins_points;
    std::vector<std::set<RuleId>> named;  // what titles name, by proof
    for (const Variant& v : draft.proofs) {
      named.emplace_back();
      for (const RuleId r : v.cited)
        if (idea_table().role(options_.catalogue[r]) == IdeaRole::carries) named.back().insert(r);
    }
    std::size_t in_full = 0;
    for (std::size_t i = 0; i < draft.proofs.size(); ++i) {
      bool adds_something = true;
      for (std::size_t k = 0; k < draft.proofs.size(); ++k)
        if (std::includes(named[i].begin(), named[i].end(), named[k].begin(), named[k].end()) &&
            (k < i || named[i] != named[k]) && k != i)
          adds_something = false;
      const bool first = way.proofs.empty();
      if (!show(draft.proofs[i], first || (adds_something && in_full < kMostInFull), way)) continue;
      in_full += !first && way.proofs.back().in_full;
    }
    for (Variant& v : draft.others) show(v, way.proofs.empty(), way);
    std::stable_partition(way.proofs.begin(), way.proofs.end(), [](const WayProof& p) { return p.in_full; });
    if (!way.proofs.empty()) found_.ways.push_back(std::move(way));
  }
  bool show(Variant& v, bool in_full, Way& way) {
    if (limits_.budget.stop.stop_requested() && !way.proofs.empty()) return false;  // its variants can wait
    const std::size_t steps = steps_of(v);
    CheckedProof checked = checked_proof(search_, std::move(v.light), claim_, scene_, limits_.budget, times_);
    found_.checks_disagree |= refuted(checked);
    if (!trusted(checked) || (limits_.admissible && !limits_.admissible(checked))) return false;
    checked.value = best_->value;
    checked.number = best_->number;
    way.proofs.push_back({std::move(checked), steps, in_full});
    return true;
  }

  const Goal& goal_;
  const Attempt& attempt_;
  const std::optional<CheckedProof>& best_;
  const AttemptOptions& options_;
  const WaysLimits& limits_;
  StageTimes& times_;
  Claim claim_;
  Scene scene_;
  GoalSearch search_;
  CarryingProblem carrying_;
  IdeasFound ideas_;
  std::vector<Draft> drafts_;
  std::size_t undrafted_ = 0;
  bool seeded_ = false;
  std::map<std::set<std::string>, std::size_t> alike_;
  WaysFound found_;
};

}  // namespace

WaysFound ways_to(std::size_t goal, const Statement& statement, const Attempt& attempt, const AttemptOptions& options,
                  const WaysLimits& limits, StageTimes& times) {
  return WayFinder(goal, statement, attempt, options, limits, times).run();
}

}  // namespace prover
