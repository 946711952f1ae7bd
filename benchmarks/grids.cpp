// How the work grows with the figure: finding the places for rules up to a hundred thousand of them (matching.cpp), then
// grids of lines up to ten thousand. Chaining and elimination
// stage by stage, the whole program's answer, and Z3 alone on the equations that chaining found, as a ratio.
#include <fmt/format.h>

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "benchmarks/grid.hpp"
#include "benchmarks/matching.hpp"
#include "benchmarks/sample.hpp"
#include "benchmarks/z3_alone.hpp"
#include "prover/chain/saturate.hpp"
#include "prover/prove.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace {

using namespace prover;

struct Size {
  int parallels, transversals;
};

struct Measured {
  std::size_t instances = 0, unknowns = 0, equations = 0;
  double parse = 0, chain = 0, eliminate = 0, z3 = 0, prove = 0;
  bool z3_agrees = false;
  Verdict verdict = Verdict::unknown;
};

constexpr unsigned z3_limit_ms = 60'000;

Measured measure(const Size& size, int repeats, double budget_ms) {
  Measured result;
  const std::string text = prover::grid_problem(size.parallels, size.transversals);
  result.parse = prover::median_time([&] { parse_problem(text); }, repeats, budget_ms);
  const Statement statement = statements_of(parse_problem(text)).front();
  const Catalogue& catalogue = standard_catalogue();
  const ChainOptions everything{std::vector<bool>(catalogue.rules.size(), true), false};

  UnknownTable unknowns;
  std::optional<Saturation> saturation;
  std::vector<Form> goal;
  const auto chain = [&] {
    unknowns = {};
    Arrangement arrangement(figure_text(statement), {});
    arrangement.freeze();
    bool degenerate = false;
    std::vector<PointId> same;
    for (std::size_t i = 0; i < statement.names.points.size(); ++i) same.emplace_back(static_cast<std::int64_t>(i));
    goal = {form_of(statement.goals[0].claims[0].relation.expressions[0], same, arrangement, unknowns, degenerate)};
    saturation = saturate(statement, arrangement, catalogue, unknowns, goal, everything, {});
  };
  result.chain = prover::median_time(chain, repeats, budget_ms);
  result.instances = saturation->instances.size();
  result.unknowns = unknowns.size();
  std::vector<Form> equations;
  for (const Instance& instance : saturation->instances) {
    equations.insert(equations.end(), instance.conclusions.begin(), instance.conclusions.end());
  }
  result.equations = equations.size();
  // "The angle asked for is 64°": what the elimination must find and Z3 must confirm.
  Form claim = goal.front();
  claim.constant -= 64;
  bool follows = false;
  result.eliminate = prover::median_time(
      [&] {
        LinearSystem system;
        for (const Form& equation : equations) system.add(equation);
        follows = system.entails(claim);
      },
      repeats, budget_ms);
  prover::Decided decided = prover::Decided::gave_up;
  result.z3 = prover::median_time(
      [&] { decided = prover::z3_alone(equations, claim, unknowns, z3_limit_ms); }, repeats, budget_ms);
  result.z3_agrees = follows && decided == prover::Decided::follows;
  result.prove = prover::median_time(
      [&] {
        ProveOptions options;
        options.budget = Budget::seconds(10);
        result.verdict = prove(text, catalogue, options).verdict;
      },
      repeats, budget_ms);
  return result;
}

}  // namespace

int main(int argc, char** argv) {
  const bool quick = argc > 1 && std::string(argv[1]) == "--quick";
  std::vector<Size> sizes = {{2, 2}, {3, 3}, {4, 3}, {4, 4}, {5, 5}};
  if (!quick) sizes.insert(sizes.end(), {{6, 6}, {8, 6}, {8, 8}, {10, 9}, {12, 10}});
  prover::print_matching(quick);
  fmt::print("Grids of parallels × transversals; milliseconds (medians), growth as the power of the instances\n");
  fmt::print("{:>7}{:>11}{:>10}{:>11}{:>9}{:>10}{:>8}{:>11}{:>10}{:>8}{:>10}  {}\n", "grid", "instances", "unknowns",
             "equations", "parse", "chain", "growth", "eliminate", "Z3 alone", "ratio", "prove", "verdict");
  std::optional<Measured> before;
  for (const Size& size : sizes) {
    const Measured now = measure(size, quick ? 3 : 9, quick ? 1500 : 5000);
    std::string growth = "–";
    if (before && now.instances > before->instances) {
      growth = fmt::format("{:.1f}", std::log(now.chain / before->chain) /
                                         std::log(static_cast<double>(now.instances) / static_cast<double>(before->instances)));
    }
    fmt::print("{:>7}{:11}{:10}{:11}{:9.2f}{:10.2f}{:>8}{:11.2f}{:10.2f}{:7.0f}×{:10.2f}  {}{}\n",
               fmt::format("{}×{}", size.parallels, size.transversals), now.instances, now.unknowns, now.equations,
               now.parse, now.chain, growth, now.eliminate, now.z3, now.z3 / now.eliminate, now.prove,
               name_of(now.verdict), now.z3_agrees ? "" : " (Z3 gave up or differs)");
    std::fflush(stdout);
    before = now;
    if (now.instances >= 10'000) break;
  }
}
