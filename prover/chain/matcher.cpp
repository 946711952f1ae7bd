#include "prover/chain/matcher.hpp"

#include <algorithm>

#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

Matcher::Matcher(const Catalogue& catalogue, RuleId rule, const PlanBook& plans, Knowledge& knowledge,
                 std::size_t most_steps)
    : catalogue_(catalogue), rule_(rule), knowledge_(knowledge), plans_(&plans[rule].plans),
      places_(catalogue[rule].variables.points.size()), most_steps_(most_steps) {}

void Matcher::match_figure() {
  since_ = until_ = 0;
  run(plans_->front(), 0);
}

void Matcher::match_facts(std::size_t since, std::size_t until) {
  since_ = since;
  until_ = until;
  for (const MatchPlan& plan : *plans_) run(plan, 0);
}

template <class Continue>
void Matcher::with(std::size_t variable, PointId point, Continue&& go_on) {
  if (places_[variable].valid()) {
    if (places_[variable] == point) go_on();
    return;
  }
  places_[variable] = point;
  go_on();
  places_[variable] = PointId();
}

// Places the pair of variables so that together they name the line.
template <class Continue>
void Matcher::with_line(const MatchPlan& plan, PointId a, PointId b, LineId line, Continue&& go_on) {
  const Arrangement& figure = knowledge_.arrangement;
  const auto& on = figure.points_on(line);
  auto stands_on = [&](PointId p) { return std::find(on.begin(), on.end(), p) != on.end(); };
  const std::size_t va = a.index(), vb = b.index();
  if (places_[va].valid() && places_[vb].valid()) {
    if (figure.line(places_[va], places_[vb]) == line) go_on();
    return;
  }
  if (!places_[va].valid() && !places_[vb].valid() && plan.names_line[va] && plan.names_line[vb]) {
    with(va, on[0], [&] { with(vb, on[1], go_on); });
    return;
  }
  const bool b_first = places_[vb].valid() || (!places_[va].valid() && plan.arm_of[va] == b.value);
  const std::size_t first = b_first ? vb : va, second = b_first ? va : vb;
  auto place_second = [&](PointId corner) {
    if (plan.arm_of[second] == static_cast<int>(first) || plan.names_line[second]) {
      bool any = false;
      for (PointId p : figure.rays_at(corner))
        if (figure.line(corner, p) == line) {
          if (plan.names_line[second] && any) break;  // any point will do to name the line
          any = true;
          with(second, p, go_on);
        }
    } else {
      for (PointId p : on)
        if (p != corner) with(second, p, go_on);
    }
  };
  if (places_[first].valid()) {
    if (stands_on(places_[first])) place_second(places_[first]);
    return;
  }
  for (PointId p : on) with(first, p, [&] { place_second(p); });
}

void Matcher::place_lines(const MatchPlan& plan, std::size_t step, const Phrase& phrase, LineId first, LineId second) {
  const auto& p = phrase.points;
  with_line(plan, p[0], p[1], first, [&] { with_line(plan, p[2], p[3], second, [&] { run(plan, step + 1); }); });
}

void Matcher::place_points(const MatchPlan& plan, std::size_t step, const Phrase& phrase,
                           const std::vector<PointId>& points) {
  std::vector<std::size_t> placed;
  bool fits = true;
  for (std::size_t i = 0; i < points.size() && fits; ++i) {
    const std::size_t v = phrase.points[i].index();
    if (places_[v].valid()) {
      fits = places_[v] == points[i];
    } else {
      places_[v] = points[i];
      placed.push_back(v);
    }
  }
  if (fits) run(plan, step + 1);
  for (const std::size_t v : placed) places_[v] = PointId();
}

// The phrase names the line by the touching point and another one. A circle that is known by three points is named by
// them, in any order.
void Matcher::place_tangent(const MatchPlan& plan, std::size_t step, const Phrase& phrase, const KnownFact& fact) {
  const auto& p = phrase.points;
  const auto place_line = [&] { with_line(plan, p[0], p[1], fact.first, [&] { run(plan, step + 1); }); };
  if (fact.kind == FactKind::tangent) {
    with(p[1].index(), fact.points[0], [&] { with(p[2].index(), fact.points[1], place_line); });
    return;
  }
  std::vector<std::size_t> others;
  for (std::size_t i = 2; i < p.size(); ++i)
    if (p[i] != p[1]) others.push_back(p[i].index());
  if (others.size() != 2) return;
  for (const bool swapped : {false, true})
    with(p[1].index(), fact.points[0], [&] {
      with(others[swapped ? 1 : 0], fact.points[1],
           [&] { with(others[swapped ? 0 : 1], fact.points[2], place_line); });
    });
}

void Matcher::place_fact(const MatchPlan& plan, std::size_t step, const Phrase& phrase, const KnownFact& fact) {
  if (fact.kind != fact_kind_of(phrase)) return;
  if (fact.kind == FactKind::parallel || fact.kind == FactKind::perpendicular) {
    place_lines(plan, step, phrase, fact.first, fact.second);
    place_lines(plan, step, phrase, fact.second, fact.first);
    return;
  }
  if (fact.kind == FactKind::tangent || fact.kind == FactKind::tangent_through)
    return place_tangent(plan, step, phrase, fact);
  if (fact.points.size() != phrase.points.size()) return;
  for (const auto& reading : readings(fact.kind, fact.points)) place_points(plan, step, phrase, reading);
}

bool Matcher::positions_known(const Phrase& phrase) const {
  for (const Position& position : positions_of(phrase, places_)) {
    if (position.kind == PositionKind::between) {
      if (position.a == position.b || position.b == position.c || position.a == position.c) return false;
    } else if (position.kind == PositionKind::not_collinear) {
      if (position.a == position.b || position.b == position.c || position.a == position.c) return false;
    } else {
      if (position.c == position.d || position.a == position.c || position.a == position.d ||
          position.b == position.c || position.b == position.d)
        return false;
      if (position.a == position.b && position.kind == PositionKind::opposite_sides) return false;
    }
    if (!knowledge_.arrangement.known(position)) return false;
  }
  return true;
}

bool Matcher::fact_known(const Phrase& phrase) const {
  const Meaning meaning = meaning_of(phrase, places_, knowledge_.arrangement, knowledge_.unknowns);
  if (meaning.degenerate || meaning.forms.empty()) return false;
  if (meaning.one_is_enough)
    return std::any_of(meaning.forms.begin(), meaning.forms.end(),
                       [&](const Form& f) { return knowledge_.entails(f); });
  return std::all_of(meaning.forms.begin(), meaning.forms.end(), [&](const Form& f) { return knowledge_.entails(f); });
}

// Of the places that a symmetry of the rule turns into each other, the least is taken.
bool Matcher::first_of_its_images() const {
  for (const auto& symmetry : plans_->front().symmetries) {
    for (std::size_t v = 0; v < places_.size(); ++v) {
      const PointId image = places_[static_cast<std::size_t>(symmetry[v])];
      if (image == places_[v]) continue;
      if (image < places_[v]) return false;
      break;
    }
  }
  return true;
}

void Matcher::run(const MatchPlan& plan, std::size_t step) {
  if (steps_ >= most_steps_ || knowledge_.full() || (++steps_ % 256 == 0 && (out_of_time_ = knowledge_.budget.exhausted())) || out_of_time_) return;
  if (step == plan.steps.size()) {
    if (first_of_its_images()) offer_at(places_);
    return;
  }
  const MatchStep& s = plan.steps[step];
  const Arrangement& figure = knowledge_.arrangement;
  switch (s.action) {
    case MatchAction::known_fact: {
      const Phrase& phrase = plan.conditions[static_cast<std::size_t>(s.phrase)];
      const std::size_t from = step == 0 ? since_ : 0;
      const auto kind = fact_kind_of(phrase);
      if (!kind) break;
      const auto& known = knowledge_.facts_of(*kind);
      for (auto at = std::lower_bound(known.begin(), known.end(), from); at != known.end() && *at < until_; ++at)
        place_fact(plan, step, phrase, knowledge_.facts()[*at]);
      break;
    }
    case MatchAction::drawn_triangle: {
      const auto& p = plan.conditions[static_cast<std::size_t>(s.phrase)].points;
      // Corners already placed, or the points joined to them; every point only for the first.
      std::array<std::size_t, 3> v{p[0].index(), p[1].index(), p[2].index()};
      std::stable_partition(v.begin(), v.end(), [&](std::size_t i) { return places_[i].valid(); });
      auto candidates = [&](std::size_t i, PointId near) {
        if (places_[v[i]].valid()) return std::vector<PointId>{places_[v[i]]};
        if (near.valid()) return figure.joined_to(near);
        std::vector<PointId> every;
        for (std::size_t q = 0; q < figure.point_count(); ++q) every.emplace_back(static_cast<std::int64_t>(q));
        return every;
      };
      for (PointId a : candidates(0, PointId()))
        for (PointId b : candidates(1, a)) {
          const LineId ab = figure.line(a, b);
          if (a == b || !ab.valid()) continue;
          for (PointId c : candidates(2, b)) {
            if (c == a || c == b || !figure.line(a, c).valid() || !figure.line(b, c).valid() ||
                figure.line(b, c) == ab || !figure.known({PositionKind::not_collinear, a, b, c, {}}))
              continue;
            with(v[0], a, [&] { with(v[1], b, [&] { with(v[2], c, [&] { run(plan, step + 1); }); }); });
          }
        }
      break;
    }
    case MatchAction::on_line_order: {
      const Phrase& phrase = plan.conditions[static_cast<std::size_t>(s.phrase)];
      // points: ends and the point between them
      std::array<std::size_t, 3> v{phrase.points[0].index(), phrase.points[1].index(), phrase.points[2].index()};
      if (phrase.predicate != Predicate::line_order) std::swap(v[0], v[1]);  // midpoint M A B, on_segment P A B
      const bool rays = plan.arm_of[v[0]] == static_cast<int>(v[1]) && plan.arm_of[v[2]] == static_cast<int>(v[1]);
      auto on_line = [&](LineId l) {
        const auto& on = figure.points_on(l);
        for (PointId b : on) {
          if (places_[v[1]].valid() && places_[v[1]] != b) continue;
          for (PointId a : on) {
            if (a == b || (places_[v[0]].valid() && places_[v[0]] != a)) continue;
            if (rays && !places_[v[0]].valid() && figure.ray(b, a) != a) continue;
            for (PointId c : on) {
              if (c == a || c == b || (places_[v[2]].valid() && places_[v[2]] != c)) continue;
              if (rays && !places_[v[2]].valid() && figure.ray(b, c) != c) continue;
              if (!figure.known({PositionKind::between, a, b, c, {}})) continue;
              with(v[1], b, [&] { with(v[0], a, [&] { with(v[2], c, [&] { run(plan, step + 1); }); }); });
            }
          }
        }
      };
      std::vector<PointId> fixed;
      for (const std::size_t i : v)
        if (places_[i].valid()) fixed.push_back(places_[i]);
      if (fixed.size() >= 2) {
        if (const LineId l = figure.line(fixed[0], fixed[1]); l.valid()) on_line(l);
      } else if (fixed.size() == 1) {
        for (LineId l : figure.lines_through(fixed[0])) on_line(l);
      } else {
        for (std::size_t l = 0; l < figure.line_count(); ++l) on_line(LineId(static_cast<std::int64_t>(l)));
      }
      break;
    }
    case MatchAction::ray_at: {
      const PointId corner = places_[static_cast<std::size_t>(s.via)];
      for (PointId p : figure.rays_at(corner))
        with(static_cast<std::size_t>(s.variable), p, [&] { run(plan, step + 1); });
      break;
    }
    case MatchAction::joined_to: {
      const PointId from = places_[static_cast<std::size_t>(s.via)];
      for (LineId l : figure.lines_through(from))
        for (PointId p : figure.points_on(l))
          if (p != from) with(static_cast<std::size_t>(s.variable), p, [&] { run(plan, step + 1); });
      break;
    }
    case MatchAction::any_point:
      for (std::size_t i = 0; i < figure.point_count(); ++i)
        with(static_cast<std::size_t>(s.variable), PointId(static_cast<std::int64_t>(i)), [&] { run(plan, step + 1); });
      break;
    case MatchAction::test_position:
      if (positions_known(plan.conditions[static_cast<std::size_t>(s.phrase)])) run(plan, step + 1);
      break;
    case MatchAction::test_fact:
      if (fact_known(plan.conditions[static_cast<std::size_t>(s.phrase)])) run(plan, step + 1);
      break;
  }
}

void Matcher::offer_where_known(const std::vector<PointId>& places) {
  places_ = places;
  const MatchPlan& plan = plans_->front();
  bool known = first_of_its_images();
  for (std::size_t i = plan.given_count; i < plan.conditions.size() && known; ++i)
    known = positions_known(plan.conditions[i]);
  places_.assign(places_.size(), PointId());
  if (known) offer_at(places);
}

void Matcher::offer_at(const std::vector<PointId>& places) {
  const Rule& rule = catalogue_[rule_];
  const Arrangement& figure = knowledge_.arrangement;
  const MatchPlan& plan = plans_->front();
  Instance instance;
  instance.rule = rule_;
  instance.places = places;
  instance.cost = rule.cost;
  for (std::size_t i = 0; i < plan.conditions.size(); ++i) {
    const Phrase& phrase = plan.conditions[i];
    Meaning meaning = meaning_of(phrase, places, figure, knowledge_.unknowns);
    if (i < plan.given_count) {
      if (meaning.degenerate) return;
      if (meaning.one_is_enough) {
        // Any right angle at the crossing: the one already known, or the first.
        const auto known = std::find_if(meaning.forms.begin(), meaning.forms.end(),
                                        [&](const Form& f) { return knowledge_.entails(f); });
        instance.premises.push_back(known == meaning.forms.end() ? meaning.forms.front() : *known);
      } else {
        instance.premises.insert(instance.premises.end(), meaning.forms.begin(), meaning.forms.end());
      }
    }
    if (is_fact_phrase(phrase)) continue;  // a fact brings its positions with it
    for (const Position& position : meaning.positions) {
      const Position canonical_position = canonical(position);
      if (position.a == position.b && position.kind == PositionKind::same_side) continue;
      if (std::find(instance.positions.begin(), instance.positions.end(), canonical_position) ==
          instance.positions.end())
        instance.positions.push_back(canonical_position);
    }
  }
  for (const Phrase& phrase : rule.then) {
    Meaning meaning = meaning_of(phrase, places, figure, knowledge_.unknowns);
    if (meaning.degenerate) return;
    instance.conclusions.insert(instance.conclusions.end(), meaning.forms.begin(), meaning.forms.end());
  }
  // Lines that no sentence names have to be drawn first.
  std::vector<LineId> joined;
  for (const auto& [a, b] : plan.lines_used) {
    const LineId l = figure.line(places[a.index()], places[b.index()]);
    if (!l.valid() || !figure.is_joined(l) || std::find(joined.begin(), joined.end(), l) != joined.end()) continue;
    joined.push_back(l);
    instance.premises.push_back(Form::of(point_fact(FactKind::joined, figure.points_on(l), knowledge_.unknowns)));
  }
  knowledge_.offer(std::move(instance));
}

}  // namespace prover
