#include "prover/chain/matcher.hpp"

#include <algorithm>

#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

Matcher::Matcher(const Catalogue& catalogue, RuleId rule, const PlanBook& plans, Knowledge& knowledge,
                 std::size_t most_steps)
    : catalogue_(catalogue), rule_(rule), knowledge_(knowledge), rule_plans_(&plans[rule]), plans_(&plans[rule].plans),
      places_(catalogue[rule].variables.points.size()), most_steps_(most_steps) {
  for (const MatchProgram& program : rule_plans_->programs) lines_.resize(std::max(lines_.size(), program.lines));
  instance_.rule = rule;
  instance_.cost = catalogue[rule].cost;
}

void Matcher::match_figure() {
  since_ = until_ = 0;
  run(rule_plans_->programs.front(), 0);
}

void Matcher::match_facts(std::size_t since, std::size_t until) {
  since_ = since;
  until_ = until;
  for (const MatchProgram& program : rule_plans_->programs) run(program, 0);
}

bool Matcher::known(const Position& p) const {
  const auto place = [&](PointId variable) { return variable.valid() ? places_[variable.index()] : variable; };
  const Position position{p.kind, place(p.a), place(p.b), place(p.c), place(p.d)};
  const auto& [kind, a, b, c, d] = position;
  if (kind == PositionKind::between || kind == PositionKind::not_collinear) {
    if (a == b || b == c || a == c) return false;
  } else {
    if (c == d || a == c || a == d || b == c || b == d) return false;
    if (a == b && kind == PositionKind::opposite_sides) return false;
  }
  return knowledge_.arrangement.known(position);
}

bool Matcher::fact_known(const Phrase& phrase) const {
  const Meaning meaning = meaning_of(phrase, places_, knowledge_.arrangement, knowledge_.unknowns);
  if (meaning.degenerate || meaning.forms.empty()) return false;
  if (meaning.one_is_enough)
    return std::any_of(meaning.forms.begin(), meaning.forms.end(),
                       [&](const Form& f) { return knowledge_.entails(f); });
  return std::all_of(meaning.forms.begin(), meaning.forms.end(), [&](const Form& f) { return knowledge_.entails(f); });
}

// Of the places that a symmetry of the rule turns into each other, the least is taken; what the first `size` variables
// say of that.
bool Matcher::in_order(const std::vector<int>& symmetry, std::size_t size) const {
  for (std::size_t v = 0; v < size; ++v) {
    const PointId image = at(symmetry[v]);
    if (image != places_[v]) return places_[v] < image;
  }
  return true;
}

bool Matcher::first_of_its_images() const {
  const auto& symmetries = plans_->front().symmetries;
  return std::all_of(symmetries.begin(), symmetries.end(),
                     [&](const auto& symmetry) { return in_order(symmetry, places_.size()); });
}

bool Matcher::passes(const MatchTest& test) const {
  const Arrangement& figure = knowledge_.arrangement;
  switch (test.kind) {
    case MatchTest::Kind::position:
      return known(test.position);
    case MatchTest::Kind::drawn:
      return figure.line(places_[test.a], places_[test.b]).valid();
    case MatchTest::Kind::two_lines:
      return figure.line(places_[test.a], places_[test.b]) != figure.line(places_[test.b], places_[test.c]);
    case MatchTest::Kind::angle: {
      const PointId a = places_[test.a], v = places_[test.b], b = places_[test.c];
      if (figure.line(v, a) != figure.line(v, b)) return true;
      const PointId first = figure.ray(v, a), second = figure.ray(v, b);
      return first != second && !figure.opposite_rays(v, first, second);
    }
    case MatchTest::Kind::image:
      return in_order(plans_->front().symmetries[test.index], test.size);
    case MatchTest::Kind::fact:
      return fact_known(plans_->front().conditions[test.index]);
  }
  return false;
}

bool Matcher::stopped() {
  if (steps_ >= most_steps_ || knowledge_.full() || out_of_time_) return true;
  if (++steps_ % 256 == 0) out_of_time_ = knowledge_.budget.exhausted();
  return out_of_time_;
}

bool Matcher::go_on(const MatchProgram& program, std::size_t move) {
  for (const MatchTest& test : program.moves[move].tests)
    if (!passes(test)) return false;
  if (move + 1 < program.moves.size()) return run(program, move + 1) && move >= program.free_from;
  offer_at(places_);
  return move >= program.free_from;
}

bool Matcher::place(const MatchProgram& program, std::size_t move, PointId point) {
  places_[program.moves[move].variable] = point;
  return go_on(program, move);
}

bool Matcher::read_points(const MatchProgram& program, std::size_t move, const KnownFact& fact) {
  const MatchMove& m = program.moves[move];
  if (fact.points.size() != m.points.size()) return false;
  for (const auto& reading : m.readings) {
    bool fits = true;
    for (std::size_t i = 0; i < m.points.size() && fits; ++i) {
      const PointId point = fact.points[reading[i]];
      if (m.placed[i])
        fits = places_[m.points[i]] == point;
      else
        places_[m.points[i]] = point;
    }
    if (fits && go_on(program, move)) return true;
  }
  return false;
}

bool Matcher::read_facts(const MatchProgram& program, std::size_t move) {
  const MatchMove& m = program.moves[move];
  const Arrangement& figure = knowledge_.arrangement;
  const auto fits = [&](const std::pair<int, int>& variables, LineId line) {
    return variables.first < 0 || (figure.stands_on(at(variables.first), line) &&
                                   (variables.second < 0 || figure.stands_on(at(variables.second), line)));
  };
  // A line that is named already: the facts that speak of it.
  LineId named;
  for (const auto& [a, b] : {m.first_named, m.second_named})
    if (a >= 0 && b >= 0) named = figure.line(at(a), at(b));
  const bool of_a_line = m.first_named.second >= 0 || m.second_named.second >= 0;
  if (of_a_line && !named.valid()) return false;
  const auto& known = of_a_line ? knowledge_.facts_about(m.fact, named) : knowledge_.facts_of(m.fact);
  const std::size_t from = m.new_facts ? since_ : 0;
  for (auto at = std::lower_bound(known.begin(), known.end(), from); at != known.end() && *at < until_; ++at) {
    const KnownFact& fact = knowledge_.facts()[*at];
    if (m.kind == MatchMove::Kind::fact_of_lines) {
      for (const bool turned : {false, true}) {
        const LineId first = turned ? fact.second : fact.first, second = turned ? fact.first : fact.second;
        if (!fits(m.first_named, first) || !fits(m.second_named, second)) continue;
        lines_[m.line] = first;
        lines_[m.line + 1] = second;
        if (go_on(program, move)) return true;
      }
      continue;
    }
    if (m.kind == MatchMove::Kind::fact_of_tangent) lines_[m.line] = fact.first;
    if (read_points(program, move, fact)) return true;
  }
  return false;
}

bool Matcher::run(const MatchProgram& program, std::size_t move) {
  if (stopped()) return false;
  const MatchMove& m = program.moves[move];
  const Arrangement& figure = knowledge_.arrangement;
  switch (m.kind) {
    case MatchMove::Kind::fact_of_lines:
    case MatchMove::Kind::fact_of_points:
    case MatchMove::Kind::fact_of_tangent:
      return read_facts(program, move);
    case MatchMove::Kind::lines_all:
      for (std::size_t l = 0; l < figure.line_count(); ++l) {
        lines_[m.line] = LineId(static_cast<std::int64_t>(l));
        if (go_on(program, move)) return true;
      }
      return false;
    case MatchMove::Kind::lines_through:
      for (const LineId l : figure.lines_through(at(m.near))) {
        lines_[m.line] = l;
        if (go_on(program, move)) return true;
      }
      return false;
    case MatchMove::Kind::line_of_two:
      lines_[m.line] = figure.line(at(m.near), at(m.far));
      return lines_[m.line].valid() && go_on(program, move);
    case MatchMove::Kind::on_line:
      for (const PointId p : figure.points_on(lines_[m.line]))
        if (place(program, move, p)) return true;
      return false;
    case MatchMove::Kind::other_on_line:
      for (const PointId p : figure.points_on(lines_[m.line]))
        if (p != at(m.near) && (m.far < 0 || p != at(m.far)) && place(program, move, p)) return true;
      return false;
    case MatchMove::Kind::end_on_line:
      for (const PointId p : figure.points_on(lines_[m.line]))
        if (p != at(m.near) && (m.far < 0 || p != at(m.far)) && figure.ray(at(m.near), p) == p && place(program, move, p))
          return true;
      return false;
    case MatchMove::Kind::ray_on_line:
      for (const PointId p : figure.rays_at(at(m.near)))
        if (figure.line(at(m.near), p) == lines_[m.line] && place(program, move, p)) return true;
      return false;
    case MatchMove::Kind::one_ray_on_line:
      for (const PointId p : figure.rays_at(at(m.near)))
        if (figure.line(at(m.near), p) == lines_[m.line]) return place(program, move, p);
      return false;
    case MatchMove::Kind::name_line: {
      const auto& on = figure.points_on(lines_[m.line]);
      places_[static_cast<std::size_t>(m.near)] = on[1];
      return place(program, move, on[0]);
    }
    case MatchMove::Kind::stands_on: {
      const PointId p = places_[m.variable];
      return (m.near < 0 || p != at(m.near)) && (m.far < 0 || p != at(m.far)) &&
             figure.stands_on(p, lines_[m.line]) && go_on(program, move);
    }
    case MatchMove::Kind::is_line:
      return figure.line(at(m.near), at(m.far)) == lines_[m.line] && go_on(program, move);
    case MatchMove::Kind::ray:
      for (const PointId p : figure.rays_at(at(m.near)))
        if (place(program, move, p)) return true;
      return false;
    case MatchMove::Kind::neighbour:
      for (const PointId p : figure.joined_to(at(m.near)))
        if (place(program, move, p)) return true;
      return false;
    case MatchMove::Kind::joined:
      for (const LineId l : figure.lines_through(at(m.near)))
        for (const PointId p : figure.points_on(l))
          if (p != at(m.near) && place(program, move, p)) return true;
      return false;
    case MatchMove::Kind::any_point:
      for (std::size_t i = 0; i < figure.point_count(); ++i)
        if (place(program, move, PointId(static_cast<std::int64_t>(i)))) return true;
      return false;
    case MatchMove::Kind::tests_only:
      return go_on(program, move);
  }
  return false;
}

void Matcher::offer_where_known(const std::vector<PointId>& places) {
  places_ = places;
  const auto& where = rule_plans_->where;
  if (first_of_its_images() && std::all_of(where.begin(), where.end(), [&](const Position& p) { return known(p); }))
    offer_at(places);
}

void Matcher::offer_at(const std::vector<PointId>& places) {
  instance_.places = places;
  if (!rule_plans_->forms->fill_forms(places, knowledge_, instance_) || !knowledge_.is_new(instance_)) return;
  rule_plans_->forms->fill_positions(places, instance_);
  knowledge_.take(instance_);
}

}  // namespace prover
