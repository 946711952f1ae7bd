// "Trapezium", "kite", "right-angled", "isosceles": which sides are meant is looked for in the rest of the
// text. Where it is not said anywhere, the text gets a question back, with the answers as sentences to paste
// – but for "isosceles", which stays as it is and means cases.
#include <algorithm>
#include <map>
#include <set>

#include "prover/language/draft.hpp"

namespace prover {

namespace {

using Pair = std::pair<PointId, PointId>;
Pair pair(PointId a, PointId b) {
  return a < b ? Pair{a, b} : Pair{b, a};
}
std::pair<Pair, Pair> both(Pair a, Pair b) {
  return a < b ? std::pair{a, b} : std::pair{b, a};
}

// What the text says of parallel sides, equal sides and right angles, to look up.
class Givens {
 public:
  explicit Givens(const Units& units) {
    for (const Unit& unit : units) {
      if (unit.kind == UnitKind::goal) continue;
      for (const Phrase& phrase : *unit.phrases) read(phrase);
    }
  }

  bool parallel(PointId a, PointId b, PointId c, PointId d) const {
    return parallel_.contains(both(pair(a, b), pair(c, d)));
  }
  bool equal(PointId a, PointId b, PointId c, PointId d) const {
    const auto one = chains_.find(pair(a, b)), other = chains_.find(pair(c, d));
    return one != chains_.end() && other != chains_.end() &&
           std::any_of(one->second.begin(), one->second.end(),
                       [&](std::size_t chain) { return other->second.contains(chain); });
  }
  bool right_angle(PointId a, PointId corner, PointId b) const {
    return right_.contains({corner, pair(a, b)}) ||
           perpendicular_.contains(both(pair(a, corner), pair(corner, b)));
  }

 private:
  void read(const Phrase& phrase) {
    const auto& p = phrase.points;
    if (phrase.predicate == Predicate::parallel) parallel_.insert(both(pair(p[0], p[1]), pair(p[2], p[3])));
    if (phrase.predicate == Predicate::perpendicular)
      perpendicular_.insert(both(pair(p[0], p[1]), pair(p[2], p[3])));
    if (phrase.predicate == Predicate::right_angled) right_.insert({p[0], pair(p[1], p[2])});
    const Relation& r = phrase.relation;
    bool ninety = false;
    for (std::size_t i = 0; i < r.expressions.size(); ++i) {
      if (i > 0 && r.comparisons[i - 1] != Comparison::equal) ++chain_;
      const Term* term = single(r.expressions[i]);
      if (term == nullptr) continue;
      if (const Segment* s = std::get_if<Segment>(&term->quantity);
          s != nullptr && term->coefficient.is_one()) {
        chains_[pair(s->a, s->b)].insert(chain_);
      }
      ninety = ninety || (std::holds_alternative<One>(term->quantity) && term->coefficient == Rational(90));
    }
    ++chain_;
    const bool equation = std::all_of(r.comparisons.begin(), r.comparisons.end(),
                                      [](Comparison c) { return c == Comparison::equal; });
    if (!ninety || !equation) return;
    for (const Expression& expression : r.expressions) {
      const Term* term = single(expression);
      const Angle* angle =
          term != nullptr && term->coefficient.is_one() ? std::get_if<Angle>(&term->quantity) : nullptr;
      if (angle != nullptr && !angle->reflex) right_.insert({angle->vertex, pair(angle->arm1, angle->arm2)});
    }
  }
  static const Term* single(const Expression& e) { return e.terms.size() == 1 ? &e.terms.front() : nullptr; }

  std::set<std::pair<Pair, Pair>> parallel_, perpendicular_;
  std::set<std::pair<PointId, Pair>> right_;
  std::map<Pair, std::set<std::size_t>> chains_;  // in which chains of equal lengths a segment stands
  std::size_t chain_ = 0;
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
  // Where it was said: after the last phrase that began before it. Searched from the end, where it nearly
  // always is.
  auto place = unit.phrases->end();
  while (place != unit.phrases->begin() && std::prev(place)->span.begin > phrase.span.begin) --place;
  unit.phrases->insert(place, std::move(phrase));
}

// "KLMN is a trapezium with KL ∥ NM" is one fact: what only says which sides are meant goes.
template <class Test>
void erase_detail(const Unit& unit, Span sentence, Test test) {
  const auto detail = std::find_if(unit.phrases->begin(), unit.phrases->end(), [&](const Phrase& phrase) {
    if (phrase.span.begin < sentence.begin || phrase.relation.expressions.size() > 2) return false;
    std::vector<Phrase> alone = {phrase};
    return test(Givens({{UnitKind::given, &alone}}));
  });
  if (detail != unit.phrases->end()) unit.phrases->erase(detail);
}

Phrase equal_lengths(PointId a, PointId b, PointId c, PointId d, Span span) {
  Phrase phrase;
  phrase.span = span;
  phrase.relation = {{{{Term{1, Segment{a, b}, span}}, span}, {{Term{1, Segment{c, d}, span}}, span}},
                     {Comparison::equal}};
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
          erase_detail(unit, shape.span,
                       [&](const Givens& g) { return g.parallel(id(i), id(i + 1), id(i + 3), id(i + 2)); });
          insert(unit, phrase_of(shape, Predicate::trapezium, i));
          if (shape.equal_legs)
            insert(unit, equal_lengths(id(i + 1), id(i + 2), id(i + 3), id(i), shape.span));
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
          erase_detail(unit, shape.span,
                       [&](const Givens& g) { return g.equal(id(i), id(i + 1), id(i), id(i + 3)); });
          insert(unit, phrase_of(shape, Predicate::kite, i));
          settled = true;
        }
        if (!settled) {
          ask("which sides of the kite " + all + " are equal is not said",
              all + " is a kite with " + name(0) + name(1) + " = " + name(0) + name(3),
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
                      "write \"triangle " + all + " is right-angled at " + name(0) + "\", or at " + name(1) +
                          " or " + name(2));
        }
        break;
      case VagueKind::isosceles:
        for (std::size_t i = 0; i < 3 && !settled && !goal; ++i)
          settled = givens.equal(id(i), id(i + 1), id(i), id(i + 2));
        insert(unit, phrase_of(shape, settled ? Predicate::triangle : Predicate::isosceles, 0));
        break;
    }
  }
}

}  // namespace prover
