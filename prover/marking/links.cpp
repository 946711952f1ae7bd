#include "prover/marking/links.hpp"

namespace prover {

namespace {

Expression with_straight_angles(Expression expression, const Arrangement& arrangement) {
  for (Term& term : expression.terms)
    if (const auto* angle = std::get_if<Angle>(&term.quantity))
      if (angle->arm1.valid() && angle->arm2.valid() && !angle->reflex &&
          arrangement.opposite_rays(angle->vertex, angle->arm1, angle->arm2)) {
        term.coefficient = term.coefficient * Rational(180);
        term.quantity = One{};
      }
  return expression;
}

std::optional<Rational> number_of(const Expression& expression) {
  Rational sum;
  for (const Term& term : expression.terms) {
    if (!std::holds_alternative<One>(term.quantity)) return std::nullopt;
    sum = sum + term.coefficient;
  }
  return sum;
}

}  // namespace

std::vector<Link> links_of(const std::vector<Phrase>& claims, const Arrangement& arrangement) {
  std::vector<Link> links;
  for (const Phrase& claim : claims) {
    if (claim.predicate != Predicate::relation) {
      links.push_back({LinkKind::claim, claim, {}, {}});
      continue;
    }
    const Relation& chain = claim.relation;
    for (std::size_t i = 0; i + 1 < chain.expressions.size(); ++i) {
      Link link;
      link.phrase = claim;
      link.phrase.relation.expressions = {with_straight_angles(chain.expressions[i], arrangement),
                                          with_straight_angles(chain.expressions[i + 1], arrangement)};
      link.phrase.relation.comparisons = {chain.comparisons[i]};
      link.left = number_of(link.phrase.relation.expressions[0]);
      link.right = number_of(link.phrase.relation.expressions[1]);
      if (link.left && link.right) {
        const Comparison c = chain.comparisons[i];
        const bool holds = c == Comparison::equal ? *link.left == *link.right : c == Comparison::less ? *link.left < *link.right : *link.right < *link.left;
        link.kind = holds ? LinkKind::arithmetic : LinkKind::slip;
      }
      links.push_back(std::move(link));
    }
  }
  return links;
}

std::optional<Phrase> ends_of_chain(const Phrase& phrase) {
  if (phrase.predicate != Predicate::relation || phrase.relation.expressions.size() < 3) return std::nullopt;
  for (const Comparison c : phrase.relation.comparisons)
    if (c != Comparison::equal) return std::nullopt;
  Phrase ends = phrase;
  ends.relation.expressions = {phrase.relation.expressions.front(), phrase.relation.expressions.back()};
  ends.relation.comparisons = {Comparison::equal};
  return ends;
}

}  // namespace prover
