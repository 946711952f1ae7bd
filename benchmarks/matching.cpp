#include "benchmarks/matching.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdio>
#include <optional>
#include <string>
#include <vector>

#include "benchmarks/grid.hpp"
#include "benchmarks/sample.hpp"
#include "prover/chain/saturate.hpp"
#include "prover/proof/proof_graph.hpp"
#include "prover/proof/weights.hpp"
#include "prover/search/lightest_set.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/verdict/goal_forms.hpp"

namespace prover {

namespace {

struct Size {
  int parallels, transversals;
};

struct Matching {
  std::size_t points = 0, instances = 0, tried = 0;
  double figure = 0, chain = 0, problem = 0, search = 0;
  bool proved = false, lightest = false, whole = false;
};

// The text says the order along each line; that slanting transversals do not cross in between is read from a figure.
std::vector<Coordinates> figures(const Size& size, bool parallel_transversals) {
  if (parallel_transversals) return {};
  Coordinates points;
  for (int i = 0; i < size.parallels; ++i)
    for (int j = 0; j < size.transversals; ++j) points.push_back({j * (1 + 0.1 * i), -1.0 * i});
  return {points};
}

Matching measure(const Size& size, bool parallel_transversals, int repeats, double budget_ms) {
  const Statement statement =
      statements_of(parse_problem(grid_problem(size.parallels, size.transversals, parallel_transversals))).front();
  const std::vector<Coordinates> views = figures(size, parallel_transversals);
  const Catalogue& catalogue = standard_catalogue();
  const ChainOptions everything{std::vector<bool>(catalogue.rules.size(), true), false};
  Matching result;
  result.points = statement.names.points.size();
  std::optional<Arrangement> arrangement;
  result.figure = median_time(
      [&] {
        arrangement.emplace(figure_text(statement), views);
        arrangement->freeze();
      },
      repeats, budget_ms);
  UnknownTable unknowns;
  Saturation saturation;
  const FigureText text = figure_text(statement);
  std::vector<double> times;
  double spent = 0;
  while (times.empty() || (static_cast<int>(times.size()) < repeats && spent < budget_ms)) {
    unknowns = {};
    saturation = Saturation();
    arrangement.emplace(text, views);  // a fresh one: it keeps what it was asked
    arrangement->freeze();
    note_goal(statement.goals[0], *arrangement, unknowns);
    Budget budget;
    budget.max_instances = 10'000'000;
    times.push_back(milliseconds_of(
        [&] { saturation = saturate(statement, *arrangement, catalogue, unknowns, {}, everything, budget); }));
    spent += times.back();
  }
  result.chain = quantile(std::move(times), 0.5);
  result.instances = saturation.instances.size();
  result.tried = saturation.matches;
  result.whole = saturation.stop == StopReason::saturated;

  const GoalForms goal = goal_forms(statement.goals[0], saturation.closure, *arrangement, unknowns, statement.names);
  SearchProblem problem;
  result.problem = median_time(
      [&] {
        problem = {{}, goal.forms};
        for (const int i : ProofGraph(saturation.instances).relevant_to(goal.forms)) {
          const Instance& instance = saturation.instances[static_cast<std::size_t>(i)];
          problem.candidates.push_back({instance.premises, instance.conclusions,
                                        weight_of(instance, catalogue, *arrangement, Measure::classroom)});
        }
      },
      repeats, budget_ms);
  std::optional<LightSet> set;
  result.search = median_time([&] { set = lightest_set(problem, {Budget::seconds(3), {}, nullptr}); }, repeats, budget_ms);
  result.proved = goal.reached && set.has_value();
  result.lightest = result.proved && set->proved_lightest;
  return result;
}

}  // namespace

void print_matching(bool quick) {
  for (const bool parallel_transversals : {true, false}) {
    fmt::print("Places for rules, {} transversals; milliseconds (medians), growth as the power of the instances\n",
               parallel_transversals ? "parallel" : "slanting");
    fmt::print("{:>7}{:>8}{:>11}{:>11}{:>9}{:>10}{:>14}{:>8}{:>10}{:>10}{:>16}\n", "grid", "points", "instances", "tried",
               "figure", "chain", "µs each", "growth", "problem", "search", "chain / search");
    std::vector<Size> sizes = {{3, 3}, {5, 5}, {6, 6}};
    if (!quick) {
      sizes.insert(sizes.end(), {{7, 7}, {8, 8}});
      if (!parallel_transversals) sizes.insert(sizes.end(), {{10, 10}, {12, 10}});
    }
    std::optional<Matching> before;
    for (const Size& size : sizes) {
      const Matching now = measure(size, parallel_transversals, quick ? 3 : 7, quick ? 500 : 3000);
      const auto count = static_cast<double>(now.instances);
      const std::string growth =
          before ? fmt::format("{:.2f}", std::log(now.chain / before->chain) /
                                             std::log(count / static_cast<double>(before->instances)))
                 : "–";
      fmt::print("{:>7}{:8}{:11}{:11}{:9.2f}{:10.2f}{:14.2f}{:>8}{:10.2f}{:10.2f}{:16.2f}{}{}\n",
                 fmt::format("{}×{}", size.parallels, size.transversals), now.points, now.instances, now.tried,
                 now.figure, now.chain, 1000 * now.chain / count, growth, now.problem, now.search, now.chain / now.search,
                 now.whole ? "" : "  cut off by a limit",
                 now.lightest ? "" : now.proved ? "  best found" : "  not proved");
      std::fflush(stdout);
      before = now;
    }
    fmt::print("\n");
  }
}

}  // namespace prover
