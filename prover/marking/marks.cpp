#include "prover/marking/marks.hpp"

#include <algorithm>

#include "prover/marking/marks_credit.hpp"
#include "prover/marking/scheme_words.hpp"

namespace prover {

namespace {

class Marker {
 public:
  Marker(const Judgement& judgement, const Scheme& scheme, const Credits& credits)
      : judgement_(judgement), scheme_(scheme), credits_(credits), awarded_(scheme.marks.size()) {
    marks_.lines.resize(judgement.lines.size());
    for (std::size_t i = 0; i < marks_.lines.size(); ++i) marks_.lines[i].note = credits.notes[i];
  }

  Marks run() {
    std::size_t row_of_mark = 0;
    std::vector<const SchemeRow*> rows(scheme_.marks.size(), nullptr);
    for (const SchemeRow& row : scheme_.rows)
      for (const std::size_t i : row.marks) rows[i] = &row;
    for (; row_of_mark < rows.size(); ++row_of_mark)
      if (rows[row_of_mark] != nullptr) give(row_of_mark, *rows[row_of_mark]);
    return std::move(marks_);
  }

 private:
  const StepCredit& credit(int step) const { return credits_.steps[static_cast<std::size_t>(step) - 1]; }
  bool methods() const { return scheme_.policy.marks_methods(); }

  // Stated by a line with a larger gap before it than the scheme allows: a bare answer, which shows no method.
  bool is_leap(int step) const {
    const int by = credit(step).line;
    if (by < 0) return false;
    const JudgedLine& line = judgement_.lines[static_cast<std::size_t>(by)];
    return line.status == LineStatus::unsupported && line.gap > scheme_.policy.largest_gap;
  }

  // A right line that rests on the step, near or far, shows that its method was known.
  bool implied(int step) const {
    for (std::size_t later = static_cast<std::size_t>(step); later < judgement_.way->steps.size(); ++later) {
      const std::vector<int>& uses = judgement_.way->steps[later].uses;
      const int n = static_cast<int>(later) + 1;
      if (std::count(uses.begin(), uses.end(), step) && ((credit(n).level == Level::full && !is_leap(n)) || implied(n))) return true;
    }
    return false;
  }
  bool is_stated(const SchemeMark& mark, int step) const {
    switch (mark.earned_by) {
      case MarkFor::answer:
      case MarkFor::conclusion: return credit(step).level == Level::full;
      case MarkFor::statement:
      case MarkFor::fact:
        if (methods() && implied(step)) return true;
        if (methods() && mark.earned_by == MarkFor::statement) return credit(step).level >= Level::slip;
        return credit(step).level >= Level::carried;
      case MarkFor::reason:
      case MarkFor::both:
      case MarkFor::construction: return credit(step).level >= Level::carried;
    }
    return false;
  }
  // No reason without its statement.
  int reason_line(const std::vector<int>& group) const {
    for (const int step : group)
      if (credit(step).reason >= 0 && credit(step).level >= (methods() ? Level::slip : Level::carried)) return credit(step).reason;
    return -1;
  }

  void give(std::size_t i, const SchemeRow& row) {
    const SchemeMark& mark = scheme_.marks[i];
    bool all = true, any = false;
    int earned_on = -1;
    for (const int step : mark.states) {
      all = all && is_stated(mark, step);
      earned_on = std::max(earned_on, credit(step).line);
    }
    int reasoned_on = -1;
    for (const std::vector<int>& group : mark.reasons) {
      const int line = reason_line(group);
      any = any || line >= 0;
      all = all && (line >= 0 || mark.any_reason);
      if (mark.states.empty() && line >= 0) reasoned_on = mark.any_reason && reasoned_on >= 0 ? reasoned_on : std::max(reasoned_on, line);
    }
    if (mark.any_reason) all = all && any;
    for (const std::size_t other : mark.needs) all = all && awarded_[other];
    if (mark.states.empty()) earned_on = reasoned_on;
    // A method that is only implied stands on the line that implies it.
    if (all && earned_on < 0) earned_on = implying_line(mark);
    awarded_[i] = all;
    const int line = all ? earned_on : lost_on(mark);
    GivenMark given{mark.code, all ? mark.marks : 0, mark.marks, row.statement, mark.states};
    if (!row.reason.empty()) given.what += " (" + row.reason + ")";
    marks_.possible += mark.marks;
    marks_.awarded += given.awarded;
    if (line < 0) {
      marks_.missing.push_back(std::move(given));
      return;
    }
    LineMarks& to = marks_.lines[static_cast<std::size_t>(line)];
    to.awarded += given.awarded;
    to.possible += given.possible;
    to.marks.push_back(std::move(given));
  }

  int implying_line(const SchemeMark& mark) const {
    for (std::size_t later = static_cast<std::size_t>(mark.states.back()); later < credits_.steps.size(); ++later)
      if (credits_.steps[later].level == Level::full) return credits_.steps[later].line;
    return -1;
  }

  // The line that tried for it: where the statement is missing, the one that got it wrong; where it stands without its
  // reason, that line.
  int lost_on(const SchemeMark& mark) const {
    for (const int step : mark.states)
      if (!is_stated(mark, step)) return credit(step).line >= 0 ? credit(step).line : credit(step).tried;
    for (const int step : mark.states)
      if (credit(step).line >= 0) return credit(step).line;
    for (const std::vector<int>& group : mark.reasons) {
      if (reason_line(group) >= 0) continue;
      for (const int step : group)
        if (credit(step).line >= 0) return credit(step).line;
      for (const int step : group)
        if (credit(step).tried >= 0) return credit(step).tried;
      if (!mark.any_reason) return -1;
    }
    return -1;
  }

  const Judgement& judgement_;
  const Scheme& scheme_;
  const Credits& credits_;
  std::vector<bool> awarded_;
  Marks marks_;
};

}  // namespace

Marks marks_of(const Judgement& judgement, const Scheme& scheme) {
  Marks marks;
  if (!judgement.way || judgement.way->steps.empty()) {
    marks.lines.resize(judgement.lines.size());
    marks.notes.push_back("There is no scheme: nothing is proved of the problem with what is taught.");
    return marks;
  }
  const Credits credits = credits_of(judgement, scheme);
  marks = Marker(judgement, scheme, credits).run();
  marks.notes.insert(marks.notes.end(), credits.on_the_whole.begin(), credits.on_the_whole.end());
  if (!scheme.note.empty()) marks.notes.push_back(scheme.note);
  return marks;
}

}  // namespace prover
