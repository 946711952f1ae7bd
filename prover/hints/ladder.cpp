#include "prover/hints/ladder.hpp"

#include <algorithm>

#include "prover/hints/asking.hpp"
#include "prover/hints/leak.hpp"
#include "prover/hints/route.hpp"
#include "prover/hints/sentence_maths.hpp"
#include "prover/hints/telling.hpp"
#include "prover/hints/your_line.hpp"

namespace prover {

namespace {

// What the goal comes to; where several are asked for, the proof of each ends with its own.
std::string value_of(const Climb& climb) {
  if (climb.statement.goals.size() == 1 || climb.goal.kind != GoalKind::find || !climb.goal.in_terms_of.empty()) return climb.answer.value;
  const auto numbers = maths_of(climb.way.steps.back().claim, climb.statement.names).numbers;
  return numbers.empty() ? std::string() : numbers.back().value.to_string();
}

class Builder {
 public:
  explicit Builder(const Climb& climb)
      : climb_(climb), guard_(climb.statement, climb.goal, value_of(climb), climb.answer.figures) {}

  Ladder build() {
    ladder_.goal = climb_.way.goal;
    ladder_.case_name = climb_.way.case_name;
    ladder_.title = climb_.way.title;
    const std::vector<const AnswerStep*> open = open_steps();
    ask_about_lines();
    if (climb_.done.empty() && !open.empty())
      for (const std::string& sentence : route_sentences(climb_)) ask(RungKind::look_again, sentence);
    for (std::size_t i = 0; i < open.size(); ++i) {
      const std::optional<Telling> telling = i + 1 < open.size() ? tellable(*open[i]) : std::nullopt;
      ask_before(*open[i], !telling);
      if (!telling) {
        for (std::size_t k = i + 1; k < open.size(); ++k) ask_before(*open[k], true);
        const std::vector<const AnswerStep*> rest(open.begin() + static_cast<std::ptrdiff_t>(i), open.end());
        tell(RungKind::answer, *open[i], joined_telling(rest));
        break;
      }
      tell(RungKind::step, *open[i], *telling);
    }
    finish_rungs(climb_, ladder_);
    return std::move(ladder_);
  }

 private:
  // Not all at once: what is wrong first may be what the others rest on.
  void ask_about_lines() {
    constexpr std::size_t most_lines = 3;
    for (const JudgedLine& line : climb_.lines) {
      if (ladder_.rungs.size() == most_lines) return;
      if (ask(RungKind::your_line, question_about(line)) || ask(RungKind::your_line, plain_question_about(line)))
        ladder_.rungs.back().line = line.number;
    }
  }

  // The steps that are not there yet, in the order of reading. What is there counts as told.
  std::vector<const AnswerStep*> open_steps() {
    std::vector<const AnswerStep*> open;
    for (const AnswerStep& step : climb_.way.steps) {
      if (climb_.done.contains(step.n)) {
        guard_.told(step.claim);
        named_.insert(step.rule);
      } else if (!is_printed(climb_, step)) {
        open.push_back(&step);
      }
    }
    return open;
  }

  std::optional<Telling> tellable(const AnswerStep& step) {
    for (Telling& telling : tellings_of(step))
      if (!guard_.leak(telling.text(), Told::step)) return std::move(telling);
    return std::nullopt;
  }

  bool ask(RungKind kind, const std::string& sentence, const AnswerStep* step = nullptr) {
    if (sentence.empty() || guard_.leak(sentence, Told::hint)) return false;
    if (std::any_of(ladder_.rungs.begin(), ladder_.rungs.end(), [&](const Rung& r) { return r.text == sentence; })) return false;
    Rung rung;
    rung.kind = kind;
    rung.text = sentence;
    if (step) {
      rung.step = step->n;
      if (kind == RungKind::fact) rung.rule = step->rule;
    }
    ladder_.rungs.push_back(std::move(rung));
    return true;
  }

  // Where the pupil stands every grade is offered; of the later steps, whose kind is known by now, the more telling ones.
  void ask_before(const AnswerStep& step, bool last) {
    const HintSentences sentences = asking_about(climb_, step);
    const std::string fact = name_of_fact(climb_, step);
    const bool again = !fact.empty() && named_.contains(step.rule);
    named_.insert(step.rule);
    if (again) {
      const std::string& where = last || sentences.places.empty() ? sentences.where : sentences.places;
      if (!ask(RungKind::places, "The same fact once more, at another place. " + where, &step))
        ask(RungKind::where, sentences.where, &step);
      return;
    }
    ask(RungKind::where, sentences.where, &step);
    if (fact.empty() || !kind_asked_) {
      ask(RungKind::kind, sentences.kind, &step);
      kind_asked_ = kind_asked_ || !fact.empty();
    }
    if (!fact.empty()) ask(RungKind::fact, "The fact you need: " + fact + ".", &step);
    if (!last) ask(RungKind::places, sentences.places, &step);
  }

  void tell(RungKind kind, const AnswerStep& step, const Telling& telling) {
    Rung rung;
    rung.kind = kind;
    rung.text = telling.text();
    rung.claim = telling.claim;
    rung.reason = telling.reason;
    rung.rule = is_mere_working(step) ? "" : step.rule;
    rung.step = step.n;
    ladder_.rungs.push_back(std::move(rung));
    guard_.told(telling.claim);
  }

  const Climb& climb_;
  LeakGuard guard_;
  Ladder ladder_;
  std::set<std::string> named_;  // rules that were named or told
  bool kind_asked_ = false;
};

// DESIGN's step: a cited theorem, definition or construction. Adding what lies side by side is free.
bool counts(const Climb& climb, const AnswerStep& step) {
  if (is_mere_working(step) || is_printed(climb, step)) return false;
  const auto id = climb.catalogue.find(step.rule);
  return !id || !climb.catalogue[*id].free_step;
}

}  // namespace

const char* name_of(RungKind kind) {
  switch (kind) {
    case RungKind::your_line:
      return "your-line";
    case RungKind::look_again:
      return "look-again";
    case RungKind::where:
      return "where";
    case RungKind::kind:
      return "kind";
    case RungKind::fact:
      return "fact";
    case RungKind::places:
      return "places";
    case RungKind::step:
      return "step";
    case RungKind::answer:
      return "answer";
  }
  return "";
}

Ladder ladder_of(const Climb& climb) { return Builder(climb).build(); }

void finish_rungs(const Climb& climb, Ladder& ladder) {
  std::set<int> told = climb.done;
  int level = 0;
  for (Rung& rung : ladder.rungs) {
    rung.level = ++level;
    rung.points = maths_of(rung.text, climb.statement.names).points;
    if (rung.kind == RungKind::step) told.insert(rung.step);
    rung.steps_left = 0;
    if (rung.kind != RungKind::answer)
      for (const AnswerStep& step : climb.way.steps) rung.steps_left += !told.contains(step.n) && counts(climb, step);
  }
}

}  // namespace prover
