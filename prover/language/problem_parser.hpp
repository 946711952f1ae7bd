// A problem while it is being read, sentence by sentence, and afterwards: what its draft knows (which points exist, which
// angle a bare corner means, which circle is "the circle") is what a pupil's lines are read with, so that their words mean
// what they mean in the problem.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/draft.hpp"
#include "prover/language/grammar.hpp"
#include "prover/language/lines.hpp"
#include "prover/language/problem_text.hpp"
#include "prover/language/reader.hpp"

namespace prover {

class ProblemParser {
 public:
  explicit ProblemParser(std::string_view text);
  void parse();

  ProblemText& problem() { return problem_; }
  Draft& draft() { return draft_; }
  ProblemText take() { return std::move(problem_); }

 private:
  std::string_view of(Span span) const;
  bool too_many_points();
  void read(const Piece& piece);
  std::optional<Node> parsed(const Piece& piece, Start start);
  void sentence(const Piece& piece, Start start, std::vector<Sentence>& list, UnitKind kind);
  void join_goals(std::size_t first);
  void claim(Sentence& sentence);
  Units units();
  void finish();
  void check_circles();
  void check_goal_points();
  void in_order();

  std::string_view text_;
  ProblemText problem_;
  Draft draft_;
  Reader reader_;
  std::string not_understood_;  // sentences with a mistake, one after the other
  bool asked_ = false;
  bool gave_up_ = false;
  bool last_was_goal_ = false;
};

}  // namespace prover
