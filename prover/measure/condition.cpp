#include "prover/measure/condition.hpp"

#include <algorithm>
#include <cmath>

#include "prover/language/phrase_points.hpp"
#include "prover/sketch/walk.hpp"

namespace prover {

namespace {

constexpr double exact = 1e-5;  // for coordinates of six digits, 10 across
constexpr double clear = 0.02;  // a radian, or by the size of the lengths: wrong beyond doubt
constexpr std::size_t steps = 400;

// How far three points are from a line: the sine of the smallest angle that they make.
double flatness(const Sketch& figure, PointId a, PointId b, PointId c) {
  double least = 1;
  for (const Angle& angle : {Angle{a, b, c}, Angle{b, c, a}, Angle{c, a, b}})
    least = std::min(least, std::fabs(std::sin(measure(angle, figure) * 3.14159265358979 / 180)));
  return least;
}

bool same_line(const Sketch& figure, PointId a, PointId b, PointId c, PointId d) {
  const auto on = [&](PointId p) { return p == a || p == b || flatness(figure, a, b, p) < exact; };
  return on(c) && on(d);
}

// What is said of it, a figure has: angles with two arms, segments and lines with two ends, two lines, three corners.
bool has_meaning_in(const Phrase& phrase, const Sketch& figure) {
  if (!has_meaning(phrase)) return false;
  const std::vector<PointId>& p = phrase.points;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (const auto* angle = std::get_if<Angle>(&term.quantity))
        if (const double size = measure(*angle, figure), least = angle->reflex ? 181 : 1; !(size > least && size < least + 178))
          return false;
  switch (phrase.predicate) {
    case Predicate::parallel:
    case Predicate::perpendicular: return !same_line(figure, p[0], p[1], p[2], p[3]);
    case Predicate::congruent:
    case Predicate::similar: return flatness(figure, p[0], p[1], p[2]) > clear && flatness(figure, p[3], p[4], p[5]) > clear;
    case Predicate::concyclic:
      for (std::size_t i = 0; i < p.size(); ++i)
        for (std::size_t j = i + 1; j < p.size(); ++j)
          for (std::size_t k = j + 1; k < p.size(); ++k)
            if (flatness(figure, p[i], p[j], p[k]) < clear) return false;
      return true;
    default: return true;
  }
}

bool fails(const Phrase& phrase, const Sketch& figure) { return !holds(phrase, figure, exact) && !holds(phrase, figure, clear); }

void round_off(Sketch& figure) {
  for (auto& point : figure.points)
    for (double& x : point) x = std::round(x * 1e6) / 1e6 + 0.0;
}

Sketch widened(Sketch figure, double factor) {
  for (auto& point : figure.points)
    for (double& x : point) x *= factor;
  return figure;
}

// Ways in which a condition can fail, where a figure at large would hardly show them.
std::vector<std::vector<Phrase>> denials(const Phrase& phrase) {
  const std::vector<PointId>& p = phrase.points;
  std::vector<std::vector<Phrase>> ways = {{}};
  const auto orders = [&](PointId a, PointId b, PointId c) {
    for (const auto& row : {std::vector{a, b, c}, std::vector{b, c, a}, std::vector{c, a, b}})
      ways.push_back({phrase_of(Predicate::line_order, row)});
  };
  switch (phrase.predicate) {
    case Predicate::triangle: orders(p[0], p[1], p[2]); break;
    case Predicate::same_side:
      ways.push_back({phrase_of(Predicate::opposite_sides, p)});
      ways.push_back({phrase_of(Predicate::collinear, {p[0], p[2], p[3]})});
      break;
    case Predicate::opposite_sides:
      ways.push_back({phrase_of(Predicate::same_side, p)});
      ways.push_back({phrase_of(Predicate::collinear, {p[0], p[2], p[3]})});
      break;
    case Predicate::line_order:
      if (p.size() == 3) orders(p[1], p[2], p[0]);
      if (p.size() == 4) {
        ways.push_back({phrase_of(Predicate::line_order, {p[1], p[0], p[2], p[3]})});
        ways.push_back({phrase_of(Predicate::line_order, {p[1], p[0], p[3], p[2]})});
        ways.push_back({phrase_of(Predicate::line_order, {p[1], p[2], p[0], p[3]})});
        ways.push_back({phrase_of(Predicate::line_order, {p[1], p[2], p[3], p[0]})});
      }
      break;
    case Predicate::parallel:
      if (p[0] != p[2] && p[1] != p[2]) ways.push_back({phrase_of(Predicate::collinear, {p[0], p[1], p[2], p[3]})});
      break;
    case Predicate::inside_angle:
    case Predicate::inside_polygon: ways.push_back({phrase_of(Predicate::outside_polygon, p)}); break;
    default: break;
  }
  return ways;
}

}  // namespace

std::vector<Phrase> conditions_of(const Rule& rule) {
  std::vector<Phrase> conditions = rule.given;
  conditions.insert(conditions.end(), rule.where.begin(), rule.where.end());
  return conditions;
}

bool shows_need(const Rule& rule, std::size_t condition, const Sketch& figure, const std::vector<int>& letter_at) {
  const std::vector<Phrase> conditions = conditions_of(rule);
  for (std::size_t i = 0; i < conditions.size(); ++i) {
    const Phrase phrase = renamed(conditions[i], letter_at);
    if (i == condition) {
      const bool is_position = i >= rule.given.size();
      if (has_meaning(phrase) && !(is_position ? !holds(phrase, figure, exact) : fails(phrase, figure))) return false;
    } else if (!has_meaning_in(phrase, figure) || !holds(phrase, figure, exact)) {
      return false;
    }
  }
  return std::any_of(rule.then.begin(), rule.then.end(), [&](const Phrase& claimed) {
    const Phrase claim = renamed(claimed, letter_at);
    return has_meaning_in(claim, figure) && fails(claim, figure);
  });
}

std::optional<CounterFigure> figure_without(const Rule& rule, std::size_t condition, std::uint64_t seed) {
  Rule less = rule;
  const bool is_given = condition < rule.given.size();
  auto& list = is_given ? less.given : less.where;
  list.erase(list.begin() + static_cast<std::ptrdiff_t>(is_given ? condition : condition - rule.given.size()));
  const Phrase left_out = conditions_of(rule)[condition];
  std::optional<CounterFigure> best;
  double clearest = 0;
  for (const LetterCase& drawn : letter_cases(less, 1)) {
    if (best) break;  // letters all apart come first, and are easier to read
    const std::vector<int>& at = drawn.point_of;
    for (const std::vector<Phrase>& denied : denials(renamed(left_out, at))) {
      if (!std::all_of(denied.begin(), denied.end(), has_meaning)) continue;
      std::vector<Phrase> premises = drawn.premises;
      premises.insert(premises.end(), denied.begin(), denied.end());
      SketchOptions how;
      how.wanted = 12;
      how.starts = 120;
      how.seed = seed;
      const auto consider = [&](Sketch figure) {
        double least = 1e300, most = 0, nearest_line = 1;
        const std::size_t n = figure.points.size();
        for (std::size_t a = 0; a < n; ++a)
          for (std::size_t b = a + 1; b < n; ++b) {
            const PointId p(static_cast<std::int64_t>(a)), q(static_cast<std::int64_t>(b));
            const double apart = std::hypot(figure.points[a][0] - figure.points[b][0], figure.points[a][1] - figure.points[b][1]);
            least = std::min(least, apart);
            most = std::max(most, apart);
            for (std::size_t c = b + 1; c < n; ++c)
              if (const double flat = flatness(figure, p, q, PointId(static_cast<std::int64_t>(c))); flat > exact)
                nearest_line = std::min(nearest_line, flat);
          }
        const double clarity = std::min(least / most, nearest_line);
        if (!(clarity > clearest) || clarity < 1e-3) return;
        figure = widened(figure, 10 / most);
        round_off(figure);
        if (!shows_need(rule, condition, figure, at)) return;
        clearest = clarity;
        best = CounterFigure{drawn.names, std::move(figure)};
      };
      const std::vector<Sketch> starts = sketch(premises, drawn.names.points.size(), {}, how).sketches;
      for (const Sketch& figure : starts) consider(figure);
      if (starts.empty()) continue;
      Walk walk(premises, drawn.claims, starts, seed);
      for (std::size_t step = 0; step < steps; ++step)
        if (walk.step() && walk.broken()) consider(walk.figure());
    }
  }
  return best;
}

}  // namespace prover
