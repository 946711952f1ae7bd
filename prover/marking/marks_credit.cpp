#include "prover/marking/marks_credit.hpp"

#include <algorithm>

#include "prover/marking/marks_lines.hpp"
#include "prover/marking/scheme_words.hpp"

namespace prover {

namespace {

const std::string& words_of(const JudgedLine& line) { return line.read_as.empty() ? line.text : line.read_as; }

class Crediting {
 public:
  Crediting(const Judgement& judgement, const Scheme& scheme)
      : judgement_(judgement), scheme_(scheme), way_(*judgement.way), closing_(static_cast<int>(way_.steps.size())) {
    result_.steps.resize(way_.steps.size());
    result_.notes.resize(judgement.lines.size());
  }

  Credits run() {
    for (line_ = 0; line_ < judgement_.lines.size(); ++line_) read(judgement_.lines[line_]);
    // What nothing needs may still be the only line that states a step.
    for (line_ = 0; line_ < judgement_.lines.size(); ++line_)
      if (const JudgedLine& line = judgement_.lines[line_]; line.status == LineStatus::not_needed && !line.steps.empty())
        state(line, Level::full, true);
    if (judgement_.complete && every_line_holds() && is_shown()) credit_what_lies_between();
    note_crossed_out();
    return std::move(result_);
  }

 private:
  const SchemePolicy& policy() const { return scheme_.policy; }
  StepCredit& credit(int step) { return result_.steps[static_cast<std::size_t>(step) - 1]; }
  const AnswerStep& step(int n) const { return way_.steps[static_cast<std::size_t>(n) - 1]; }
  void note(const char* text) { result_.notes[line_] = text; }

  void read(const JudgedLine& line) {
    if (line.status == LineStatus::assumes_the_claim || line.status == LineStatus::circular || rests_on_assumed(line)) assumed_.push_back(line.number);
    switch (line.status) {
      case LineStatus::remark:
      case LineStatus::crossed_out:
      case LineStatus::unread:
      case LineStatus::not_needed: return;
      case LineStatus::right:
      case LineStatus::right_no_reason:
        // What rests on what is to be shown shows nothing (ZA5: to assume the answer is not acceptable).
        return state(line, line.stated && !rests_on_assumed(line) ? Level::full : Level::none, true);
      case LineStatus::wrong_reason:
      case LineStatus::reason_not_accepted:
      case LineStatus::given:
      case LineStatus::one_example:
      case LineStatus::ambiguous_name:
      case LineStatus::circular:
      case LineStatus::assumes_the_claim: return state(line, line.stated ? Level::full : Level::none, true);
      case LineStatus::construction: return state(line, Level::full, true);
      case LineStatus::not_taught: return read_untaught(line);
      case LineStatus::unsupported: return read_gap(line);
      case LineStatus::follows_from_error: return read_carried(line);
      case LineStatus::arithmetic_slip:
        went_wrong_ = true;
        if (policy().arithmetic_slip == Slip::accuracy_only) return state(line, Level::slip, true);
        return state(line, Level::none, false);
      case LineStatus::false_line: return read_false(line);
    }
  }

  // Lines use earlier ones only, so one look at each is enough.
  bool rests_on_assumed(const JudgedLine& line) const {
    return std::any_of(line.uses.begin(), line.uses.end(), [&](int use) { return std::count(assumed_.begin(), assumed_.end(), use) > 0; });
  }

  // Not a bare answer: some line has its reason.
  bool is_shown() const {
    return std::any_of(judgement_.lines.begin(), judgement_.lines.end(), [](const JudgedLine& line) {
      return line.status == LineStatus::right && line.reasoned && !line.steps.empty();
    });
  }

  bool every_line_holds() const {
    return judgement_.first_break.empty() && std::all_of(judgement_.lines.begin(), judgement_.lines.end(), [](const JudgedLine& line) {
      switch (line.status) {
        case LineStatus::right:
        case LineStatus::right_no_reason:
        case LineStatus::reason_not_accepted:
        case LineStatus::given:
        case LineStatus::construction:
        case LineStatus::not_needed:
        case LineStatus::remark: return true;
        default: return false;
      }
    });
  }

  // Each line follows and the end is reached: then a step that no line states was passed through by one that rests on it, or
  // was not needed on this pupil's way. What counts is that each line follows.
  void credit_what_lies_between() {
    int last = -1;
    for (const StepCredit& c : result_.steps) last = std::max(last, c.line);
    for (int n = closing_; n >= 1; --n) {
      if (credit(n).level != Level::none) continue;
      int by = -1;
      for (int later = n + 1; later <= closing_; ++later)
        if (std::count(step(later).uses.begin(), step(later).uses.end(), n) && credit(later).line >= 0 && (by < 0 || credit(later).line < by))
          by = credit(later).line;
      if (by < 0) by = last;
      if (by < 0) return;
      credit(n).level = Level::full;
      credit(n).line = by;
      const JudgedLine& line = judgement_.lines[static_cast<std::size_t>(by)];
      if (line.status == LineStatus::right && line.reasoned) credit(n).reason = by;
    }
  }

  // The judge names the steps of a line that stands. For others, and where it names none, the words tell.
  std::vector<int> steps_meant(const JudgedLine& line) {
    if (!line.steps.empty()) return line.steps;
    std::vector<int> open;
    for (int n = 1; n <= closing_; ++n)
      if (credit(n).level < Level::full) open.push_back(n);
    if (line.status == LineStatus::construction) {
      for (const int n : open)
        if (step(n).rule == "construction") return {n};
      return {};
    }
    const auto found = step_meant(words_of(line), way_.steps, open);
    return found ? std::vector<int>{*found} : std::vector<int>{};
  }

  void state(const JudgedLine& line, Level level, bool with_reason) {
    const std::vector<int> steps = steps_meant(line);
    for (const int n : steps) state_step(n, level);
    if (level == Level::none || !with_reason) return;
    for (const int n : steps_reasoned(line, steps))
      if (credit(n).reason < 0) credit(n).reason = static_cast<int>(line_);
  }
  void state_step(int n, Level level) {
    if (n < 1 || n > closing_) return;
    StepCredit& to = credit(n);
    if (level == Level::none) {
      to.tried = static_cast<int>(line_);
    } else if (level > to.level) {
      if (n == closing_ && loses_degree()) {
        to.tried = static_cast<int>(line_);
        note("the sign ° is missing, which costs the mark for the answer in this scheme");
        return;
      }
      to.level = level;
      to.line = static_cast<int>(line_);
    }
  }

  bool loses_degree() const {
    const std::string& text = judgement_.lines[line_].text;
    return policy().missing_degree == Degree::loses_answer && scheme_.finds && short_statement(step(closing_)).find("°") != std::string::npos &&
           text.find("°") == std::string::npos && text.find("deg") == std::string::npos && text.find("º") == std::string::npos;
  }

  // What a scheme forgives or refuses in the words of a reason goes before what the judge made of them.
  std::vector<int> steps_reasoned(const JudgedLine& line, const std::vector<int>& steps) {
    const auto by = [&](Acceptance acceptance, const char* refused) {
      if (acceptance == Acceptance::refused) {
        note(refused);
        return std::vector<int>{};
      }
      std::vector<int> reasoned = line.reasoned_steps;
      if (!steps.empty() && !std::count(reasoned.begin(), reasoned.end(), steps.back())) reasoned.push_back(steps.back());
      return reasoned;
    };
    switch (line.lacks) {
      case ReasonLack::lines: return by(policy().lines_not_named, "this scheme asks which lines are parallel");
      case ReasonLack::relation: return by(policy().bare_name, "this scheme asks for the whole phrase: equal, or the sum");
      case ReasonLack::nickname: return by(policy().nickname, "this scheme does not accept the nickname");
      case ReasonLack::nothing:
      case ReasonLack::absent:
      case ReasonLack::vague:
      case ReasonLack::other: break;
    }
    if (line.reasoned && line.reasoned_steps.empty() && steps.size() == 1) return steps;
    return line.reasoned_steps;
  }

  void read_untaught(const JudgedLine& line) {
    switch (policy().untaught_theorem) {
      case Untaught::accepted: return state(line, Level::full, true);
      case Untaught::statement_only:
        note("a theorem that was not taught: the statement earns its mark, the reason does not");
        return state(line, Level::full, false);
      case Untaught::nothing:
        note("a theorem that was not taught earns nothing in this scheme");
        return state(line, Level::none, false);
    }
  }

  void read_gap(const JudgedLine& line) {
    const std::vector<int> steps = steps_meant(line);
    const bool answers = scheme_.finds && std::count(steps.begin(), steps.end(), closing_) > 0 &&
                         spoken(words_of(line)).number == spoken(short_statement(step(closing_))).number;
    if (answers && policy().bare_answer == BareAnswer::full_unless_reasons_asked && !scheme_.reasons_asked && !went_wrong_) {
      note("the right answer implies its method; reasons are not seen");
      for (int n = 1; n <= closing_; ++n) state_step(n, Level::full);
      return state(line, Level::full, true);
    }
    // To show a claim by the claim alone is to show nothing, however short the way.
    const bool alone = std::all_of(result_.steps.begin(), result_.steps.end(), [](const StepCredit& c) { return c.line < 0; });
    const bool small = line.gap > 0 && line.gap <= policy().largest_gap && (scheme_.finds || !alone);
    if (small) {
      note("the gap is small enough for this scheme: the statement earns its mark, what is left out does not");
      return state_last(line, steps, Level::full);
    }
    if (answers && policy().bare_answer != BareAnswer::nothing) {
      note("the right answer without the way to it: the mark for the answer only");
      return state_last(line, steps, Level::full);
    }
    state_last(line, steps, Level::none);
  }
  // Over a gap only what the line says itself is stated.
  void state_last(const JudgedLine& line, const std::vector<int>& steps, Level level) {
    if (steps.empty()) return;
    state_step(steps.back(), level);
    if (level == Level::none) return;
    const std::vector<int> reasoned = steps_reasoned(line, {steps.back()});
    if (std::count(reasoned.begin(), reasoned.end(), steps.back()) && credit(steps.back()).reason < 0)
      credit(steps.back()).reason = static_cast<int>(line_);
  }

  void read_false(const JudgedLine& line) {
    went_wrong_ = true;
    const Spoken said = spoken(words_of(line));
    const auto& givens = judgement_.problem.read_as;
    if (std::any_of(givens.begin(), givens.end(), [&](const std::string& given) { return same_but_number(said, spoken(given)); })) {
      if (!first_error_) miscopied_ = true;
      note("a given with another number");
    }
    first_error_ = true;
    stopped_ = stopped_ || impossible_angle(words_of(line));
    if (policy().letter_order == LetterOrder::lenient)
      for (int n = 1; n <= closing_; ++n)
        if (same_triangles_otherwise(said, spoken(short_statement(step(n))))) {
          note("the letters do not correspond; this scheme lets it pass");
          state_step(n, Level::full);
          for (const int reasoned : line.reasoned_steps)
            if (reasoned == n) credit(n).reason = static_cast<int>(line_);
          return;
        }
    state(line, Level::none, false);
  }

  void read_carried(const JudgedLine& line) {
    went_wrong_ = true;
    if (stopped_) {
      note("after an angle that cannot be, errors are carried no further");
      return state(line, Level::none, false);
    }
    if (impossible_angle(words_of(line))) {
      stopped_ = true;
      note("no angle has this size: errors are carried no further");
      return state(line, Level::none, false);
    }
    const CarriedErrors carried = !miscopied_                                     ? policy().carried_errors
                                  : policy().miscopied_number == Miscopied::carried ? CarriedErrors::all
                                  : policy().miscopied_number == Miscopied::method  ? CarriedErrors::method
                                                                                    : CarriedErrors::nothing;
    switch (carried) {
      case CarriedErrors::all: return state(line, Level::full, true);
      case CarriedErrors::method: return state(line, Level::carried, true);
      case CarriedErrors::nothing: return state(line, Level::none, false);
    }
  }

  void note_crossed_out() {
    const bool crossed_out = std::any_of(judgement_.lines.begin(), judgement_.lines.end(),
                                         [](const JudgedLine& line) { return line.status == LineStatus::crossed_out; });
    if (crossed_out && !judgement_.complete && policy().replaced_work == Replaced::looked_at)
      result_.on_the_whole.push_back("Work is crossed out. Where nothing stands in its place, this scheme has it marked: look at it.");
  }

  const Judgement& judgement_;
  const Scheme& scheme_;
  const AnswerProof& way_;
  const int closing_;
  Credits result_;
  std::size_t line_ = 0;
  bool went_wrong_ = false, first_error_ = false, miscopied_ = false;
  std::vector<int> assumed_;  // lines that take for granted what is to be shown, and those that rest on them
  bool stopped_ = false;      // an angle that cannot be
};

}  // namespace

Credits credits_of(const Judgement& judgement, const Scheme& scheme) { return Crediting(judgement, scheme).run(); }

}  // namespace prover
