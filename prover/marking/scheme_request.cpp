#include <algorithm>
#include <cctype>

#include "prover/language/lines.hpp"
#include "prover/marking/scheme.hpp"

namespace prover {

namespace {

bool digit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

// "[4]", "(4)", "(4 marks)", "[1 mark]": the number, or 0 where the bracket holds something else.
int marks_in(std::string_view bracket) {
  std::size_t at = 1, number = 0;
  while (at < bracket.size() && bracket[at] == ' ') ++at;
  const std::size_t begin = at;
  for (; at < bracket.size() && digit(bracket[at]) && at < begin + 2; ++at) number = number * 10 + static_cast<std::size_t>(bracket[at] - '0');
  std::string rest;
  for (const char c : bracket.substr(at, bracket.size() - at - 1))
    if (c != ' ' && c != '.') rest += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  const bool said = rest == "mark" || rest == "marks" || (rest.empty() && bracket[0] == '[');
  return at > begin && said ? static_cast<int>(number) : 0;
}

bool holds_word(std::string_view text, std::string_view word) {
  const auto same = [](char a, char b) { return std::tolower(static_cast<unsigned char>(a)) == b; };
  return std::search(text.begin(), text.end(), word.begin(), word.end(), same) != text.end();
}

}  // namespace

SchemeRequest scheme_request(std::string_view problem) {
  SchemeRequest request;
  const ProblemText parsed = parse_problem(problem);
  if (!parsed.goals.empty()) request.finds = parsed.goals.front().kind == GoalKind::find;
  // A pupil's lines, and the line numbers that a pupil writes in brackets, are no part of the question.
  std::string question(problem);
  for (const Piece& piece : cut_into_pieces(problem))
    if (piece.kind == LineKind::other)
      std::fill(question.begin() + static_cast<std::ptrdiff_t>(piece.span.begin),
                question.begin() + static_cast<std::ptrdiff_t>(piece.span.end), ' ');
  int total = 0;
  for (std::size_t open = question.find_first_of("(["); open != std::string::npos; open = question.find_first_of("([", open + 1)) {
    const std::size_t close = question.find(question[open] == '(' ? ')' : ']', open);
    if (close != std::string::npos && close - open < 16) total += marks_in(std::string_view(question).substr(open, close - open + 1));
  }
  if (total > 0) request.total = total;
  request.reasons_asked = holds_word(question, "reason") || holds_word(question, "justify");
  return request;
}

}  // namespace prover
