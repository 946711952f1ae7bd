#include "benchmarks/search/side_by_side.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "benchmarks/grid.hpp"
#include "benchmarks/sample.hpp"
#include "benchmarks/search/comparison_table.hpp"
#include "benchmarks/search/families.hpp"
#include "benchmarks/search/own_methods.hpp"
#include "benchmarks/search/time_text.hpp"
#include "benchmarks/search/told_figures.hpp"
#include "prover/proof/weights.hpp"

namespace prover {

namespace {

// Instances from small to large. A solver that ran out of time on one is not asked about the next.
using Family = std::vector<std::string>;

std::vector<Family> families_for_the_optimum(bool quick) {
  if (quick)
    return {{"triangle"}, {"triangle-weighted"}, {"grid-2x2", "grid-3x3", "grid-5x5-chain5"}, {"random-5", "random-8"},
            {"fan-5", "fan-10"}, {"doubling-fan-4"}};
  return {{"triangle"},
          {"triangle-weighted"},
          {"grid-2x2", "grid-3x3", "grid-4x4-neighbours", "grid-5x5-chain5", "grid-10x8-chain5", "grid-13x10-chain5",
           "grid-29x19-chain5"},
          {"grid-10x8-chain8", "grid-13x10-chain10", "grid-29x19-chain10"},
          {"grid-5x5-chain5-weighted", "grid-10x8-chain8-weighted", "grid-29x19-chain6-weighted"},
          {"random-5", "random-8", "random-12", "random-20", "random-30", "random-48-seed7"},
          {"random-8-goal10-weighted", "random-12-goal10-weighted", "random-20-goal10-weighted"},
          {"fan-5", "fan-10", "fan-20", "fan-40", "fan-80"},
          {"doubling-fan-4", "doubling-fan-6"}};
}

std::vector<Family> families_for_several(bool quick) {
  if (quick) return {{"triangle"}, {"grid-3x3", "grid-5x5-chain5"}, {"fan-10"}};
  return {{"triangle"},
          {"triangle-weighted"},
          {"grid-3x3", "grid-5x5-chain5", "grid-10x8-chain5", "grid-29x19-chain5"},
          {"random-8", "random-12", "random-20"},
          {"fan-10", "fan-20", "fan-40"}};
}

std::vector<Family> families_for_entailment(bool quick) {
  if (quick) return {{"triangle"}, {"grid-3x3", "grid-5x5-chain5"}, {"random-8"}, {"fan-20"}};
  return {{"triangle"},
          {"grid-3x3", "grid-5x5-chain5", "grid-10x8-chain5", "grid-13x10-chain5", "grid-29x19-chain5"},
          {"random-8", "random-12", "random-20", "random-30", "random-48-seed7"},
          {"fan-20", "fan-80", "fan-1000", "fan-25000"}};
}

int measure_families(ComparisonTable& table, const std::vector<Family>& families) {
  table.print_head();
  int disagreements = 0;
  for (const Family& family : families) {
    std::set<std::string> out_of_time;
    for (const std::string& name : family)
      if (const auto instance = instance_named(name)) disagreements += table.measure(*instance, out_of_time);
  }
  table.print_ratios();
  return disagreements;
}

ComparisonTable table_of_optima(const SideBySide& options) {
  return {options, "optimum", peers_for_the_optimum(), [limit = options.limit_seconds](const SearchInstance& instance) {
            const LightestRun run = run_lightest(instance.problem, limit);
            ComparisonTable::Own own{run.seconds, std::nullopt, "", run.members};
            if (run.proved)
              own.answer = run.weight;
            else if (run.weight)
              own.remark = fmt::format(" proved: {} found, none below {}", *run.weight, run.lower_bound);
            return own;
          }};
}

ComparisonTable table_of_sets(const SideBySide& options) {
  return {options, "ten-sets", peers_for_several(), [limit = options.limit_seconds](const SearchInstance& instance) {
            const SeveralRun run = run_several(instance.problem, 10, limit);
            ComparisonTable::Own own{run.seconds, std::nullopt, fmt::format(" sets, up to weight {}", run.heaviest), {}};
            if (run.complete)
              own.answer = static_cast<std::int64_t>(run.sets);
            else
              own.remark = fmt::format(": {} sets when the time was up", run.sets);
            return own;
          }};
}

ComparisonTable table_of_entailment(const SideBySide& options, const char* prefix, Entailment method) {
  return {options, prefix, peers_for_entailment(), [limit = options.limit_seconds, method](const SearchInstance& instance) {
            const EntailmentRun run = run_entailment(instance, method, limit);
            ComparisonTable::Own own{run.seconds, std::nullopt, "", {}};
            if (run.follows) own.answer = *run.follows ? 1 : 0;
            return own;
          }};
}

// The same question and answer at 1,030 and 107,540 equations: the time may grow like n log n.
void print_growth(const ComparisonTable& table) {
  const auto small = table.own_median("grid-5x5-chain5"), large = table.own_median("grid-29x19-chain5");
  if (!small || !large) return;
  const double n = 1030, m = 107540;
  const double allowed = m * std::log(m) / (n * std::log(n));
  fmt::print("From {:.0f} to {:.0f} equations the time grows {:.1f} times; n log n grows {:.1f} times.\n", n, m,
             *large / *small, allowed);
  fmt::print("ratio growth-of-grids {:.2f}\n\n", allowed / (*large / *small));
}

// Grids of laths told in sentences: matching beside the search, then the peers with premises granted.
int compare_laths(const SideBySide& options) {
  using Size = std::pair<int, int>;
  const std::vector<Size> sizes = options.quick ? std::vector<Size>{{2, 2}, {3, 3}}
                                                : std::vector<Size>{{2, 2}, {3, 3}, {4, 4}, {6, 6}, {8, 8}};
  std::vector<SearchInstance> granted;
  fmt::print("Grids of laths, told in sentences: matching (the whole chain) and the search, premises derived\n");
  fmt::print("{:14}{:>10}{:>12}{:>9}{:>12}{:>12}{:>17}  lightest\n", "figure", "instances", "candidates", "nested",
             "matching", "search", "matching/search");
  for (const auto& [parallels, transversals] : sizes) {
    const std::string name = fmt::format("laths-{}x{}", parallels, transversals);
    const auto figure = told_figure(name, grid_problem(parallels, transversals), options.limit_seconds);
    if (!figure) {
      fmt::print("{:14}not reached within {:g} s\n", name, options.limit_seconds);
      continue;
    }
    const LightestRun run = run_lightest(figure->instance.problem, options.limit_seconds);
    fmt::print("{:14}{:10}{:12}{:9}{:>12}{:>12}{:17.1f}  {:.3f}{}\n", name, figure->fired,
               figure->instance.problem.candidates.size(), figure->nested, time_text(figure->chain_seconds),
               time_text(run.seconds), figure->chain_seconds / run.seconds,
               static_cast<double>(run.weight.value_or(0)) / static_cast<double>(kWeightUnit),
               run.proved ? "" : " not proved lightest");
    std::fflush(stdout);
    granted.push_back(with_premises_granted(*figure));
  }
  fmt::print("\nThe same with premises granted, which is what general solvers can take\n");
  ComparisonTable table = table_of_optima(options);
  table.print_head();
  int disagreements = 0;
  std::set<std::string> out_of_time;
  for (const SearchInstance& instance : granted) disagreements += table.measure(instance, out_of_time);
  table.print_ratios();
  return disagreements;
}

// What others have published, by its whole catalogue: no peer takes premises that must be derived.
void measure_published(bool quick) {
  constexpr double limit = 2;
  struct Line {
    double seconds;
    std::string text;
  };
  std::vector<Line> lines;
  std::vector<double> seconds;
  int measured = 0, small = 0, proved = 0, small_open = 0, told = 0;
  for (const PublishedText& text : published_texts()) {
    if (quick && ++told % 12 != 1) continue;
    const auto figure = told_figure(text.name, text.text, limit);
    if (!figure) continue;
    const LightestRun run = run_lightest(figure->instance.problem, limit);
    if (!run.weight) continue;
    ++measured;
    const bool is_small = figure->instance.problem.candidates.size() <= 100;
    small += is_small ? 1 : 0;
    proved += run.proved ? 1 : 0;
    small_open += is_small && !run.proved ? 1 : 0;
    seconds.push_back(run.seconds);
    const double unit = static_cast<double>(kWeightUnit);
    lines.push_back({run.seconds, fmt::format("  {:34}{:6} candidates, {:4} nested  {:>10}  {:.3f}{}", text.name,
                                              figure->instance.problem.candidates.size(), figure->nested,
                                              time_text(run.seconds), static_cast<double>(*run.weight) / unit,
                                              run.proved ? " proved"
                                                         : fmt::format(", none below {:.3f}",
                                                                       static_cast<double>(run.lower_bound) / unit))});
  }
  std::sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.seconds > b.seconds; });
  fmt::print("Published problems, premises derived; no peer takes these. The slowest:\n");
  for (std::size_t i = 0; i < std::min<std::size_t>(lines.size(), quick ? 5 : 10); ++i) fmt::print("{}\n", lines[i].text);
  fmt::print("{} problems searched, {} proved lightest within {:g} s, median {}; of {} with at most 100 candidates {} are not\n\n",
             measured, proved, limit, time_text(quantile(seconds, 0.5)), small, small_open);
}

}  // namespace

const std::vector<std::string>& table_names() {
  static const std::vector<std::string> names = {"optimum", "ten-sets", "follows", "laths", "published"};
  return names;
}

int compare_side_by_side(const SideBySide& options) {
  int disagreements = 0;
  const auto wanted = [&](const char* name) {
    return options.tables.empty() || std::find(options.tables.begin(), options.tables.end(), name) != options.tables.end();
  };
  if (wanted("optimum")) {
    fmt::print("The lightest proof, and that it is the lightest\n");
    ComparisonTable optima = table_of_optima(options);
    disagreements += measure_families(optima, families_for_the_optimum(options.quick));
    print_growth(optima);
  }
  if (wanted("ten-sets")) {
    fmt::print("Ten different minimal sets: ours are the lightest, in order; Z3 finds any ten\n");
    ComparisonTable sets = table_of_sets(options);
    disagreements += measure_families(sets, families_for_several(options.quick));
  }
  if (wanted("follows")) {
    fmt::print("Does the goal follow? Ours: by the directions of the lines, from the givens\n");
    ComparisonTable directions = table_of_entailment(options, "follows-by-directions", Entailment::directions_of_givens);
    disagreements += measure_families(directions, families_for_entailment(options.quick));
    fmt::print("Does the goal follow? Ours: by elimination over all angles, on the very same equations\n");
    ComparisonTable angles = table_of_entailment(options, "follows-by-angles", Entailment::angles);
    disagreements += measure_families(angles, families_for_entailment(options.quick));
  }
  if (wanted("laths")) disagreements += compare_laths(options);
  if (wanted("published")) measure_published(options.quick);
  fmt::print("{} disagreements\n", disagreements);
  return disagreements;
}

}  // namespace prover
