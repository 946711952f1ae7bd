#include "prover/marking/marks_tally.hpp"

#include <algorithm>
#include <map>

#include "prover/marking/marks_credit.hpp"
#include "prover/marking/marks_lines.hpp"
#include "prover/marking/scheme_words.hpp"

namespace prover {

namespace {

// Two ways may write one statement with its sides or letters exchanged.
std::string key_of(const AnswerStep& step) {
  const Spoken said = spoken(short_statement(step));
  std::vector<std::string> things = said.things;
  std::sort(things.begin(), things.end());
  std::string key = said.relation + "|" + said.number;
  for (const std::string& thing : things) key += "|" + thing;
  return key;
}

class Tallying {
 public:
  Tally run(const std::vector<PupilsWork>& works, const PupilsWork& own) {
    if (own.judgement != nullptr) add_steps(own, true);
    for (const PupilsWork& work : works) {
      add_steps(work, false);
      count(work);
      add_ideas(work);
    }
    // A step that only another way needs, and that nobody reached, tells the teacher nothing.
    std::erase_if(tally_.steps, [](const TallyStep& step) { return !step.of_all && step.reached == 0; });
    std::stable_sort(tally_.ideas.begin(), tally_.ideas.end(),
                     [](const TallyIdea& a, const TallyIdea& b) { return a.pupils.size() > b.pupils.size(); });
    return std::move(tally_);
  }

 private:
  static bool needs_reason(const Scheme& scheme, int step) {
    return std::any_of(scheme.marks.begin(), scheme.marks.end(), [&](const SchemeMark& mark) {
      return std::any_of(mark.reasons.begin(), mark.reasons.end(),
                         [&](const std::vector<int>& group) { return std::count(group.begin(), group.end(), step) > 0; });
    });
  }

  void add_steps(const PupilsWork& work, bool of_all) {
    if (!work.judgement->way) return;
    for (std::size_t i = 0; i < work.judgement->way->steps.size(); ++i) {
      const AnswerStep& step = work.judgement->way->steps[i];
      if (!places_.emplace(key_of(step), tally_.steps.size()).second) continue;
      tally_.steps.push_back({short_statement(step), short_reason(step), 0, 0, needs_reason(*work.scheme, static_cast<int>(i) + 1), of_all});
    }
  }
  void count(const PupilsWork& work) {
    if (!work.judgement->way) return;
    const Credits credits = credits_of(*work.judgement, *work.scheme);
    for (std::size_t i = 0; i < credits.steps.size(); ++i) {
      TallyStep& step = tally_.steps[places_.at(key_of(work.judgement->way->steps[i]))];
      step.reached += credits.steps[i].level >= Level::carried;
      step.reasoned += credits.steps[i].level >= Level::carried && credits.steps[i].reason >= 0;
    }
  }
  void add_ideas(const PupilsWork& work) {
    for (const JudgedLine& line : work.judgement->lines) {
      if (line.mistake.empty() && line.mistake_name.empty()) continue;
      const std::string& name = line.mistake_name.empty() ? line.mistake : line.mistake_name;
      auto idea = std::find_if(tally_.ideas.begin(), tally_.ideas.end(), [&](const TallyIdea& i) { return i.name == name; });
      if (idea == tally_.ideas.end()) idea = tally_.ideas.insert(tally_.ideas.end(), {line.mistake, name, {}});
      if (idea->pupils.empty() || idea->pupils.back() != work.pupil) idea->pupils.push_back(work.pupil);
    }
  }

  Tally tally_;
  std::map<std::string, std::size_t> places_;
};

}  // namespace

Tally tally_of(const std::vector<PupilsWork>& works, const PupilsWork& own) { return Tallying().run(works, own); }

}  // namespace prover
