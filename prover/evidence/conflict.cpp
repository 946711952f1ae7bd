#include "prover/evidence/conflict.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include "prover/language/phrase_points.hpp"
#include "prover/smt/position_conflict.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

using Kept = std::vector<bool>;

constexpr int few_starts = 60;

Kept all_of(const Statements& statements) { return Kept(statements[0].givens.size(), true); }

std::vector<std::size_t> listed(const Kept& kept) {
  std::vector<std::size_t> list;
  for (std::size_t g = 0; g < kept.size(); ++g)
    if (kept[g]) list.push_back(g);
  return list;
}

// Leaves out, in this order, whatever can be left out so that `conflicting` stays true.
void minimise(Kept& kept, const std::vector<std::size_t>& order, const Budget& budget,
              const std::function<bool(const Kept&)>& conflicting) {
  for (const std::size_t g : order) {
    if (budget.exhausted()) return;
    if (!kept[g]) continue;
    kept[g] = false;
    kept[g] = !conflicting(kept);
  }
}

bool excluded_by_chain(const Statements& statements, const Kept& kept, const AttemptOptions& options, const Budget& budget) {
  return std::all_of(statements.begin(), statements.end(), [&](const Statement& statement) {
    return worked_out(with_only(statement, kept), {}, options, budget)->saturation.contradictory;
  });
}

bool excluded_by_positions(const Statements& conflict, const Budget& budget) {
  return std::all_of(conflict.begin(), conflict.end(), [&](const Statement& statement) {
    const FigureText text = figure_text(statement);
    return positions_exclude_each_other({text.collinear, text.positions, text.rays, text.parallel}, budget) ==
           PositionsAnswer::exclude_each_other;
  });
}

// How far a number is from all that figures of the other givens show, as a part of its size.
double gap(const Repair& repair) {
  const double written = repair.number->value.to_double();
  double nearest = repair.value.to_double();
  if (repair.between) {
    const auto& [low, high] = *repair.between;
    nearest = high && written > *high ? *high : low.value_or(0);
  }
  return std::fabs(nearest - written) / std::max({std::fabs(written), std::fabs(nearest), 1e-9});
}

// See the header. The limits are where we stop to trust the search.
bool clearly_excluded(const Statements& conflict, const AttemptOptions& options, const Budget& budget) {
  constexpr int easy_tries = 20;
  constexpr std::size_t most_points = 8;
  constexpr double clear_gap = 2e-3;
  std::set<PointId> points;
  for (const Given& given : conflict[0].givens)
    for (const PointId p : points_named(given.phrase)) points.insert(p);
  if (points.size() > most_points) return false;
  std::vector<std::size_t> givens;
  for (std::size_t g = 0; g < conflict[0].givens.size(); ++g) {
    const Drawn drawn = draw(without(conflict, g), easy_tries, budget);
    if (!drawn.figure) return false;
    givens.push_back(g);
  }
  bool clear = false;
  for (const Repair& repair : repairs(conflict, givens, options, budget)) {
    if (!repair.number) continue;
    if (gap(repair) < clear_gap) return false;
    clear = true;
  }
  return clear && !budget.exhausted();
}

}  // namespace

std::optional<Conflict> conflict_by_proof(const Statements& statements, const std::vector<std::size_t>& used,
                                          const AttemptOptions& options, const Budget& budget) {
  AttemptOptions with = options;
  with.join_points = with.inequalities = false;
  const auto conflicting = [&](const Kept& kept) { return excluded_by_chain(statements, kept, with, budget); };
  Kept kept = all_of(statements);
  for (int further = 0; !conflicting(kept); ++further) {
    with.inequalities = true;
    if (further == 1) with.join_points = true;
    if (further == 2) return std::nullopt;
  }
  std::vector<std::size_t> order;
  for (const bool cited : {false, true})
    for (std::size_t g = kept.size(); g-- > 0;)
      if ((std::find(used.begin(), used.end(), g) != used.end()) == cited) order.push_back(g);
  minimise(kept, order, budget, conflicting);
  return Conflict{ConflictShownBy::proof, listed(kept), with, 0};
}

std::optional<Conflict> smaller_by_figures(const Statements& statements, const Conflict& proved, const AttemptOptions& options,
                                           const Budget& budget) {
  Kept kept(statements[0].givens.size(), false);
  for (const std::size_t g : proved.givens) kept[g] = true;
  for (const std::size_t g : proved.givens) {
    kept[g] = false;
    if (!draw(with_only(statements, kept), few_starts, budget).figure) {
      auto smaller = conflict_by_figures(with_only(statements, kept), options, budget);
      if (!smaller || smaller->shown_by == ConflictShownBy::suspicion) return std::nullopt;
      const std::vector<std::size_t> place = listed(kept);
      for (std::size_t& member : smaller->givens) member = place[member];
      return smaller;
    }
    kept[g] = true;
  }
  return std::nullopt;
}

std::optional<Conflict> conflict_by_figures(const Statements& statements, const AttemptOptions& options,
                                            const Budget& budget) {
  constexpr int last_starts = 400;
  const auto conflicting = [&](const Kept& kept) {
    const Drawn drawn = draw(with_only(statements, kept), few_starts, budget);
    return !drawn.figure && drawn.stop == StopReason::saturated;
  };
  Kept kept = all_of(statements);
  if (!conflicting(kept)) return std::nullopt;
  std::vector<std::size_t> order;
  for (std::size_t g = 0; g < kept.size(); ++g) order.push_back(g);
  minimise(kept, order, budget, conflicting);
  if (budget.exhausted()) return std::nullopt;
  Conflict conflict{ConflictShownBy::suspicion, listed(kept), options, 0};
  const Statements part = with_only(statements, kept);
  const Drawn again = draw(part, last_starts, budget, 2);
  if (again.figure) return std::nullopt;  // hard to draw, but there it is
  conflict.tries = again.tries;
  if (excluded_by_positions(part, budget))
    conflict.shown_by = ConflictShownBy::positions;
  else if (again.stop == StopReason::saturated && clearly_excluded(part, options, budget)) conflict.shown_by = ConflictShownBy::figures;
  return conflict;
}

}  // namespace prover
