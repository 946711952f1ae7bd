// Growing problems for the search. Alone: how long it takes to build one, to find its lightest proof and to know that it
// is the lightest, to find ten, and to tell whether the goal follows at all. Beside general solvers on the same equations.
// Against brute force on small random problems.
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <chrono>
#include <fstream>

#include "benchmarks/search/cross_check.hpp"
#include "benchmarks/search/families.hpp"
#include "benchmarks/search/own_table.hpp"
#include "benchmarks/search/read_instance.hpp"
#include "benchmarks/search/side_by_side.hpp"

namespace {

using namespace prover;

int print_named(const std::vector<std::string>& names, const OwnTable& options) {
  for (const std::string& name : names) {
    const auto begin = std::chrono::steady_clock::now();
    const auto instance = instance_named(name);
    if (!instance) {
      fmt::print(stderr, "There is no family \"{}\".\n  try: triangle, grid-5x5-chain5, fan-20, doubling-fan-6, random-12\n", name);
      return 2;
    }
    print_own(*instance, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count(), options);
  }
  return 0;
}

int print_read(const std::vector<std::string>& files, const OwnTable& options) {
  for (const std::string& file : files) {
    std::ifstream stream(file);
    if (!stream) {
      fmt::print(stderr, "{} cannot be read.\n", file);
      return 2;
    }
    try {
      print_own(read_instance(stream, file), 0, options);
    } catch (const std::runtime_error& error) {
      fmt::print(stderr, "{}, {}\n", file, error.what());
      return 2;
    }
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  std::vector<std::string> names, files;
  OwnTable own;
  SideBySide beside;
  bool side_by_side = false, no_lightest = false, no_entailment = false;
  int check = 0;
  std::optional<double> limit;
  CLI::App app("Times the search for the lightest proof on growing problems.");
  app.add_option("NAME", names, "Instances such as triangle, grid-5x5-chain5-weighted, fan-20, random-48-seed7");
  app.add_option("--read", files, "Instances from text files");
  app.add_flag("--side-by-side", side_by_side, "Tables beside general solvers; status 1 when an answer differs");
  app.add_option("--tables", beside.tables, "Side by side: these tables only")
      ->check(CLI::IsMember(table_names()));
  app.add_flag("--quick", beside.quick, "Side by side on small instances, half a second for each run");
  app.add_option("--check", check, "So many small random problems of each kind against brute force; status 1 when one differs")
      ->check(CLI::Range(1, 100000));
  app.add_option("--limit", limit, "Seconds for one run")->check(CLI::Range(0.01, 3600.0));
  app.add_option("--runs", own.runs, "At most so many runs, of which the median is shown")->check(CLI::Range(1, 1000));
  app.add_option("--ways", own.ways, "How many different sets to find; 0 leaves this out");
  app.add_flag("--no-lightest", no_lightest, "Leaves out the lightest proof");
  app.add_flag("--no-entailment", no_entailment, "Leaves out whether the goal follows");
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? 0 : 2;
  }
  own.lightest = !no_lightest;
  own.entailment = !no_entailment;
  own.limit_seconds = limit.value_or(own.limit_seconds);
  beside.limit_seconds = limit.value_or(beside.quick ? 0.5 : 15);
  beside.runs = beside.quick ? 3 : own.runs;
  int differing = 0;
  if (check > 0) differing += cross_check(check);
  if (side_by_side) differing += compare_side_by_side(beside);
  if (differing > 0) return 1;
  if (check > 0 || side_by_side) return 0;
  if (names.empty() && files.empty())
    names = {"triangle", "grid-3x3", "grid-5x5-chain5", "grid-10x8-chain5", "random-12", "fan-10"};
  const int status = print_named(names, own);
  return status != 0 ? status : print_read(files, own);
}
