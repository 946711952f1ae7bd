#include "prover/evidence/selecting.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

bool is_nameless(const std::string& name) { return name.empty() || name[0] < 'A' || name[0] > 'Z'; }

// Read as a reader's text would be; nothing when it is not understood or brings new points.
std::optional<std::vector<Phrase>> read(const std::string& sentence, const Names& names) {
  Names known = names;
  std::vector<Diagnostic> mistakes;
  std::vector<Phrase> phrases = parse_phrases(sentence, known, mistakes);
  if (has_error(mistakes) || phrases.empty() || known.points.size() != names.points.size()) return std::nullopt;
  return phrases;
}

std::string in_words(const std::vector<std::string>& sentences) {
  std::string text;
  for (const std::string& sentence : sentences) text += (text.empty() ? "" : "; ") + sentence;
  return text;
}

class Selection {
 public:
  Selection(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
            const Budget& budget)
      : statements_(statements), solved_(solved), options_(options), budget_(budget) {}

  std::string sentence_for(std::size_t s, const SolvedCase& one) const {
    const std::vector<std::string> chosen = choices_of_words(s);
    std::vector<std::string> told = chosen;
    for (const Position& p : one.told_by)
      if (auto sentence = readable(p)) told.push_back(std::move(*sentence));
    if (!told.empty() && leaves(told, one)) return in_words(told);
    // Else one position that the proof reads, then all of them.
    std::set<Position> positions;
    for (const auto& goal : one.attempt.goals) positions.merge(seen_positions(goal->proof));
    std::vector<std::string> all = chosen;
    for (const Position& p : positions) {
      if (budget_.exhausted()) return {};
      const auto sentence = readable(p);
      if (!sentence) continue;
      all.push_back(*sentence);
      std::vector<std::string> alone = chosen;
      alone.push_back(*sentence);
      if (alone != told && leaves(alone, one)) return in_words(alone);
    }
    return all.size() > chosen.size() + 1 && leaves(all, one) ? in_words(all) : "";
  }

 private:
  std::optional<std::string> readable(const Position& p) const {
    for (std::string& sentence : sentences_for(p, statements_[0].names))
      if (read(sentence, statements_[0].names)) return std::move(sentence);
    return std::nullopt;
  }

  // "KL = KM": what the words left open and this statement chooses.
  std::vector<std::string> choices_of_words(std::size_t s) const {
    std::vector<std::string> choices;
    const Statement& statement = statements_[s];
    for (std::size_t g = 0; g < statement.givens.size(); ++g) {
      const Phrase& phrase = statement.givens[g].phrase;
      const bool chosen = phrase.predicate == Predicate::isosceles_at &&
                          std::any_of(statements_.begin(), statements_.end(), [&](const Statement& other) {
                            return other.givens[g].phrase.points != phrase.points;
                          });
      if (!chosen) continue;
      const auto name = [&](std::size_t i) { return statement.names.of(phrase.points[i]); };
      choices.push_back(fmt::format("{0}{1} = {0}{2}", name(0), name(1), name(2)));
    }
    return choices;
  }

  // With these sentences the problem is proved, and every arrangement that is left has the value of this case.
  bool leaves(const std::vector<std::string>& sentences, const SolvedCase& one) const {
    std::vector<Phrase> phrases;
    for (const std::string& sentence : sentences) {
      const auto said = read(sentence, statements_[0].names);
      if (!said) return false;
      phrases.insert(phrases.end(), said->begin(), said->end());
    }
    bool any = false;
    for (Statement statement : statements_) {
      for (const Phrase& phrase : phrases) statement.givens.push_back({phrase, describe(phrase, statement.names), false});
      StageTimes times;
      double sketch_ms = 0;
      const Solved solved = solve(statement, options_, budget_.share(0.5), times, sketch_ms);
      if (solved.cases.empty()) return false;
      if (const auto& conflict = solved.cases[0].attempt.contradiction; conflict && trusted(*conflict)) continue;
      if (!solved.covers_all_figures || solved.figures.sketches.empty()) return false;
      for (const SolvedCase& left : solved.cases)
        for (std::size_t g = 0; g < left.attempt.goals.size(); ++g) {
          const auto& goal = left.attempt.goals[g];
          if (!goal || !trusted(*goal) || goal->value != one.attempt.goals[g]->value) return false;
        }
      any = true;
    }
    return any;
  }

  const std::vector<Statement>& statements_;
  const std::vector<Solved>& solved_;
  const AttemptOptions& options_;
  const Budget& budget_;
};

}  // namespace

std::vector<std::string> sentences_for(const Position& p, const Names& names) {
  const auto name = [&](PointId point) -> const std::string& { return names.of(point); };
  const std::string &a = name(p.a), &b = name(p.b), &c = name(p.c);
  switch (p.kind) {
    case PositionKind::between: {
      const std::string order = fmt::format("line: {}, {}, {} in this order", a, b, c);
      // A point that the text names last is the one whose place was left open.
      if (p.b > p.a && p.b > p.c) return {fmt::format("{} lies between {} and {}", b, a, c), order};
      if (p.c > p.a && p.c > p.b) return {fmt::format("{} lies on {}{} produced", c, a, b), order};
      return {fmt::format("{} lies on {}{} produced", a, c, b), order};
    }
    case PositionKind::same_side:
    case PositionKind::opposite_sides: {
      if (is_nameless(c) || is_nameless(name(p.d))) return {};
      const char* which = p.kind == PositionKind::same_side ? "the same side" : "opposite sides";
      return {fmt::format("{} and {} are on {} of {}{}", a, b, which, c, name(p.d))};
    }
    case PositionKind::not_collinear:
      return {fmt::format("triangle: {}{}{}", a, b, c)};
  }
  return {};
}

void select_cases(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
                  const Budget& budget, Answer& answer) {
  const Selection selection(statements, solved, options, budget);
  for (std::size_t s = 0; s < statements.size(); ++s)
    for (const SolvedCase& one : solved[s].cases) {
      const auto& goals = one.attempt.goals;
      if (goals.empty() || !std::all_of(goals.begin(), goals.end(), [](const auto& goal) { return goal && trusted(*goal); }))
        continue;
      const std::string name = case_name(statements[s], one);
      std::string sentence;
      for (AnswerCase& shown : answer.cases) {
        if (shown.name != name || shown.verdict != Verdict::proved) continue;
        if (sentence.empty()) sentence = selection.sentence_for(s, one);
        shown.selects = sentence;
      }
    }
}

}  // namespace prover
