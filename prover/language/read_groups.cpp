// What is said of several quantities at once: equal, complementary, in a ratio, both 40°.
#include "prover/language/reader.hpp"

namespace prover {

void Reader::group(const Node& node) {
  const Node& row = node.children.front();
  const Node& verb = node.children.back();
  const std::vector<Term> terms = quantities(row);
  const Span span{row.span.begin, verb.span.end};
  const auto number = [&](int value) { return Expression{{Term{value, One{}, verb.span}}, verb.span}; };
  const auto single = [](const Term& term) { return Expression{{term}, term.span}; };
  const auto pair_sum = [&](int value, const char* word) {
    if (terms.size() != 2) {
      draft_.error(span, std::string("two angles are ") + word + "; here are " + std::to_string(terms.size()),
                   "say what the angles add up to");
      return;
    }
    compare({{terms, row.span}, number(value)}, {Comparison::equal}, span);
  };
  if (verb.part == Part::ratio) {
    ratio(terms, verb);
  } else if (verb.part == Part::complementary) {
    pair_sum(90, "complementary");
  } else if (verb.part == Part::supplementary) {
    pair_sum(180, "supplementary");
  } else if (verb.part == Part::group_right) {
    for (const Term& term : terms) compare({single(term), number(90)}, {Comparison::equal}, span);
  } else if (verb.part == Part::group_sum) {
    compare({{terms, row.span}, expression(verb.children.front())}, {Comparison::equal}, span);
  } else if (verb.part == Part::group_each) {
    const Expression value = expression(verb.children.front());
    for (const Term& term : terms) compare({single(term), value}, {Comparison::equal}, span);
  } else if (verb.part == Part::group_respectively) {
    if (verb.children.size() != terms.size()) {
      draft_.error(verb.span,
                   std::to_string(terms.size()) + " quantities and " + std::to_string(verb.children.size()) +
                       " values",
                   "give one value for each, in the same order");
      return;
    }
    for (std::size_t i = 0; i < terms.size(); ++i) {
      compare({single(terms[i]), expression(verb.children[i])}, {Comparison::equal}, span);
    }
  } else {
    std::vector<Expression> all;
    for (const Term& term : terms) all.push_back(single(term));
    compare(std::move(all), std::vector<Comparison>(terms.size() - 1, Comparison::equal), span);
  }
}

}  // namespace prover
