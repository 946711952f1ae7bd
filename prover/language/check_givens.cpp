// Mistakes that only show when the whole text is known: points in two orders, sizes that no angle or length
// has.
#include <algorithm>
#include <array>
#include <map>

#include "prover/language/draft.hpp"

namespace prover {

namespace {

struct Betweenness {
  PointId middle;
  Span span;
};

using Triples = std::map<std::array<PointId, 3>, Betweenness>;

void check_triple(Draft& draft, Triples& known, PointId a, PointId middle, PointId c, Span span) {
  std::array<PointId, 3> key = {a, middle, c};
  std::sort(key.begin(), key.end());
  const auto [place, fresh] = known.emplace(key, Betweenness{middle, span});
  if (fresh || place->second.middle == middle) return;
  const auto& name = [&](PointId p) { return draft.names.of(p); };
  draft.warn(span,
             name(middle) + " cannot be between " + name(a) + " and " + name(c) + ": it was said that " +
                  name(place->second.middle) + " is in the middle",
              "keep one of the two orders");
}

void check_row(Draft& draft, Triples& known, const std::vector<PointId>& row, Span span) {
  // All triples of a short row; of a long one only neighbours, so that the work stays linear.
  constexpr std::size_t short_row = 12;
  const std::size_t n = row.size();
  const std::size_t mistakes = draft.diagnostics.size();
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = i + 1; j < n && (n <= short_row || j == i + 1); ++j) {
      for (std::size_t k = j + 1; k < n && (n <= short_row || k == j + 1); ++k) {
        check_triple(draft, known, row[i], row[j], row[k], span);
        if (draft.diagnostics.size() > mistakes) return;
      }
    }
  }
}

struct Bounds {
  int low, high;
};

void check_angle(Draft& draft, const Angle& angle, const Rational& value, Span span) {
  const Bounds bounds = angle.reflex ? Bounds{180, 360} : Bounds{0, 180};
  if (value > Rational(bounds.low) && value < Rational(bounds.high)) return;
  const std::string written = describe(angle, draft.names), size = value.to_string() + "°";
  if (!angle.reflex && value == Rational(180)) {
    draft.error(span, written + " = 180° says that its points are on a line",
                "write \"line: " + draft.names.of(angle.arm1) + ", " + draft.names.of(angle.vertex) + ", " +
                    draft.names.of(angle.arm2) + " in this order\"");
  } else if (!angle.reflex && value > Rational(180) && value < Rational(360)) {
    draft.error(span,
                written + " cannot be " + size +
                    ": an angle is between 0° and 180° unless \"reflex\" stands before it",
                "write \"reflex angle\", or a size below 180");
  } else {
    draft.error(span, written + " cannot be " + size,
                angle.reflex ? "a reflex angle is between 180° and 360°" : "give a size between 0 and 180");
  }
}

void check_sizes(Draft& draft, const Relation& relation) {
  for (std::size_t i = 0; i + 1 < relation.expressions.size(); ++i) {
    if (relation.comparisons[i] != Comparison::equal) continue;
    const Expression* left = &relation.expressions[i];
    const Expression* right = &relation.expressions[i + 1];
    if (std::holds_alternative<One>(left->terms.front().quantity)) std::swap(left, right);
    const auto constant = [](const Term& term) { return std::holds_alternative<One>(term.quantity); };
    if (left->terms.size() != 1 || !std::all_of(right->terms.begin(), right->terms.end(), constant)) continue;
    const Term& term = left->terms.front();
    if (term.coefficient.is_zero()) continue;
    Rational value = 0;
    for (const Term& part : right->terms) value += part.coefficient;
    value /= term.coefficient;
    if (const Angle* angle = std::get_if<Angle>(&term.quantity))
      check_angle(draft, *angle, value, {left->span.begin, right->span.end});
    if (std::holds_alternative<Segment>(term.quantity) && value.sign() <= 0) {
      draft.error(right->span, "a length is more than 0", "give a positive number");
    }
  }
}

}  // namespace

void check_orders(Draft& draft, const Units& units) {
  Triples known;
  for (const Unit& unit : units) {
    if (unit.kind == UnitKind::goal) continue;
    for (const Phrase& phrase : *unit.phrases) {
      const std::vector<PointId>& p = phrase.points;
      if (phrase.predicate == Predicate::line_order) check_row(draft, known, p, phrase.span);
      if (phrase.predicate == Predicate::on_segment || phrase.predicate == Predicate::midpoint) {
        check_triple(draft, known, p[1], p[0], p[2], phrase.span);
      }
    }
  }
}

void check_sizes(Draft& draft, const Units& units) {
  for (const Unit& unit : units) {
    for (const Phrase& phrase : *unit.phrases) {
      if (phrase.predicate == Predicate::relation) check_sizes(draft, phrase.relation);
    }
  }
}

}  // namespace prover
