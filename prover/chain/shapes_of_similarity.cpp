// Similar triangles by sides in one ratio, where the ratio is known as a number. Two lengths are in a known ratio
// when their normal forms differ by a factor only; so lengths are sorted into groups of such multiples first, and
// only triangles whose sides lie in the same groups meet. A ratio of 1 is congruence and is left to its rules.
#include <algorithm>
#include <array>
#include <map>
#include <tuple>
#include <unordered_map>

#include "prover/chain/offer_instance.hpp"
#include "prover/chain/shapes.hpp"

namespace prover {

namespace {

using Triangle = std::array<PointId, 3>;

// A length as a multiple of what its group has in common.
struct Multiple {
  int group = -1;
  Rational factor;
};

UnknownId length_of(PointId a, PointId b, const Knowledge& knowledge) {
  return knowledge.unknowns.find_length(a, b);
}

// The normal form of a length without its factor, and the factor.
std::pair<Form, Rational> split(UnknownId length, const Knowledge& knowledge) {
  Form form = knowledge.normal_form(Form::of(length));
  const Rational factor = form.is_constant() ? form.constant : form.terms.front().second;
  if (!factor.is_zero()) form.scale(Rational(1) / factor);
  return {std::move(form), factor};
}

// Of each length that is a multiple, other than itself, of another.
class Multiples {
 public:
  explicit Multiples(const Knowledge& knowledge) : knowledge_(knowledge) {
    struct Group {
      std::vector<std::pair<UnknownId, Rational>> members;
      bool several = false;  // factors
    };
    std::vector<Group> groups;
    std::unordered_map<Form, std::size_t> numbers;
    for (std::size_t i = 0; i < knowledge.unknowns.size(); ++i) {
      const UnknownId id(static_cast<std::int64_t>(i));
      if (knowledge.unknowns[id].kind != UnknownKind::length) continue;
      auto [form, factor] = split(id, knowledge);
      if (factor.is_zero()) continue;
      const auto [at, is_new] = numbers.try_emplace(std::move(form), groups.size());
      if (is_new) groups.emplace_back();
      Group& group = groups[at->second];
      group.several = group.several || (!is_new && group.members.front().second != factor);
      group.members.emplace_back(id, factor);
    }
    for (std::size_t g = 0; g < groups.size(); ++g)
      if (groups[g].several)
        for (const auto& [id, factor] : groups[g].members) of_.emplace(id, Multiple{static_cast<int>(g), factor});
  }
  bool empty() const { return of_.empty(); }
  Multiple of(PointId a, PointId b) const {
    const UnknownId id = length_of(a, b, knowledge_);
    const auto found = id.valid() ? of_.find(id) : of_.end();
    return found == of_.end() ? Multiple{} : found->second;
  }

 private:
  const Knowledge& knowledge_;
  std::map<UnknownId, Multiple> of_;
};

// Places, premises and conclusion for first ~ second in the ratio, of the sides of the first that are listed by
// their ends.
ShapeInstance similar(RuleId rule, const Rational& cost, const Triangle& first, const Triangle& second,
                      std::initializer_list<std::pair<std::size_t, std::size_t>> sides, const Rational& ratio,
                      Knowledge& knowledge) {
  std::vector<PointId> places(first.begin(), first.end());
  places.insert(places.end(), second.begin(), second.end());
  ShapeInstance shape(rule, cost, places, knowledge);
  shape.need({PositionKind::not_collinear, first[0], first[1], first[2], {}});
  for (const auto& [i, j] : sides)
    shape.premise(shape.length(first[i], first[j]).add(shape.length(second[i], second[j]), -ratio));
  shape.conclude(Form::of(point_fact(FactKind::similar, places, knowledge.unknowns)));
  return shape;
}

}  // namespace

void offer_similar_triangles(RuleId sas, RuleId sss, const Catalogue& catalogue, const std::vector<bool>& allowed,
                             const std::vector<Triangle>& triangles, Knowledge& knowledge) {
  auto may = [&](RuleId rule) { return rule.valid() && allowed[rule.index()]; };
  if (!may(sas) && !may(sss)) return;
  const Multiples multiples(knowledge);
  if (multiples.empty()) return;

  // By the groups of AB, AC and BC, the last -1 where only two sides count, and what the factors are to that of AB.
  using Key = std::tuple<int, int, int, Rational, Rational>;
  struct Entry {
    Triangle corners;
    Rational factor;  // of AB
  };
  std::map<Key, std::vector<Entry>> by_two, by_three;
  for (const Triangle& t : triangles) {
    const Multiple ab = multiples.of(t[0], t[1]), ac = multiples.of(t[0], t[2]), bc = multiples.of(t[1], t[2]);
    if (ab.group < 0 || ac.group < 0) continue;
    const Rational second = ac.factor / ab.factor;
    if (may(sas)) by_two[{ab.group, ac.group, -1, second, 0}].push_back({t, ab.factor});
    if (may(sss) && bc.group >= 0)
      by_three[{ab.group, ac.group, bc.group, second, bc.factor / ab.factor}].push_back({t, ab.factor});
  }
  auto angle = [&](const Triangle& t) {
    const Arrangement& figure = knowledge.arrangement;
    return knowledge.normal_form(
        Form::of(knowledge.unknowns.angle(t[0], figure.ray(t[0], t[1]), figure.ray(t[0], t[2]))));
  };
  // The larger triangle comes first, so that ratios read as multiples; its letters in one order only.
  for (const auto& [key, entries] : by_two)
    for (const Entry& large : entries)
      for (const Entry& small : entries) {
        const Rational ratio = large.factor / small.factor;
        if (knowledge.full()) return;
        if (large.corners[2] < large.corners[1] || ratio <= Rational(1)) continue;
        if (angle(large.corners) != angle(small.corners)) continue;
        ShapeInstance shape = similar(sas, catalogue[sas].cost, large.corners, small.corners, {{0, 1}, {0, 2}}, ratio,
                                      knowledge);
        const auto& [a, b, c] = large.corners;
        const auto& [d, e, f] = small.corners;
        shape.premise(shape.angle(b, a, c).add(shape.angle(e, d, f), -1));
        shape.offer();
      }
  for (const auto& [key, entries] : by_three)
    for (const Entry& large : entries)
      for (const Entry& small : entries) {
        const Rational ratio = large.factor / small.factor;
        if (knowledge.full()) return;
        if (!std::is_sorted(large.corners.begin(), large.corners.end()) || ratio <= Rational(1)) continue;
        similar(sss, catalogue[sss].cost, large.corners, small.corners, {{0, 1}, {0, 2}, {1, 2}}, ratio, knowledge)
            .offer();
      }
}

void offer_similar_sides(RuleId rule, const Rational& cost, Knowledge& knowledge) {
  for (std::size_t f = 0; f < knowledge.facts().size() && !knowledge.full(); ++f) {
    const KnownFact fact = knowledge.facts()[f];
    if (fact.kind != FactKind::similar) continue;
    const auto& p = fact.points;
    const std::array<std::pair<std::size_t, std::size_t>, 3> sides{{{0, 1}, {1, 2}, {0, 2}}};
    const auto& figure = knowledge.arrangement;
    if (!std::all_of(sides.begin(), sides.end(), [&](const auto& side) {
          return figure.line(p[side.first], p[side.second]).valid() &&
                 figure.line(p[side.first + 3], p[side.second + 3]).valid();
        }))
      continue;
    for (const auto& [i, j] : sides) {
      const UnknownId mine = length_of(p[i], p[j], knowledge), other = length_of(p[i + 3], p[j + 3], knowledge);
      if (!mine.valid() || !other.valid()) continue;
      const auto [form, factor] = split(mine, knowledge);
      const auto [other_form, other_factor] = split(other, knowledge);
      if (form != other_form || factor.is_zero() || other_factor.is_zero()) continue;
      const Rational ratio = factor / other_factor;
      if (ratio.sign() <= 0) continue;
      ShapeInstance shape(rule, cost, p, knowledge);
      shape.premise(Form::of(point_fact(FactKind::similar, p, knowledge.unknowns)));
      shape.premise(shape.length(p[i], p[j]).add(shape.length(p[i + 3], p[j + 3]), -ratio));
      for (const auto& [k, l] : sides)
        if (k != i || l != j) shape.conclude(shape.length(p[k], p[l]).add(shape.length(p[k + 3], p[l + 3]), -ratio));
      shape.offer();
    }
  }
}

}  // namespace prover
