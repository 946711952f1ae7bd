#include "prover/verdict/claim_phrase.hpp"

#include "prover/language/phrase_points.hpp"

namespace prover {

namespace {

std::optional<Quantity> quantity_of(const Unknown& unknown) {
  switch (unknown.kind) {
    case UnknownKind::angle: return Angle{unknown.points[1], unknown.points[0], unknown.points[2]};
    case UnknownKind::length: return Segment{unknown.points[0], unknown.points[1]};
    case UnknownKind::number: return Number{unknown.name};
    case UnknownKind::fact:
    case UnknownKind::excess: break;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Phrase> claim_phrase(const Form& said, const UnknownTable& unknowns) {
  if (said.terms.empty()) return std::nullopt;
  const Unknown& first = unknowns[said.terms[0].first];
  if (said.terms.size() == 1 && said.constant.is_zero() && first.kind == UnknownKind::fact) {
    if (first.fact == FactKind::parallel) return phrase_of(Predicate::parallel, first.points);
    if (first.fact == FactKind::perpendicular) return phrase_of(Predicate::perpendicular, first.points);
    return std::nullopt;
  }
  // Terms with the sign of the first on the left, the others on the right.
  const Form form = said.terms[0].second.sign() < 0 ? -said : said;
  Phrase phrase;
  phrase.relation.expressions.resize(2);
  phrase.relation.comparisons = {Comparison::equal};
  for (const auto& [unknown, c] : form.terms) {
    const auto quantity = quantity_of(unknowns[unknown]);
    if (!quantity) return std::nullopt;
    phrase.relation.expressions[c.sign() > 0 ? 0 : 1].terms.push_back({c.sign() > 0 ? c : -c, *quantity, {}});
  }
  auto& right = phrase.relation.expressions[1].terms;
  if (!form.constant.is_zero() || right.empty()) right.push_back({-form.constant, One{}, {}});
  return phrase;
}

}  // namespace prover
