#include "prover/verdict/solve.hpp"

#include <algorithm>
#include <set>

#include "prover/base/log.hpp"
#include "prover/chain/inequalities.hpp"
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
  for (const auto& goal : attempt.goals)
    if (goal) seen.merge(seen_positions(goal->proof));
  if (attempt.contradiction) seen.merge(seen_positions(attempt.contradiction->proof));
  return seen;
}

// Figures differ in a position that matters: prove in one, see which others show what that proof reads, repeat.
void split(const Statement& statement, const AttemptOptions& options, const Budget& budget, StageTimes& times,
           Solved& solved) {
  const auto& figures = solved.figures.sketches;
  std::vector<bool> covered(figures.size(), false);
  constexpr std::size_t most_cases = 12;
  std::vector<CaseOfFigures> apart;
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
    one.views.push_back(i);
    for (std::size_t k = 0; k < figures.size(); ++k)
      if (k != i && std::all_of(seen.begin(), seen.end(), [&](const Position& p) { return shows(figures[k], p); }))
        one.views.push_back(k);
    for (const std::size_t v : one.views) covered[v] = true;
    apart.push_back({one.views, seen});
    solved.cases.push_back(std::move(one));
  }
  solved.covers_all_figures = std::all_of(covered.begin(), covered.end(), [](bool c) { return c; });
  const std::vector<std::vector<Position>> positions = told_apart(apart, figures);
  for (std::size_t c = 0; c < positions.size(); ++c) {
    solved.cases[c].told_by = positions[c];
    solved.cases[c].name = describe(positions[c], statement.names);
  }
}

// Every position that a proof reads from figures is challenged. True when one fell; the figure found joins the others.
bool challenged(const Statement& statement, const Attempt& one, const Budget& budget, Solved& solved, double& ms) {
  const std::size_t before = solved.figures.sketches.size();
  for (const Position& p : seen_positions(one))
    for (Sketch& figure : figures_against(statement, p, budget, ms)) solved.figures.sketches.push_back(std::move(figure));
  return solved.figures.sketches.size() > before;
}

std::vector<std::size_t> all_of(const std::vector<Sketch>& figures) {
  std::vector<std::size_t> all(figures.size());
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
  return all;
}

// No figure was found, perhaps because there is none: with inequalities, or with named points joined, a conflict may show.
std::optional<Attempt> hidden_conflict(const Statement& statement, const AttemptOptions& options, const Budget& budget,
                                       StageTimes& times) {
  AttemptOptions further = options;
  further.inequalities = true;
  for (const bool join : {false, true}) {
    further.join_points = join;
    Attempt one = attempt(statement, {}, further, budget.share(0.6), times);
    if (one.contradiction && trusted(*one.contradiction)) return one;
  }
  return std::nullopt;
}

bool asks_for_inequality(const Statement& statement) {
  return std::any_of(statement.goals.begin(), statement.goals.end(), [](const Goal& goal) {
    return std::any_of(goal.claims.begin(), goal.claims.end(), has_inequality);
  });
}

}  // namespace

std::set<Position> seen_positions(const Proof& proof) {
  std::set<Position> seen;
  for (const SeenPosition& p : proof.positions)
    if (p.source == PositionSource::seen) seen.insert(p.position);
  return seen;
}

std::vector<Sketch> figures_against(const Statement& statement, const Position& position, const Budget& budget,
                                    double& sketch_ms) {
  SketchOptions quick;
  quick.wanted = 1;
  quick.starts = 60;
  quick.seek_arrangements = false;
  std::vector<Sketch> found;
  for (const Phrase& opposite : opposites(position)) {
    if (budget.exhausted()) break;
    Statement other = statement;
    other.givens.push_back({opposite, {}, false});
    SketchReport report = timed_sketch(other, budget.share(0.5), quick, sketch_ms);
    if (!report.sketches.empty()) found.push_back(std::move(report.sketches[0]));
  }
  return found;
}

Solved solve(const Statement& statement, const AttemptOptions& given_options, const Budget& budget, StageTimes& times,
             double& sketch_ms) {
  AttemptOptions options = given_options;
  options.inequalities = options.inequalities || asks_for_inequality(statement);
  Solved solved;
  auto keep = [&](Attempt&& one) {
    solved.cases.clear();
    solved.cases.push_back({{}, {}, all_of(solved.figures.sketches), std::move(one)});
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
    if (first.all_reached && solved.figures.sketches.empty())
      if (auto conflict = hidden_conflict(statement, options, budget, times)) first = std::move(*conflict);
    keep(std::move(first));
    return solved;
  }
  solved.figures = timed_sketch(statement, budget.share(0.4), {}, sketch_ms);
  const auto& figures = solved.figures.sketches;
  if (figures.empty()) {
    auto conflict = hidden_conflict(statement, options, budget, times);
    keep(conflict ? std::move(*conflict) : std::move(first));
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
