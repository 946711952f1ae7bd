#include "prover/library/coverage.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

#include "prover/language/phrase_points.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

using Triple = std::array<PointId, 3>;

Phrase on_one_line(const Triple& points) { return phrase_of(Predicate::collinear, {points.begin(), points.end()}); }

// The triples that are in line at the boundary of a position.
std::vector<Triple> boundaries_of(const Position& p) {
  switch (p.kind) {
    case PositionKind::same_side:
    case PositionKind::opposite_sides: return {{p.a, p.c, p.d}, {p.b, p.c, p.d}};
    case PositionKind::not_collinear: return {{p.a, p.b, p.c}};
    case PositionKind::between: return {};  // its boundary has two points in one place
  }
  return {};
}

SketchReport figures_of(const std::vector<Phrase>& givens, std::size_t points, int wanted, const Budget& budget) {
  SketchOptions options;
  options.wanted = wanted;
  options.starts = wanted == 1 ? 60 : 12 * wanted;
  options.seek_arrangements = wanted > 1;
  return sketch(givens, points, budget, options);
}

// The boundary of what makes a case: a point on a line, or two quantities that are equal where one is greater.
std::vector<Phrase> boundaries_of(const Phrase& phrase, const std::vector<PointId>& identity) {
  if (phrase.predicate == Predicate::relation) {
    Phrase equal = phrase;
    bool differs = false;
    for (Comparison& comparison : equal.relation.comparisons) {
      differs |= comparison != Comparison::equal;
      comparison = Comparison::equal;
    }
    return differs ? std::vector<Phrase>{equal} : std::vector<Phrase>{};
  }
  std::vector<Phrase> edges;
  for (const Position& position : positions_of(phrase, identity))
    for (const Triple& triple : boundaries_of(position)) edges.push_back(on_one_line(triple));
  return edges;
}

bool covers(const TheoremCase& one, const Sketch& figure) {
  return std::all_of(one.when.begin(), one.when.end(), [&](const Phrase& p) { return holds(p, figure); });
}

}  // namespace

std::string uncovered_figure(const Theorem& theorem, const Budget& budget) {
  if (theorem.cases.size() == 1 && theorem.cases[0].when.empty()) return {};
  const std::vector<Phrase> premises = phrases_of(theorem.common);
  std::vector<PointId> identity;
  for (std::size_t i = 0; i < theorem.common.names.points.size(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  std::map<std::string, Phrase> edges;  // by their words: each once
  for (const TheoremCase& one : theorem.cases)
    for (const Phrase& phrase : one.when)
      for (const Phrase& edge : boundaries_of(phrase, identity)) edges.emplace(describe(edge, theorem.common.names), edge);
  auto examine = [&](const std::vector<Phrase>& givens, int wanted) -> std::optional<Sketch> {
    for (Sketch& figure : figures_of(givens, theorem.common.names.points.size(), wanted, budget).sketches)
      if (std::none_of(theorem.cases.begin(), theorem.cases.end(),
                       [&](const TheoremCase& one) { return covers(one, figure); }))
        return std::move(figure);
    return std::nullopt;
  };
  const auto in_words = [&](const Sketch& figure) {
    std::string text = "the figure";
    for (std::size_t p = 0; p < theorem.common.names.points.size(); ++p)
      text += " " + theorem.common.names.points[p] + " (" + std::to_string(figure.points[p][0]) + ", " +
              std::to_string(figure.points[p][1]) + ")";
    return text;
  };
  if (const auto figure = examine(premises, 24)) return in_words(*figure);
  for (const auto& [words, edge] : edges) {
    std::vector<Phrase> givens = premises;
    givens.push_back(edge);
    if (const auto figure = examine(givens, 4)) return words + ", " + in_words(*figure);
  }
  return {};
}

std::string open_boundary(const Proof& proof, const Statement& statement, const std::vector<bool>& names_line,
                          const Budget& budget) {
  std::set<Triple> edges;
  for (const SeenPosition& seen : proof.positions)
    if (seen.source == PositionSource::seen)
      for (Triple triple : boundaries_of(seen.position)) {
        std::sort(triple.begin(), triple.end());
        const bool free_choice = std::any_of(triple.begin(), triple.end(), [&](PointId p) {
          return p.index() < names_line.size() && names_line[p.index()];
        });
        if (!free_choice && triple[0] != triple[1] && triple[1] != triple[2]) edges.insert(triple);
      }
  for (const Goal& goal : statement.goals)
    for (const Phrase& claim : goal.claims)
      for (const Expression& expression : claim.relation.expressions)
        for (const Term& term : expression.terms)
          if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
            Triple named{angle->arm1, angle->vertex, angle->arm2};
            std::sort(named.begin(), named.end());
            edges.erase(named);
          }
  for (const Triple& edge : edges) {
    std::vector<Phrase> givens = phrases_of(statement);
    givens.push_back(on_one_line(edge));
    if (!figures_of(givens, statement.names.points.size(), 1, budget).sketches.empty())
      return describe(on_one_line(edge), statement.names);
  }
  return {};
}

}  // namespace prover
