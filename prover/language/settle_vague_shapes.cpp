// "Trapezium", "kite", "right-angled", "isosceles": which sides are meant is looked for in the rest of the text.
// Where it is not said anywhere, the text gets a question back, with the answers as sentences to paste – but
// for "isosceles", which stays as it is and means cases.
#include <algorithm>

#include "prover/language/draft.hpp"

namespace prover {

namespace {

bool same_pair(PointId a, PointId b, PointId c, PointId d) { return (a == c && b == d) || (a == d && b == c); }

class Givens {
 public:
  explicit Givens(const Units& units) : units_(units) {}

  bool parallel(PointId a, PointId b, PointId c, PointId d) const {
    return any([&](const Phrase& phrase) {
      const auto& p = phrase.points;
      return phrase.predicate == Predicate::parallel && ((same_pair(p[0], p[1], a, b) && same_pair(p[2], p[3], c, d)) ||
                                                         (same_pair(p[0], p[1], c, d) && same_pair(p[2], p[3], a, b)));
    });
  }
  bool equal(PointId a, PointId b, PointId c, PointId d) const {
    return any([&](const Phrase& phrase) {
      const Relation& r = phrase.relation;
      for (std::size_t i = 0; i < r.expressions.size(); ++i) {
        for (std::size_t j = i + 1; j < r.expressions.size() && r.comparisons[j - 1] == Comparison::equal; ++j) {
          if ((is_segment(r.expressions[i], a, b) && is_segment(r.expressions[j], c, d)) ||
              (is_segment(r.expressions[i], c, d) && is_segment(r.expressions[j], a, b))) {
            return true;
          }
        }
      }
      return false;
    });
  }
  bool right_angle(PointId a, PointId corner, PointId b) const {
    return any([&](const Phrase& phrase) {
      const auto& p = phrase.points;
      if (phrase.predicate == Predicate::perpendicular) {
        return (same_pair(p[0], p[1], a, corner) && same_pair(p[2], p[3], corner, b)) ||
               (same_pair(p[0], p[1], corner, b) && same_pair(p[2], p[3], a, corner));
      }
      if (phrase.predicate == Predicate::right_angled) return p[0] == corner && same_pair(p[1], p[2], a, b);
      const Relation& r = phrase.relation;
      return r.expressions.size() == 2 && r.comparisons[0] == Comparison::equal &&
             ((is_angle(r.expressions[0], a, corner, b) && is_ninety(r.expressions[1])) ||
              (is_angle(r.expressions[1], a, corner, b) && is_ninety(r.expressions[0])));
    });
  }

 private:
  template <class Test>
  bool any(Test test) const {
    return std::any_of(units_.begin(), units_.end(), [&](const Unit& unit) {
      return unit.kind != UnitKind::goal && std::any_of(unit.phrases->begin(), unit.phrases->end(), test);
    });
  }
  static const Term* single(const Expression& e) { return e.terms.size() == 1 ? &e.terms.front() : nullptr; }
  static bool is_segment(const Expression& e, PointId a, PointId b) {
    const Term* term = single(e);
    const Segment* segment = term != nullptr && term->coefficient.is_one() ? std::get_if<Segment>(&term->quantity) : nullptr;
    return segment != nullptr && same_pair(segment->a, segment->b, a, b);
  }
  static bool is_angle(const Expression& e, PointId a, PointId corner, PointId b) {
    const Term* term = single(e);
    const Angle* angle = term != nullptr && term->coefficient.is_one() ? std::get_if<Angle>(&term->quantity) : nullptr;
    return angle != nullptr && angle->vertex == corner && same_pair(angle->arm1, angle->arm2, a, b) && !angle->reflex && !angle->exterior;
  }
  static bool is_ninety(const Expression& e) {
    const Term* term = single(e);
    return term != nullptr && std::holds_alternative<One>(term->quantity) && term->coefficient == Rational(90);
  }
  const Units& units_;
};

Phrase phrase_of(const VagueShape& shape, Predicate predicate, std::size_t first) {
  Phrase phrase;
  phrase.predicate = predicate;
  phrase.span = shape.span;
  for (std::size_t i = 0; i < shape.corners.size(); ++i) {
    const Placed& corner = shape.corners[(first + i) % shape.corners.size()];
    phrase.points.push_back(corner.id);
    phrase.point_spans.push_back(corner.span);
  }
  return phrase;
}

void insert(const Unit& unit, Phrase phrase) {
  const auto place = std::find_if(unit.phrases->begin(), unit.phrases->end(), [&](const Phrase& p) { return p.span.begin > phrase.span.begin; });
  unit.phrases->insert(place, std::move(phrase));
}

Phrase equal_lengths(PointId a, PointId b, PointId c, PointId d, Span span) {
  Phrase phrase;
  phrase.span = span;
  phrase.relation = {{{{Term{1, Segment{a, b}, span}}, span}, {{Term{1, Segment{c, d}, span}}, span}}, {Comparison::equal}};
  return phrase;
}

}  // namespace

void settle_vague_shapes(Draft& draft, const Units& units) {
  const Givens givens(units);
  for (const VagueShape& shape : draft.vague) {
    const Unit& unit = units[shape.unit];
    const bool goal = unit.kind == UnitKind::goal;
    const auto id = [&](std::size_t i) { return shape.corners[i % shape.corners.size()].id; };
    const auto name = [&](std::size_t i) { return draft.names.of(id(i)); };
    const std::string all = draft.letters(shape.corners);
    const auto ask = [&](const std::string& message, const std::string& one, const std::string& other) {
      draft.error(shape.span, message, "write \"" + one + "\" or \"" + other + "\"");
    };
    bool settled = false;
    switch (shape.kind) {
      case VagueKind::trapezium:
        for (std::size_t i = 0; i < 2 && !settled && !goal; ++i) {
          if (!givens.parallel(id(i), id(i + 1), id(i + 3), id(i + 2))) continue;
          insert(unit, phrase_of(shape, Predicate::trapezium, i));
          if (shape.equal_legs) insert(unit, equal_lengths(id(i + 1), id(i + 2), id(i + 3), id(i), shape.span));
          settled = true;
        }
        if (!settled) {
          ask("which sides of the trapezium " + all + " are parallel is not said",
              all + " is a trapezium with " + name(0) + name(1) + " ∥ " + name(3) + name(2),
              all + " is a trapezium with " + name(1) + name(2) + " ∥ " + name(0) + name(3));
        }
        break;
      case VagueKind::kite:
        for (std::size_t i = 0; i < 4 && !settled && !goal; ++i) {
          if (!givens.equal(id(i), id(i + 1), id(i), id(i + 3))) continue;
          insert(unit, phrase_of(shape, Predicate::kite, i));
          settled = true;
        }
        if (!settled) {
          ask("which sides of the kite " + all + " are equal is not said", all + " is a kite with " + name(0) + name(1) + " = " + name(0) + name(3),
              all + " is a kite with " + name(1) + name(0) + " = " + name(1) + name(2));
        }
        break;
      case VagueKind::right_angled:
        for (std::size_t i = 0; i < 3 && !settled && !goal; ++i) {
          if (!givens.right_angle(id(i + 1), id(i), id(i + 2))) continue;
          insert(unit, phrase_of(shape, Predicate::triangle, 0));
          settled = true;
        }
        if (!settled) {
          draft.error(shape.span, "where the right angle of triangle " + all + " is, is not said",
                      "write \"triangle " + all + " is right-angled at " + name(0) + "\", or at " + name(1) + " or " + name(2));
        }
        break;
      case VagueKind::isosceles:
        for (std::size_t i = 0; i < 3 && !settled && !goal; ++i) settled = givens.equal(id(i), id(i + 1), id(i), id(i + 2));
        insert(unit, phrase_of(shape, settled ? Predicate::triangle : Predicate::isosceles, 0));
        break;
    }
  }
}

}  // namespace prover
