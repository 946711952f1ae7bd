// Growing problems, each solved by Anglewright: how long it takes to build one, to find its lightest proof and to know
// that it is the lightest, to find ten, and to tell whether the goal follows at all.
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <chrono>
#include <fstream>
#include <iostream>

#include "benchmarks/sample.hpp"
#include "benchmarks/search/families.hpp"
#include "benchmarks/search/own_methods.hpp"
#include "benchmarks/search/read_instance.hpp"

namespace {

using namespace prover;

struct Arguments {
  std::vector<std::string> names, files;
  double limit = 15;
  int runs = 5;
  std::size_t ways = 10;
  bool no_entailment = false;
};

std::string time_text(double seconds) {
  if (seconds < 1e-3) return fmt::format("{:.1f} µs", seconds * 1e6);
  if (seconds < 1) return fmt::format("{:.2f} ms", seconds * 1e3);
  return fmt::format("{:.2f} s", seconds);
}

// The median of as many runs as fit into the limit, and the last result.
template <class Work>
auto median_of_runs(const Arguments& arguments, Work work) {
  auto result = work();
  std::vector<double> seconds{result.seconds};
  double spent = result.seconds;
  while (static_cast<int>(seconds.size()) < arguments.runs && spent < arguments.limit / 3) {
    result = work();
    seconds.push_back(result.seconds);
    spent += result.seconds;
  }
  result.seconds = quantile(seconds, 0.5);
  return result;
}

void measure(const SearchInstance& instance, double build_seconds, const Arguments& arguments) {
  fmt::print("{}: {} equations, {} unknowns, built in {}\n", instance.name, instance.problem.candidates.size(),
             instance.unknowns, time_text(build_seconds));
  std::fflush(stdout);
  const auto lightest = median_of_runs(arguments, [&] { return run_lightest(instance.problem, arguments.limit); });
  if (!lightest.weight)
    fmt::print("  lightest     {}, goal not reached\n", time_text(lightest.seconds));
  else
    fmt::print("  lightest     {}, first after {}; weight {}, {} members, {}\n", time_text(lightest.seconds),
               time_text(lightest.seconds_to_first), *lightest.weight, lightest.members,
               lightest.proved ? "proved" : fmt::format("not proved, none below {}", lightest.lower_bound));
  std::fflush(stdout);
  if (arguments.ways > 0) {
    const auto several = median_of_runs(
        arguments, [&] { return run_several(instance.problem, arguments.ways, arguments.limit); });
    fmt::print("  {:2} sets      {}, {} found up to weight {}, complete below {}\n", arguments.ways,
               time_text(several.seconds), several.sets, several.heaviest, several.complete_below);
    std::fflush(stdout);
  }
  if (arguments.no_entailment) return;
  const auto entailment = [&](Entailment method, const char* text) {
    const auto run = median_of_runs(arguments, [&] { return run_entailment(instance, method, arguments.limit); });
    if (!run.follows) return;
    fmt::print("  {:12} {}, {}\n", text, time_text(run.seconds), *run.follows ? "follows" : "DOES NOT FOLLOW");
    std::fflush(stdout);
  };
  entailment(Entailment::directions_of_givens, "directions");
  entailment(Entailment::directions_of_all, "all in them");
  entailment(Entailment::angles, "elimination");
}

int run(const Arguments& arguments) {
  for (const std::string& name : arguments.names) {
    const auto begin = std::chrono::steady_clock::now();
    const auto instance = instance_named(name);
    if (!instance) {
      fmt::print(stderr, "There is no family \"{}\".\n  try: triangle, grid-5x5-chain5, fan-20, doubling-fan-6, random-12\n", name);
      return 2;
    }
    measure(*instance, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count(), arguments);
  }
  for (const std::string& file : arguments.files) {
    std::ifstream stream(file);
    if (!stream) {
      fmt::print(stderr, "{} cannot be read.\n", file);
      return 2;
    }
    try {
      measure(read_instance(stream, file), 0, arguments);
    } catch (const std::runtime_error& error) {
      fmt::print(stderr, "{}, {}\n", file, error.what());
      return 2;
    }
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  Arguments arguments;
  CLI::App app("Times the search for the lightest proof on growing problems.");
  app.add_option("NAME", arguments.names, "Instances such as triangle, grid-5x5-chain5-weighted, fan-20, random-48-seed7");
  app.add_option("--read", arguments.files, "Instances from text files");
  app.add_option("--limit", arguments.limit, "Seconds for one run")->check(CLI::Range(0.01, 3600.0));
  app.add_option("--runs", arguments.runs, "At most so many runs, of which the median is shown")->check(CLI::Range(1, 1000));
  app.add_option("--ways", arguments.ways, "How many different sets to find; 0 leaves this out");
  app.add_flag("--no-entailment", arguments.no_entailment, "Leaves out whether the goal follows");
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? 0 : 2;
  }
  if (arguments.names.empty() && arguments.files.empty())
    arguments.names = {"triangle", "grid-3x3", "grid-5x5-chain5", "grid-10x8-chain5", "random-12", "fan-10"};
  return run(arguments);
}
