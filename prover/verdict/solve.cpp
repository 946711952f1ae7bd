#include "prover/verdict/solve.hpp"

#include <algorithm>
#include <set>

#include "prover/base/log.hpp"
#include "prover/language/phrase_points.hpp"

namespace prover {

namespace {

SketchReport timed_sketch(const Statement& statement, const Budget& budget, const SketchOptions& options, double& ms) {
  const auto start = Budget::Clock::now();
  SketchReport report = sketch(phrases_of(statement), statement.names.points.size(), budget, options);
  ms += std::chrono::duration<double, std::milli>(Budget::Clock::now() - start).count();
  log::info("sketch: {} figures from {} starts", report.sketches.size(), report.starts_tried);
  return report;
}

bool shows(const Sketch& figure, const Position& p) {
  switch (p.kind) {
    case PositionKind::between:
      return between(figure, p.a, p.b, p.c);
    case PositionKind::not_collinear:
      return orientation(figure, p.a, p.b, p.c) != 0;
    case PositionKind::same_side:
      return orientation(figure, p.c, p.d, p.a) * orientation(figure, p.c, p.d, p.b) > 0;
    case PositionKind::opposite_sides:
      return orientation(figure, p.c, p.d, p.a) * orientation(figure, p.c, p.d, p.b) < 0;
  }
  return false;
}

// What a figure would have to show for the position to fail, as givens to draw with; nothing for degenerate ways.
std::vector<Phrase> opposites(const Position& p) {
  switch (p.kind) {
    case PositionKind::same_side:
      return {phrase_of(Predicate::opposite_sides, {p.a, p.b, p.c, p.d})};
    case PositionKind::opposite_sides:
      return {phrase_of(Predicate::same_side, {p.a, p.b, p.c, p.d})};
    case PositionKind::between:
      return {phrase_of(Predicate::line_order, {p.b, p.a, p.c}), phrase_of(Predicate::line_order, {p.a, p.c, p.b})};
    case PositionKind::not_collinear:
      break;
  }
  return {};
}

std::set<Position> seen_positions(const Attempt& attempt) {
  std::set<Position> seen;
  auto note = [&](const CheckedProof& proof) {
    for (const SeenPosition& p : proof.proof.positions)
      if (p.source == PositionSource::seen) seen.insert(p.position);
  };
  for (const auto& goal : attempt.goals)
    if (goal) note(*goal);
  if (attempt.contradiction) note(*attempt.contradiction);
  return seen;
}


// The position that tells this case from the rest of the figures, in words.
std::string case_name(const std::set<Position>& seen, const std::vector<Sketch>& figures,
                      const std::vector<std::size_t>& covered, const Names& names) {
  for (const Position& p : seen) {
    bool differs = false;
    for (std::size_t i = 0; i < figures.size(); ++i)
      if (std::find(covered.begin(), covered.end(), i) == covered.end()) differs |= !shows(figures[i], p);
    if (differs) return describe(p, names);
  }
  return {};
}

// Figures differ in a position that matters: prove in one, see which others show what that proof reads, repeat.
void split(const Statement& statement, const AttemptOptions& options, const Budget& budget, StageTimes& times,
           Solved& solved) {
  const auto& figures = solved.figures.sketches;
  std::vector<bool> covered(figures.size(), false);
  constexpr std::size_t most_cases = 12;
  for (std::size_t i = 0; i < figures.size() && solved.cases.size() < most_cases && !budget.exhausted(); ++i) {
    if (covered[i]) continue;
    SolvedCase one;
    one.attempt = attempt(statement, {figures[i]}, options, budget.share(0.5), times);
    if (!one.attempt.all_reached) {
      AttemptOptions joined = options;
      joined.join_points = true;
      one.attempt = attempt(statement, {figures[i]}, joined, budget.share(0.5), times);
    }
    if (!one.attempt.all_reached) {
      solved.cases.clear();
      return;  // not every figure is answered: no verdict by cases
    }
    const std::set<Position> seen = seen_positions(one.attempt);
    for (std::size_t k = i; k < figures.size(); ++k)
      if (std::all_of(seen.begin(), seen.end(), [&](const Position& p) { return shows(figures[k], p); })) {
        one.views.push_back(k);
        covered[k] = true;
      }
    one.name = case_name(seen, figures, one.views, statement.names);
    solved.cases.push_back(std::move(one));
  }
  solved.covers_all_figures = std::all_of(covered.begin(), covered.end(), [](bool c) { return c; });
}

// Agreement of figures is evidence, not proof: every position that a proof reads from them is challenged by trying
// to draw the opposite. True when that succeeded; the figure found joins the others.
bool challenged(const Statement& statement, const Attempt& one, const Budget& budget, Solved& solved, double& ms) {
  SketchOptions quick;
  quick.wanted = 1;
  quick.starts = 60;
  quick.seek_arrangements = false;
  bool found = false;
  for (const Position& p : seen_positions(one))
    for (const Phrase& opposite : opposites(p)) {
      if (budget.exhausted()) return found;
      Statement other = statement;
      other.givens.push_back({opposite, {}, false});
      SketchReport report = timed_sketch(other, budget.share(0.5), quick, ms);
      if (report.sketches.empty()) continue;
      solved.figures.sketches.push_back(std::move(report.sketches[0]));
      found = true;
    }
  return found;
}

std::vector<std::size_t> all_of(const std::vector<Sketch>& figures) {
  std::vector<std::size_t> all(figures.size());
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
  return all;
}

}  // namespace

Solved solve(const Statement& statement, const AttemptOptions& options, const Budget& budget, StageTimes& times,
             double& sketch_ms) {
  Solved solved;
  auto keep = [&](Attempt&& one) {
    solved.cases.clear();
    solved.cases.push_back({{}, all_of(solved.figures.sketches), std::move(one)});
    solved.covers_all_figures = true;
  };
  solved.added = examine_added_lines(statement, budget.share(0.3));
  if (!solved.added.objection.empty()) return solved;
  auto settled = [](const Attempt& one) { return one.all_reached || one.contradiction.has_value(); };

  Attempt first = attempt(statement, {}, options, budget, times);
  if (settled(first)) {
    SketchOptions exists;
    exists.wanted = 1;
    exists.seek_arrangements = false;
    if (first.all_reached) solved.figures = timed_sketch(statement, budget.share(0.5), exists, sketch_ms);
    keep(std::move(first));
    return solved;
  }
  solved.figures = timed_sketch(statement, budget.share(0.4), {}, sketch_ms);
  const auto& figures = solved.figures.sketches;
  if (figures.empty()) {  // perhaps because there is none: with named points joined a conflict may show
    AttemptOptions joined = options;
    joined.join_points = true;
    Attempt second = attempt(statement, {}, joined, budget.share(0.6), times);
    keep(settled(second) ? std::move(second) : std::move(first));
    return solved;
  }
  // Drawn lines, then named points joined; again when a challenge finds a figure that shows something else.
  AttemptOptions joined = options;
  joined.join_points = true;
  Attempt best;
  constexpr int most_challenges = 4;
  for (int round = 0; round <= most_challenges && !budget.exhausted(); ++round) {
    best = attempt(statement, figures, options, budget.share(0.6), times);
    if (!settled(best) && !budget.exhausted()) {
      Attempt third = attempt(statement, figures, joined, budget.share(0.6), times);
      if (settled(third)) best = std::move(third);
    }
    if (!settled(best)) break;
    if (!challenged(statement, best, budget, solved, sketch_ms)) {
      keep(std::move(best));
      return solved;
    }
  }
  if (!budget.exhausted()) split(statement, options, budget, times, solved);
  if (solved.cases.empty()) {
    keep(std::move(best));
    solved.covers_all_figures = false;
  }
  return solved;
}

}  // namespace prover
