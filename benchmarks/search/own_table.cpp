#include "benchmarks/search/own_table.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "benchmarks/sample.hpp"
#include "benchmarks/search/own_methods.hpp"
#include "benchmarks/search/time_text.hpp"

namespace prover {

namespace {

// The run of median time, out of as many as fit into a third of the limit.
template <class Work>
auto median_run(const OwnTable& options, Work work) {
  std::vector<decltype(work())> runs;
  double spent = 0;
  while (runs.empty() || (static_cast<int>(runs.size()) < options.runs && spent < options.limit_seconds / 3)) {
    runs.push_back(work());
    spent += runs.back().seconds;
  }
  std::sort(runs.begin(), runs.end(), [](const auto& a, const auto& b) { return a.seconds < b.seconds; });
  return runs[runs.size() / 2];
}

}  // namespace

void print_own(const SearchInstance& instance, double build_seconds, const OwnTable& options) {
  fmt::print("{}: {} equations, {} unknowns, built in {}\n", instance.name, instance.problem.candidates.size(),
             instance.unknowns, time_text(build_seconds));
  std::fflush(stdout);
  if (options.lightest) {
    const auto run = median_run(options, [&] { return run_lightest(instance.problem, options.limit_seconds); });
    if (!run.weight)
      fmt::print("  lightest     {}, goal not reached\n", time_text(run.seconds));
    else
      fmt::print("  lightest     {}, first after {}; weight {}, {} members, {}\n", time_text(run.seconds),
                 time_text(run.seconds_to_first), *run.weight, run.members.size(),
                 run.proved ? "proved" : fmt::format("not proved, none below {}", run.lower_bound));
    std::fflush(stdout);
  }
  if (options.ways > 0) {
    const auto run =
        median_run(options, [&] { return run_several(instance.problem, options.ways, options.limit_seconds); });
    fmt::print("  {:2} sets      {}, {} found up to weight {}, complete below {}\n", options.ways,
               time_text(run.seconds), run.sets, run.heaviest, run.complete_below);
    std::fflush(stdout);
  }
  if (!options.entailment) return;
  const auto entailment = [&](Entailment method, const char* text) {
    const auto run = median_run(options, [&] { return run_entailment(instance, method, options.limit_seconds); });
    if (!run.follows) return;
    fmt::print("  {:12} {}, {}\n", text, time_text(run.seconds), *run.follows ? "follows" : "DOES NOT FOLLOW");
    std::fflush(stdout);
  };
  entailment(Entailment::directions_of_givens, "directions");
  entailment(Entailment::directions_of_all, "all in them");
  entailment(Entailment::angles, "elimination");
}

}  // namespace prover
