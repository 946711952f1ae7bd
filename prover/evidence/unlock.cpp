#include "prover/evidence/unlock.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "prover/evidence/helping_lines.hpp"
#include "prover/evidence/rule_reach.hpp"
#include "prover/evidence/swapped_given.hpp"
#include "prover/evidence/trial.hpp"
#include "prover/reading/number_text.hpp"

namespace prover {

namespace {

constexpr std::size_t kMostRules = 3;   // in one set
constexpr std::size_t kMostSets = 12;   // looked for
constexpr std::size_t kMostShown = 3;
constexpr LineEffort kLinesInFull{160, 3'000'000, 3};  // when the full report was asked for
constexpr std::size_t kSwapsShown = 2;

std::string title_of(const Rule& rule) { return "“" + (rule.title.empty() ? rule.id : rule.title) + "”"; }

std::string titles_of(const std::vector<RuleId>& rules, const Catalogue& catalogue) {
  std::vector<std::string> titles;
  for (const RuleId rule : rules) {
    std::string title = title_of(catalogue[rule]);
    if (std::find(titles.begin(), titles.end(), title) != titles.end()) title += " (" + catalogue[rule].id + ")";
    titles.push_back(std::move(title));
  }
  return enumerated(titles);
}

// "; then ∠KPL = 90°": what comes of it, when one value is asked for.
std::string outcome(const Answer& trial, const Statement& statement) {
  if (trial.value.empty() || statement.goals.size() != 1 || statement.goals[0].kind != GoalKind::find) return "";
  const Expression& asked = statement.goals[0].claims[0].relation.expressions[0];
  const bool angle = std::any_of(asked.terms.begin(), asked.terms.end(), [](const Term& t) { return std::holds_alternative<Angle>(t.quantity); });
  const auto number = Rational::parse(trial.value);
  return "; then " + describe(asked, statement.names) + " = " + (number && angle ? degrees_text(*number) : trial.value);
}

// The course that the class follows: the one of which it has been taught the longest beginning, and nothing from behind;
// else the default course.
const Course& course_followed(const Catalogue& catalogue, const std::vector<bool>& allowed) {
  const Course* followed = nullptr;
  std::size_t furthest = 0;
  for (const Course& course : catalogue.courses) {
    std::size_t taught = 0;
    while (taught < course.entries.size() && allowed[course.entries[taught].rule.index()]) ++taught;
    if (taught <= furthest || taught == course.entries.size()) continue;
    const bool later = std::any_of(course.entries.begin() + static_cast<std::ptrdiff_t>(taught), course.entries.end(), [&](const CourseEntry& e) {
      return allowed[e.rule.index()] && !catalogue[e.rule].meaning && catalogue[e.rule].kind != RuleKind::definition;
    });
    if (later) continue;
    followed = &course;
    furthest = taught;
  }
  return followed ? *followed : default_course(catalogue);
}

bool speaks_of_angles(const Statement& statement) {
  const auto angles = [](const Phrase& claim) {
    for (const Expression& expression : claim.relation.expressions)
      for (const Term& term : expression.terms)
        if (std::holds_alternative<Segment>(term.quantity)) return false;
    return claim.predicate == Predicate::relation;
  };
  return std::all_of(statement.goals.begin(), statement.goals.end(), [&](const Goal& goal) {
    return std::all_of(goal.claims.begin(), goal.claims.end(), angles);
  });
}

class Unlocker {
 public:
  Unlocker(const std::vector<Statement>& statements, const AttemptOptions& options, const Budget& budget, Answer& answer)
      : statements_(statements), options_(options), catalogue_(options.catalogue), budget_(budget), answer_(answer) {}

  // False when no rule of the catalogue would do.
  bool by_rules(const std::vector<Solved>& solved, bool in_full) {
    std::vector<bool> everything(catalogue_.rules.size(), true);
    bool restricted = false;
    for (std::size_t i = 0; i < everything.size(); ++i) {
      everything[i] = options_.allowed[i] || !catalogue_.rules[i].assumed;
      restricted = restricted || everything[i] != options_.allowed[i];
    }
    if (!restricted) return false;
    AttemptOptions full = options_;
    full.allowed = everything;
    std::optional<Attempt> attempt = full_attempt(solved[0], full);
    if (!attempt) return false;
    try {
      RuleReach reach(*attempt);
      add_sets(reach);
      add_chapter(reach);
      if (in_full) add_swaps(*attempt);
    } catch (const RowOverflow&) {
      return false;  // numbers too large to search with
    }
    return !answer_.unlocked_by.empty();
  }

  void by_lines(const std::vector<Solved>& solved, const LineEffort& effort) {
    if (statements_.size() != 1) return;
    for (const HelpingLine& line : helping_lines(statements_[0], solved[0], options_, effort, budget_)) {
      AnswerUnlock unlock;
      unlock.lines = {line.sentence};
      unlock.text = fmt::format("One line more would do with these rules: {} (add: {}).", line.words, line.sentence);
      say(std::move(unlock));
    }
  }

 private:
  // With the drawn lines, or with points joined; in the arrangement that the figures share, or in the first one.
  std::optional<Attempt> full_attempt(const Solved& solved, const AttemptOptions& full) {
    const auto& figures = solved.figures.sketches;
    std::vector<std::vector<Sketch>> views{figures};
    if (figures.size() > 1) views.push_back({figures[0]});
    for (const std::vector<Sketch>& view : views)
      for (const bool join : {false, true}) {
        if (budget_.exhausted()) return std::nullopt;
        AttemptOptions one = full;
        one.join_points = join;
        StageTimes times;
        Attempt tried = attempt(statements_[0], view, one, budget_.share(0.4), times);
        if (tried.all_reached) return tried;
      }
    return std::nullopt;
  }

  std::optional<Answer> proved_with(const std::vector<bool>& allowed) {
    AttemptOptions more = options_;
    more.allowed = allowed;
    Answer trial = try_again(statements_, more, for_a_trial(budget_));
    if (trial.verdict != Verdict::proved) return std::nullopt;
    return trial;
  }

  void add_sets(RuleReach& reach) {
    std::vector<std::vector<RuleId>> sets = reach.smallest_additions(options_.allowed, kMostRules, kMostSets, budget_.share(0.4));
    // Those that the course reaches first come first.
    const Course& course = course_followed(catalogue_, options_.allowed);
    const auto latest = [&](const std::vector<RuleId>& set) {
      std::size_t place = 0;
      for (const RuleId rule : set) place = std::max(place, course.place_of(rule).value_or(course.entries.size()));
      return place;
    };
    std::stable_sort(sets.begin(), sets.end(), [&](const auto& a, const auto& b) { return latest(a) < latest(b); });
    std::size_t shown = 0;
    for (const std::vector<RuleId>& set : sets) {
      if (shown >= kMostShown || budget_.exhausted()) break;
      std::vector<bool> allowed = options_.allowed;
      for (const RuleId rule : set) allowed[rule.index()] = true;
      const auto trial = proved_with(allowed);
      if (!trial) continue;
      ++shown;
      AnswerUnlock unlock;
      for (const RuleId rule : set) unlock.rules.push_back(catalogue_[rule].id);
      unlock.text = set.size() == 1 ? fmt::format("One more theorem would do: {}{}.", titles_of(set, catalogue_), outcome(*trial, statements_[0]))
                                    : fmt::format("{} more theorems together would do: {}{}.", set.size() == 2 ? "Two" : "Three",
                                                  titles_of(set, catalogue_), outcome(*trial, statements_[0]));
      say(std::move(unlock));
    }
  }

  // The shortest beginning of the course that reaches the goal beside what is taught.
  void add_chapter(RuleReach& reach) {
    const Course& course = course_followed(catalogue_, options_.allowed);
    const auto with_beginning = [&](std::size_t length) {
      std::vector<bool> allowed = options_.allowed;
      for (std::size_t i = 0; i < length; ++i) allowed[course.entries[i].rule.index()] = true;
      return allowed;
    };
    std::size_t low = 0, high = course.entries.size();
    if (!reach.reaches(with_beginning(high))) return;
    while (low + 1 < high) {
      const std::size_t middle = (low + high) / 2;
      (reach.reaches(with_beginning(middle)) ? high : low) = middle;
    }
    const auto trial = proved_with(with_beginning(high));
    if (!trial) return;
    const CourseEntry& last = course.entries[high - 1];
    AnswerUnlock unlock;
    unlock.course = course.id;
    unlock.chapter = last.chapter;
    unlock.up_to = catalogue_[last.rule].id;
    unlock.text = fmt::format("In the course “{}” it comes within reach {}with {} (taught: {} up to {}).",
                              course.title.empty() ? course.id : course.title,
                              last.chapter.empty() ? "" : "in the chapter “" + last.chapter + "”, ", title_of(catalogue_[last.rule]),
                              course.id, catalogue_[last.rule].id);
    say(std::move(unlock));
  }

  void add_swaps(const Attempt& full) {
    if (statements_.size() != 1) return;
    for (const SwappedGiven& swap : swapped_givens(statements_[0], full, options_, kSwapsShown, budget_))
      answer_.unlock.push_back(swap.dropped.empty()
                                   ? fmt::format("Or tell them {} as well: then it can be done with what is taught.", swap.told)
                                   : fmt::format("Or give {} in the place of {}: then it can be done with what is taught.", swap.told, swap.dropped));
  }

  void say(AnswerUnlock unlock) {
    answer_.unlock.push_back(unlock.text);
    answer_.unlocked_by.push_back(std::move(unlock));
  }

  const std::vector<Statement>& statements_;
  const AttemptOptions& options_;
  const Catalogue& catalogue_;
  Budget budget_;
  Answer& answer_;
};

}  // namespace

void add_unlock(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
                bool in_full, const Budget& budget, Answer& answer) {
  if (answer.verdict != Verdict::beyond_rules && answer.verdict != Verdict::unknown) return;
  if (statements.empty() || solved.empty() || solved[0].figures.sketches.empty() || budget.exhausted()) return;
  Unlocker unlocker(statements, options, budget, answer);
  const bool by_rules = unlocker.by_rules(solved, in_full);
  if (in_full || !by_rules) unlocker.by_lines(solved, in_full ? kLinesInFull : LineEffort());
  const auto forced = [](const SolvedCase& c) {
    const auto& values = c.attempt.forced_by_directions;
    return std::any_of(values.begin(), values.end(), [](const std::string& value) { return !value.empty(); });
  };
  const bool by_angles = std::any_of(solved.begin(), solved.end(), [&](const Solved& one) {
    return std::any_of(one.cases.begin(), one.cases.end(), forced);
  });
  if (!by_angles && answer.verdict == Verdict::beyond_rules && speaks_of_angles(statements[0]))
    answer.unlock.push_back("Adding and subtracting angles alone does not give it: lengths or a circle come in.");
}

}  // namespace prover
