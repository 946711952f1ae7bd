#include "prover/chain/inequalities.hpp"

#include <algorithm>
#include <set>

#include "prover/algebra/positive.hpp"
#include "prover/chain/shapes.hpp"
#include "prover/language/phrase_points.hpp"
#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

constexpr std::size_t most_for_pairs = 120;  // triangles, in every order, up to which pairs are looked at

// The difference that the i-th comparison of the relation says to be zero or positive; nothing when it has no meaning.
std::optional<Form> difference(const Relation& relation, std::size_t i, const std::vector<PointId>& places,
                               const Arrangement& arrangement, UnknownTable& unknowns) {
  bool degenerate = false;
  Form left = form_of(relation.expressions[i], places, arrangement, unknowns, degenerate);
  const Form right = form_of(relation.expressions[i + 1], places, arrangement, unknowns, degenerate);
  if (degenerate) return std::nullopt;
  left.add(right, -1);
  return relation.comparisons[i] == Comparison::less ? -left : left;
}

}  // namespace

bool has_inequality(const Phrase& phrase) {
  const auto& comparisons = phrase.relation.comparisons;
  return std::any_of(comparisons.begin(), comparisons.end(), [](Comparison c) { return c != Comparison::equal; });
}

bool speaks_of_inequalities(const Rule& rule) {
  return std::any_of(rule.then.begin(), rule.then.end(), has_inequality);
}

std::vector<Form> given_differences(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns) {
  std::vector<PointId> identity;
  for (std::size_t i = 0; i < arrangement.point_count(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  std::vector<Form> found;
  for (std::size_t i = 0; i < phrase.relation.comparisons.size(); ++i)
    if (phrase.relation.comparisons[i] != Comparison::equal)
      if (auto form = difference(phrase.relation, i, identity, arrangement, unknowns)) found.push_back(std::move(*form));
  if (phrase.predicate == Predicate::acute)
    for (std::size_t corner = 0; corner < 3; ++corner) {
      const PointId v = phrase.points[corner];
      const PointId a = arrangement.ray(v, phrase.points[(corner + 1) % 3]), b = arrangement.ray(v, phrase.points[(corner + 2) % 3]);
      if (a != b) found.push_back(Form::number(90).add(Form::of(unknowns.angle(v, a, b)), -1));
    }
  return found;
}

Inequalities::Inequalities(const Catalogue& catalogue, const std::vector<bool>& allowed, Knowledge& knowledge)
    : catalogue_(catalogue), knowledge_(knowledge) {
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    if (!allowed[i] || !speaks_of_inequalities(rule)) continue;
    Pattern pattern{RuleId(static_cast<std::int64_t>(i)), {}, {}};
    std::set<std::size_t> placed;
    for (const Phrase& phrase : rule.given)
      if (phrase.predicate == Predicate::triangle) {
        pattern.triangles.push_back({phrase.points[0].index(), phrase.points[1].index(), phrase.points[2].index()});
        placed.insert(pattern.triangles.back().begin(), pattern.triangles.back().end());
      }
    for (std::size_t v = 0; v < rule.variables.points.size(); ++v)
      if (!placed.contains(v)) pattern.others.push_back(v);
    if (!pattern.triangles.empty()) patterns_.push_back(std::move(pattern));
  }
}

void Inequalities::match(const std::vector<std::array<PointId, 3>>& triangles) {
  drawn_ = &triangles;
  for (const Pattern& pattern : patterns_) {
    if (pattern.triangles.size() > 1 && triangles.size() > most_for_pairs) continue;
    std::vector<PointId> places(catalogue_[pattern.rule].variables.points.size());
    place_triangles(pattern, 0, places);
  }
}

void Inequalities::place_triangles(const Pattern& pattern, std::size_t next, std::vector<PointId>& places) {
  if (knowledge_.budget.exhausted() || knowledge_.full()) return;
  if (next == pattern.triangles.size()) return place_others(pattern, 0, places);
  for (const auto& triangle : *drawn_) {
    for (std::size_t i = 0; i < 3; ++i) places[pattern.triangles[next][i]] = triangle[i];
    place_triangles(pattern, next + 1, places);
  }
}

void Inequalities::place_others(const Pattern& pattern, std::size_t next, std::vector<PointId>& places) {
  if (next == pattern.others.size()) return offer(pattern, places);
  for (std::size_t p = 0; p < knowledge_.arrangement.point_count(); ++p) {
    places[pattern.others[next]] = PointId(static_cast<std::int64_t>(p));
    place_others(pattern, next + 1, places);
  }
}

bool Inequalities::equalities_hold(const Pattern& pattern, const std::vector<PointId>& places) const {
  for (const Phrase& phrase : catalogue_[pattern.rule].given)
    for (std::size_t i = 0; i < phrase.relation.comparisons.size(); ++i) {
      if (phrase.relation.comparisons[i] != Comparison::equal) continue;
      const auto form = difference(phrase.relation, i, places, knowledge_.arrangement, knowledge_.unknowns);
      if (!form || !knowledge_.entails(*form)) return false;
    }
  return true;
}

bool Inequalities::add_premises(const Phrase& phrase, const std::vector<PointId>& places, Instance& instance) const {
  for (std::size_t i = 0; i < phrase.relation.comparisons.size(); ++i) {
    auto form = difference(phrase.relation, i, places, knowledge_.arrangement, knowledge_.unknowns);
    if (!form) return false;
    if (phrase.relation.comparisons[i] != Comparison::equal) {
      const auto sum = plainly_positive_sum(*form, knowledge_.system(), knowledge_.unknowns);
      if (!sum) return false;
      form->add(*sum, -1);
    }
    instance.premises.push_back(std::move(*form));
  }
  return true;
}

void Inequalities::offer(const Pattern& pattern, const std::vector<PointId>& places) {
  const Rule& rule = catalogue_[pattern.rule];
  const Arrangement& figure = knowledge_.arrangement;
  Instance instance;
  for (const auto* phrases : {&rule.given, &rule.where})
    for (const Phrase& phrase : *phrases)
      for (const Position& position : positions_of(phrase, places)) {
        const std::set<PointId> three{position.a, position.b, position.c};
        if (three.size() < 3 || !figure.known(position)) return;
        instance.positions.push_back(canonical(position));
      }
  if (!equalities_hold(pattern, places)) return;
  for (const Phrase& phrase : rule.given)
    if (phrase.predicate == Predicate::relation && !add_premises(phrase, places, instance)) return;
  for (const Phrase& phrase : rule.then)
    for (std::size_t i = 0; i < phrase.relation.comparisons.size(); ++i) {
      const auto form = difference(phrase.relation, i, places, figure, knowledge_.unknowns);
      if (!form || form->terms.empty()) return;
      instance.conclusions.push_back(more_than_zero(*form, knowledge_.unknowns));
    }
  std::set<UnknownId> joined;  // lines that no sentence names have to be drawn first
  for (const auto* phrases : {&rule.given, &rule.then})
    for (const Phrase& phrase : *phrases)
      for (const auto& [a, b] : drawn_pairs(phrase)) {
        const LineId line = figure.line(places[a.index()], places[b.index()]);
        if (!line.valid()) return;
        if (figure.is_joined(line)) joined.insert(point_fact(FactKind::joined, {figure.points_on(line)[0], figure.points_on(line)[1]}, knowledge_.unknowns));
      }
  for (const UnknownId fact : joined) instance.premises.push_back(Form::of(fact));
  instance.rule = pattern.rule;
  instance.places = places;
  instance.cost = rule.cost;
  knowledge_.offer(instance);
}

}  // namespace prover
