#include "prover/evidence/helping_lines.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "prover/base/log.hpp"
#include "prover/evidence/line_candidates.hpp"
#include "prover/evidence/trial.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

constexpr std::size_t kMostPoints = 10;     // of a figure in which lines are sought: joined, they are 45 lines already
constexpr std::size_t kFiguresCompared = 3;
constexpr std::size_t kMostInstances = 40'000;

// A letter that the problem does not use.
std::string free_letter(const Names& names) {
  for (char c : {'X', 'Y', 'Z', 'W', 'V', 'U', 'T', 'S', 'R', 'Q', 'P', 'N', 'M', 'L', 'K', 'J', 'I', 'H', 'G', 'F', 'E', 'D', 'C', 'B', 'A'})
    if (std::find(names.points.begin(), names.points.end(), std::string(1, c)) == names.points.end()) return std::string(1, c);
  return "X1";
}

std::optional<Statement> with_line(const Statement& statement, const std::string& sentence) {
  Statement more = statement;
  std::vector<Diagnostic> mistakes;
  const std::vector<Phrase> phrases = parse_phrases(sentence, more.names, mistakes);
  if (!mistakes.empty() || phrases.empty() || more.names.points.size() != statement.names.points.size() + 1) return std::nullopt;
  more.hidden.resize(more.names.points.size(), false);
  AddedSentence added{"Draw: " + sentence, {}, {}};
  for (const Phrase& phrase : phrases) {
    added.givens.push_back(more.givens.size());
    more.givens.push_back({phrase, describe(phrase, more.names), true});
  }
  more.added.push_back(std::move(added));
  return more;
}

struct Ranked {
  const LineCandidate* candidate;
  int shows;
};

}  // namespace

std::vector<HelpingLine> helping_lines(const Statement& statement, const Solved& solved, const AttemptOptions& options,
                                       const LineEffort& effort, const Budget& budget) {
  const auto& figures = solved.figures.sketches;
  std::vector<HelpingLine> found;
  if (figures.empty() || statement.names.points.size() > kMostPoints) return found;
  Arrangement lines(figure_text(statement), {});
  lines.freeze();
  const std::vector<LineCandidate> candidates = line_candidates(statement, lines, figures[0], free_letter(statement.names));
  std::vector<Ranked> ranked;
  for (const LineCandidate& candidate : candidates) {
    int shows = 1000;
    for (std::size_t i = 0; i < std::min(kFiguresCompared, figures.size()); ++i) {
      const auto place = candidate.place(figures[i]);
      shows = place ? std::min(shows, coincidences(*place, figures[i], statement.hidden) - candidate.built_in) : -1000;
    }
    if (shows > 0) ranked.push_back({&candidate, shows});
  }
  std::stable_sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) {
    return std::pair(-a.shows, a.candidate->effort) < std::pair(-b.shows, b.candidate->effort);
  });
  AttemptOptions joined = options;
  joined.join_points = true;
  std::set<std::pair<long, long>> places;  // one construction is enough for a point
  std::size_t tried = 0, matches = 0;
  for (const Ranked& one : ranked) {
    if (tried >= effort.most_tried || matches >= effort.most_matches || found.size() >= effort.wanted || budget.exhausted()) break;
    const auto first = one.candidate->place(figures[0]);
    const auto key = std::pair(std::lround((*first)[0] * 1e5), std::lround((*first)[1] * 1e5));
    if (places.contains(key)) continue;
    const std::optional<Statement> more = with_line(statement, one.candidate->sentence);
    if (!more) continue;
    ++tried;
    // In one drawn figure first: quick, and without success there is none in all of them.
    Sketch figure = figures[0];
    figure.points.push_back(*first);
    StageTimes times;
    Budget small = budget.share(0.3);
    small.max_instances = std::min(small.max_instances, kMostInstances);
    const Attempt quick = attempt(*more, {figure}, joined, small, times);
    matches += quick.matches;
    if (!quick.all_reached) continue;
    const Answer answer = try_again({*more}, options, for_a_trial(budget));
    if (answer.verdict != Verdict::proved) continue;
    places.insert(key);
    found.push_back({one.candidate->sentence, one.candidate->words, answer.value});
  }
  log::info("lines: {} candidates, {} tried with {} matches, {} help", ranked.size(), tried, matches, found.size());
  return found;
}

}  // namespace prover
