#include "prover/library/coverage.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <set>

#include "prover/sketch/sketch.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

using Triple = std::array<PointId, 3>;

Phrase on_one_line(const Triple& points) {
  Phrase phrase;
  phrase.predicate = Predicate::collinear;
  phrase.points.assign(points.begin(), points.end());
  phrase.point_spans.resize(3);
  return phrase;
}

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

bool covers(const TheoremCase& one, const Sketch& figure) {
  return std::all_of(one.when.begin(), one.when.end(), [&](const Phrase& p) { return holds(p, figure); });
}

}  // namespace

std::string uncovered_figure(const Theorem& theorem, const Budget& budget) {
  if (theorem.cases.size() == 1 && theorem.cases[0].when.empty()) return {};
  std::vector<PointId> identity;
  for (std::size_t i = 0; i < theorem.points; ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  std::set<Triple> edges;
  for (const TheoremCase& one : theorem.cases)
    for (const Phrase& phrase : one.when)
      for (const Position& position : positions_of(phrase, identity))
        for (Triple triple : boundaries_of(position)) {
          std::sort(triple.begin(), triple.end());
          edges.insert(triple);
        }
  auto examine = [&](const std::vector<Phrase>& givens, int wanted) -> std::optional<Sketch> {
    for (Sketch& figure : figures_of(givens, theorem.points, wanted, budget).sketches)
      if (std::none_of(theorem.cases.begin(), theorem.cases.end(),
                       [&](const TheoremCase& one) { return covers(one, figure); }))
        return std::move(figure);
    return std::nullopt;
  };
  const auto in_words = [&](const Sketch& figure) {
    std::string text = "the figure";
    for (std::size_t p = 0; p < theorem.points; ++p)
      text += " " + theorem.names.points[p] + " (" + std::to_string(figure.points[p][0]) + ", " +
              std::to_string(figure.points[p][1]) + ")";
    return text;
  };
  if (const auto figure = examine(theorem.premises, 24)) return in_words(*figure);
  for (const Triple& edge : edges) {
    std::vector<Phrase> givens = theorem.premises;
    givens.push_back(on_one_line(edge));
    if (const auto figure = examine(givens, 4))
      return describe(on_one_line(edge), theorem.names) + ", " + in_words(*figure);
  }
  return {};
}

std::string open_boundary(const Proof& proof, const Statement& statement, const Budget& budget) {
  std::set<Triple> edges;
  for (const SeenPosition& seen : proof.positions)
    if (seen.source == PositionSource::seen)
      for (Triple triple : boundaries_of(seen.position)) {
        std::sort(triple.begin(), triple.end());
        if (triple[0] != triple[1] && triple[1] != triple[2]) edges.insert(triple);
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
