// A problem as it was written, parsed: sentences of the language, goals, and the lines that steer the work.
// Parsing never fails as a whole: each sentence is read on its own, mistakes are collected in `diagnostics`.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "prover/language/phrase.hpp"

namespace prover {

// A given sentence. One sentence may hold several phrases ("KLM is an isosceles triangle with KL = KM").
struct Sentence {
  Span span;
  std::string text;             // as written, trimmed
  std::vector<Phrase> phrases;
  std::vector<PointId> fresh;   // points that it draws without naming them
};

enum class GoalKind { find, prove };
struct Goal {
  GoalKind kind = GoalKind::find;
  Span span;
  std::string text;                      // as written, after "find:" or "prove:"
  std::vector<Phrase> claims;            // prove: all of them; find: one relation with a single expression
  std::vector<Quantity> in_terms_of;     // find: angle BIC in terms of angle BAC
};

struct TaughtName {
  std::string name;                      // of a rule, a course, a topic
  Span span;
  std::string up_to;                     // of a course: the last rule of it that has been taught; empty: all
  Span up_to_span;
};
struct Taught {                          // taught: or --taught; names are looked up by the rule room
  Span span;
  std::vector<TaughtName> names;
  std::vector<TaughtName> excluded;      // after "not"
};

struct DrawnPoint {                      // figure: K = (0, 0), L = (4, 1)
  PointId point;
  double x = 0, y = 0;
};

struct OtherLine {                       // work:, answer:, lesson:, expect:, kept for the rooms that read them
  std::string keyword;
  std::string text;
  Span span;                             // of the text
};

// A line or circle the writer calls by a small letter; what stands on it is said by phrases with its points.
// When fewer than two named points stand on it, the parser adds hidden points (see `hidden`).
struct ProblemText {
  Names names;                           // points in order of first appearance
  std::vector<bool> hidden;              // per point: added by us to give a lettered line its direction
  std::vector<Sentence> sentences;       // the givens
  std::vector<Sentence> added;           // add: auxiliary lines that the class is given
  std::vector<Goal> goals;
  std::vector<Taught> taught;
  std::vector<DrawnPoint> drawn;         // figure:
  bool positions_count = false;          // figure: … positions count
  std::vector<std::pair<std::string, Angle>> called;  // call angle BAC a; also angles at K: 1 = LKP
  std::vector<std::string> assumptions;  // beyond the words, each with the sentence that replaces it
  std::vector<OtherLine> other_lines;    // also `figure: not to scale`, with the keyword "figure"
  std::vector<Diagnostic> diagnostics;   // in the order of the text; at most 50, then "and N more"
};

ProblemText parse_problem(std::string_view text);

// A single phrase or `;`-joined phrases, as in rule files, with the given table of point names; new names are
// appended to it. Mistakes are added to `diagnostics`.
std::vector<Phrase> parse_phrases(std::string_view text, Names& names, std::vector<Diagnostic>& diagnostics,
                                  std::size_t offset = 0);

// The candidate nearest to `word` by edit distance, if near enough to be worth suggesting.
std::optional<std::string> nearest_word(std::string_view word, const std::vector<std::string>& candidates);

}  // namespace prover
