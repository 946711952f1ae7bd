// The search for sketches: starts, solving, sorting out, choosing.
//
// One figure is found at the first or second start. The rest of the time goes into finding others: fresh starts
// give other shapes, altered copies of what was found give other arrangements, and the search ends when both have
// brought nothing new for a while.
#include "prover/sketch/sketch.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>

#include "prover/base/log.hpp"
#include "prover/sketch/album.hpp"
#include "prover/sketch/random.hpp"
#include "prover/sketch/solve.hpp"
#include "prover/sketch/starts.hpp"
#include "prover/sketch/units.hpp"
#include "prover/sketch/variables.hpp"

namespace prover {
namespace {

using namespace sketching;

constexpr double equation_tolerance = 1e-9;
constexpr double position_margin = 1e-5;
constexpr double margins[] = {1, 1, 1, 0.3, 1, 1, 0.1};  // in turn: clear figures, and now and then narrow ones
constexpr int challenges = 2;            // how often the search tries to turn a triple that turned one way so far
constexpr double coincident = 1e-4;      // a figure less clear than this is none

// The best of a few random starts, to save the solver a hopeless one; in turn with less choosy ones, for variety.
std::vector<double> fresh_start(const std::vector<Phrase>& givens, System& system, Random& random, int turn) {
  struct Plan {
    int draws, rounds;
    bool sizes;
  };
  static constexpr Plan plans[] = {{6, 2, true},  {2, 2, false}, {2, 2, true},
                                   {1, 1, false}, {4, 2, false}, {1, 0, false}};
  const Plan& plan = plans[static_cast<std::size_t>(turn) % std::size(plans)];
  std::vector<double> best;
  double least = std::numeric_limits<double>::infinity();
  for (int draw = 0; draw < plan.draws; ++draw) {
    std::vector<double> x = random_start(givens, system.layout(), random, plan.rounds, plan.sizes);
    const double left = system.choose(x.data());
    if (left < least || best.empty()) {
      least = left;
      best = std::move(x);
    }
  }
  return best;
}

}  // namespace

SketchReport sketch(const std::vector<Phrase>& givens, std::size_t points, const Budget& budget,
                    const SketchOptions& options) {
  SketchReport report;
  report.best_residual = std::numeric_limits<double>::infinity();
  const Units units = units_of(givens, points);
  System system(givens, units.layout);
  Random random(options.seed);
  Album album(points);
  const auto wanted = static_cast<std::size_t>(std::max(options.wanted, 0));
  int fruitless = 0, fresh = 0;
  report.stop = StopReason::saturated;
  if (points == 0 || !system.has_branches()) {
    report.best_residual = 0;
    return report;
  }

  for (int start = 0; start < options.starts && wanted > 0; ++start) {
    if (budget.exhausted()) {
      report.stop = budget.reason();
      break;
    }
    ++report.starts_tried;
    const std::vector<Candidate>& found = album.found();
    system.wish(std::nullopt);
    std::vector<double> x;
    std::optional<Album::Turn> turn;
    if (!options.seek_arrangements || found.empty() || start % 4 == 0) {
      x = fresh_start(givens, system, random, fresh++);
    } else {
      const std::vector<double>& figure = found[random.below(found.size())].x;
      if (start % 4 != 1) turn = album.challenge(challenges);
      if (turn) {
        x = turned_start(figure, units.layout, {turn->a, turn->b, turn->c}, random);
        system.wish(Constraint{.form = Form::orientation, .equation = false,
                               .terms = {{.coefficient = -turn->sign, .a = turn->a, .b = turn->b, .c = turn->c}}});
      } else {
        x = altered_start(figure, units.layout, random);
      }
    }
    const double margin = turn ? 0.25 : margins[static_cast<std::size_t>(start) % std::size(margins)];
    const Solution solution = solve(system, x, margin, budget);
    Album::News news = Album::News::nothing;
    if (!solution.converged) {
      report.best_residual = std::min(report.best_residual, solution.residual);
    } else {
      normalise(x, points, units.measured ? 0 : 2);
      Candidate candidate{std::move(x), {}};
      candidate.arrangement = arrangement_of(candidate.x, points);
      if (candidate.arrangement.clear > coincident &&
          system.holds(candidate.x.data(), equation_tolerance, position_margin))
        news = album.add(std::move(candidate));
    }
    if (!options.seek_arrangements && found.size() >= wanted) break;
    switch (news) {
      case Album::News::nothing: ++fruitless; break;
      case Album::News::shape: fruitless = found.size() > wanted ? fruitless + 1 : 0; break;
      case Album::News::arrangement: break;
      case Album::News::position: fruitless = 0; break;
    }
    const bool challenged = !options.seek_arrangements || !album.has_challenge(challenges);
    if (!found.empty() && fruitless >= options.patience && challenged) break;
  }

  report.arrangements = album.arrangements();
  for (const std::size_t i : album.chosen(wanted)) {
    const std::vector<double>& x = album.found()[i].x;
    report.sketches.push_back(sketch_of(x, units));
    report.sketches.back().residual = system.residual(x.data());
  }
  if (!report.sketches.empty()) report.best_residual = report.sketches.front().residual;
  if (!std::isfinite(report.best_residual)) report.best_residual = 0;  // no start came to an end
  log::debug("sketch: {} figures in {} starts", report.sketches.size(), report.starts_tried);
  return report;
}

}  // namespace prover
