#include "prover/statement/statement.hpp"

#include <fmt/format.h>

namespace prover {

namespace {

Phrase isosceles_at(const Phrase& phrase, std::size_t apex) {
  Phrase one = phrase;
  one.predicate = Predicate::isosceles_at;
  std::swap(one.points[0], one.points[apex]);
  if (apex < one.point_spans.size()) std::swap(one.point_spans[0], one.point_spans[apex]);
  return one;
}

}  // namespace

std::vector<Statement> statements_of(const ProblemText& text) {
  Statement base;
  base.names = text.names;
  base.hidden = text.hidden;
  base.goals = text.goals;
  base.drawn = text.drawn;
  base.positions_count = text.positions_count;
  for (const auto* sentences : {&text.sentences, &text.added})
    for (const Sentence& sentence : *sentences)
      for (const Phrase& phrase : sentence.phrases)
        base.givens.push_back({phrase, describe(phrase, text.names), sentences == &text.added});
  // "Isosceles" alone leaves open which sides are equal: three cases for each triangle said so, at most nine.
  std::vector<Statement> cases{base};
  for (std::size_t i = 0; i < base.givens.size() && cases.size() < 9; ++i) {
    if (base.givens[i].phrase.predicate != Predicate::isosceles) continue;
    std::vector<Statement> split;
    for (const Statement& so_far : cases)
      for (std::size_t apex = 0; apex < 3; ++apex) {
        Statement one = so_far;
        Given& given = one.givens[i];
        given.phrase = isosceles_at(given.phrase, apex);
        given.text = describe(given.phrase, one.names);
        const auto& p = given.phrase.points;
        if (!one.case_name.empty()) one.case_name += ", ";
        one.case_name += fmt::format("{0}{1} = {0}{2}", one.names.of(p[0]), one.names.of(p[1]), one.names.of(p[2]));
        split.push_back(std::move(one));
      }
    cases = std::move(split);
  }
  return cases;
}

std::vector<Phrase> phrases_of(const Statement& statement) {
  std::vector<Phrase> phrases;
  phrases.reserve(statement.givens.size());
  for (const Given& given : statement.givens) phrases.push_back(given.phrase);
  return phrases;
}

}  // namespace prover
