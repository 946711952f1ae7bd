// What a problem says, ready for the prover: the givens as phrases with their sentences, the goals, the figure's
// points. Cases that the words leave open ("isosceles", which two sides is not said) are separate statements.
#pragma once
#include <string>
#include <vector>

#include "prover/language/problem_text.hpp"

namespace prover {

struct Given {
  Phrase phrase;
  std::string text;    // the phrase in canonical words, for "given" and "what was understood"
  bool added = false;  // from add: an auxiliary line that the class is given
};

// What one `add:` sentence draws, as the writer put it: "Draw through K the line PQ parallel to LM".
struct AddedSentence {
  std::string text;
  Span span;
  std::vector<std::size_t> givens;  // indices into Statement::givens
};

struct Statement {
  Names names;
  std::vector<bool> hidden;        // points that only give a lettered line its direction
  std::vector<Given> givens;
  std::vector<AddedSentence> added;
  std::vector<Goal> goals;
  std::vector<DrawnPoint> drawn;
  bool positions_count = false;
  std::string case_name;           // "KL = KM" when this is one case of several; else empty
};

// The statement, or one for each case of words that leave a choice. Never empty for a text without errors.
std::vector<Statement> statements_of(const ProblemText& text);

std::vector<Phrase> phrases_of(const Statement& statement);  // the givens' phrases, in order

// By point: named by a given of the problem itself, not only by an added sentence.
std::vector<bool> points_of_problem(const Statement& statement);

}  // namespace prover
