#include "prover/chain/rule_forms.hpp"

#include <algorithm>
#include <array>

#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

// The next form to write into: those of earlier instances are used again, with the memory they hold.
Form& next(std::vector<Form>& forms, std::size_t& count) {
  if (count == forms.size()) forms.emplace_back();
  Form& form = forms[count++];
  form.terms.clear();
  form.constant = 0;
  return form;
}

void add_term(Form& form, UnknownId unknown, const Rational& factor) {
  auto at = form.terms.end();
  while (at != form.terms.begin() && unknown < std::prev(at)->first) --at;
  if (at == form.terms.begin() || std::prev(at)->first != unknown) {
    form.terms.insert(at, {unknown, factor});
    return;
  }
  --at;
  at->second += factor;
  if (at->second.is_zero()) form.terms.erase(at);
}

}  // namespace

RuleForms::RuleForms(const MatchPlan& plan, const Rule& rule) : lines_used_(plan.lines_used) {
  std::vector<PointId> as_it_is;
  for (std::size_t v = 0; v < rule.variables.points.size(); ++v) as_it_is.emplace_back(static_cast<std::int64_t>(v));
  for (std::size_t i = 0; i < plan.conditions.size(); ++i) {
    const Phrase& phrase = plan.conditions[i];
    if (i < plan.given_count) given_.push_back(clause_of(phrase));
    if (is_fact_phrase(phrase)) continue;  // a fact brings its positions with it
    for (const Position& position : positions_of(phrase, as_it_is)) positions_.push_back(position);
  }
  for (const Phrase& phrase : rule.then) then_.push_back(clause_of(phrase));
}

void RuleForms::add_parts(const Expression& expression, const Rational& factor, std::vector<Part>& parts) {
  for (const Term& term : expression.terms) {
    Part part;
    part.factor = term.coefficient * factor;
    const auto constant = [&](std::int64_t degrees) {
      Part whole;
      whole.factor = part.factor * Rational(degrees);
      parts.push_back(std::move(whole));
      part.factor = -part.factor;
    };
    if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
      part.kind = Part::Kind::angle;
      part.a = angle->arm1.index();
      part.b = angle->vertex.index();
      part.c = angle->arm2.index();
      if (angle->exterior)
        constant(180);
      else if (angle->reflex)
        constant(360);
    } else if (const auto* segment = std::get_if<Segment>(&term.quantity)) {
      part.kind = Part::Kind::length;
      part.a = segment->a.index();
      part.b = segment->b.index();
    } else if (const auto* number = std::get_if<Number>(&term.quantity)) {
      part.kind = Part::Kind::number;
      part.name = number->name;
    }
    parts.push_back(std::move(part));
  }
}

RuleForms::Clause RuleForms::clause_of(const Phrase& phrase) {
  Clause clause;
  clause.phrase = phrase;
  if (phrase.predicate == Predicate::relation) {
    clause.kind = Clause::Kind::equations;
    const Relation& relation = phrase.relation;
    for (std::size_t i = 0; i < relation.comparisons.size(); ++i) {
      if (relation.comparisons[i] != Comparison::equal) continue;
      auto& sum = clause.equations.emplace_back();
      add_parts(relation.expressions[i], 1, sum);
      add_parts(relation.expressions[i + 1], -1, sum);
    }
    return clause;
  }
  const auto kind = fact_kind_of(phrase);
  if (!kind) return clause;
  clause.fact = *kind;
  switch (*kind) {
    case FactKind::parallel:
      clause.kind = Clause::Kind::lines;
      break;
    case FactKind::congruent:
    case FactKind::similar:
    case FactKind::regular_polygon:
    case FactKind::parallelogram:
    case FactKind::rectangle:
    case FactKind::rhombus:
    case FactKind::square:
    case FactKind::kite:
    case FactKind::trapezium:
      clause.kind = Clause::Kind::points;
      break;
    case FactKind::perpendicular:
    case FactKind::collinear:
    case FactKind::circle:
    case FactKind::concyclic:
    case FactKind::joined:
    case FactKind::tangent:
    case FactKind::tangent_through:
      break;
  }
  return clause;
}

bool RuleForms::add_forms(const Clause& clause, const std::vector<PointId>& places, Knowledge& knowledge, bool given,
                          std::vector<Form>& forms, std::size_t& count) const {
  const Arrangement& figure = knowledge.arrangement;
  UnknownTable& unknowns = knowledge.unknowns;
  const auto& p = clause.phrase.points;
  switch (clause.kind) {
    case Clause::Kind::equations:
      for (const std::vector<Part>& sum : clause.equations) {
        Form& form = next(forms, count);
        for (const Part& part : sum) switch (part.kind) {
            case Part::Kind::constant:
              form.constant += part.factor;
              break;
            case Part::Kind::angle: {
              const PointId a = places[part.a], v = places[part.b], b = places[part.c];
              if (!figure.line(v, a).valid() || !figure.line(v, b).valid()) return false;
              const PointId first = figure.ray(v, a), second = figure.ray(v, b);
              if (first == second || figure.opposite_rays(v, first, second)) return false;
              add_term(form, unknowns.angle(v, first, second), part.factor);
              break;
            }
            case Part::Kind::length: {
              const PointId a = places[part.a], b = places[part.b];
              if (!figure.line(a, b).valid()) return false;
              add_term(form, unknowns.length(a, b), part.factor);
              break;
            }
            case Part::Kind::number:
              add_term(form, unknowns.intern({UnknownKind::number, {}, {}, part.name}), part.factor);
              break;
          }
      }
      return true;
    case Clause::Kind::lines: {
      const UnknownId fact = line_fact(clause.fact, places[p[0].index()], places[p[1].index()], places[p[2].index()],
                                       places[p[3].index()], figure, unknowns);
      if (!fact.valid()) return false;
      add_term(next(forms, count), fact, 1);
      return true;
    }
    case Clause::Kind::points: {
      std::array<PointId, 8> few;
      std::vector<PointId> many;
      if (p.size() > few.size()) many.resize(p.size());
      const std::span<PointId> at(many.empty() ? few.data() : many.data(), p.size());
      for (std::size_t i = 0; i < p.size(); ++i) at[i] = places[p[i].index()];
      add_term(next(forms, count), point_fact(clause.fact, at, unknowns), 1);
      return true;
    }
    case Clause::Kind::other:
      break;
  }
  const Meaning meaning = meaning_of(clause.phrase, places, figure, unknowns);
  if (meaning.degenerate) return false;
  if (given && meaning.one_is_enough) {
    // Any right angle at the crossing: the one already known, or the first.
    const auto known =
        std::find_if(meaning.forms.begin(), meaning.forms.end(), [&](const Form& f) { return knowledge.entails(f); });
    next(forms, count) = known == meaning.forms.end() ? meaning.forms.front() : *known;
    return true;
  }
  for (const Form& form : meaning.forms) next(forms, count) = form;
  return true;
}

bool RuleForms::fill_forms(const std::vector<PointId>& places, Knowledge& knowledge, Instance& instance) const {
  std::size_t premises = 0, conclusions = 0;
  for (const Clause& clause : given_)
    if (!add_forms(clause, places, knowledge, true, instance.premises, premises)) return false;
  for (const Clause& clause : then_)
    if (!add_forms(clause, places, knowledge, false, instance.conclusions, conclusions)) return false;
  // Lines that no sentence names have to be drawn first.
  const Arrangement& figure = knowledge.arrangement;
  for (const auto& [a, b] : lines_used_) {
    const LineId l = figure.line(places[a.index()], places[b.index()]);
    if (!l.valid() || !figure.is_joined(l)) continue;
    std::array<PointId, 2> ends{figure.points_on(l)[0], figure.points_on(l)[1]};
    const UnknownId fact = point_fact(FactKind::joined, ends, knowledge.unknowns);
    const bool drawn = std::any_of(instance.premises.begin(), instance.premises.begin() + static_cast<std::ptrdiff_t>(premises),
                                   [&](const Form& f) { return f.terms.size() == 1 && f.terms[0].first == fact; });
    if (!drawn) add_term(next(instance.premises, premises), fact, 1);
  }
  instance.premises.resize(premises);
  instance.conclusions.resize(conclusions);
  return true;
}

void RuleForms::fill_positions(const std::vector<PointId>& places, Instance& instance) const {
  instance.positions.clear();
  for (const Position& over_variables : positions_) {
    const auto at = [&](PointId variable) { return variable.valid() ? places[variable.index()] : variable; };
    const Position position{over_variables.kind, at(over_variables.a), at(over_variables.b), at(over_variables.c),
                            at(over_variables.d)};
    if (position.a == position.b && position.kind == PositionKind::same_side) continue;
    const Position one_form = canonical(position);
    if (std::find(instance.positions.begin(), instance.positions.end(), one_form) == instance.positions.end())
      instance.positions.push_back(one_form);
  }
}

}  // namespace prover
