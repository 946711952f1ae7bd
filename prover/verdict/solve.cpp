#include "prover/verdict/solve.hpp"

#include <algorithm>
#include <set>

#include "prover/base/log.hpp"

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
  if (figures.empty()) {
    keep(std::move(first));
    return solved;
  }
  Attempt second = attempt(statement, figures, options, budget.share(0.6), times);
  if (settled(second)) {
    keep(std::move(second));
    return solved;
  }
  AttemptOptions joined = options;
  joined.join_points = true;
  if (!budget.exhausted()) {
    Attempt third = attempt(statement, figures, joined, budget.share(0.6), times);
    if (settled(third)) {
      keep(std::move(third));
      return solved;
    }
  }
  if (!budget.exhausted()) split(statement, options, budget, times, solved);
  if (solved.cases.empty()) {
    keep(std::move(second));
    solved.covers_all_figures = false;
  }
  return solved;
}

}  // namespace prover
