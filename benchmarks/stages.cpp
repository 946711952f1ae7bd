// The published set, text to checked proof in one process, stage by stage. For each problem the median of its runs;
// then over the problems the median, the 90th of a hundred, and the slowest by name.
#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "benchmarks/sample.hpp"
#include "prover/prove.hpp"

namespace {

struct Problem {
  std::string id, text;
};

std::vector<Problem> published(const std::string& file) {
  std::ifstream stream(std::string(PUBLISHED_DIR) + "/" + file);
  std::vector<Problem> problems;
  for (const auto& item : nlohmann::json::parse(stream)) {
    std::string text;
    for (const auto& fact : item["facts"]) text += fact.get<std::string>() + "\n";
    text += (item["answer"].is_boolean() ? "prove: " : "find: ") + item["ask"].get<std::string>() + "\n";
    problems.push_back({item["id"], std::move(text)});
  }
  return problems;
}

struct Times {
  std::vector<double> each;  // a median for each problem
  double slowest = 0;
  std::string slowest_id;

  void add(double time, const std::string& id) {
    each.push_back(time);
    if (time >= slowest) {
      slowest = time;
      slowest_id = id;
    }
  }
};

void measure(const std::string& file, int repeats) {
  const std::vector<Problem> problems = published(file);
  const prover::Catalogue& catalogue = prover::standard_catalogue();
  std::map<std::string, Times> stages;
  std::map<std::string, Times> in_process;
  std::size_t proved = 0;
  for (const Problem& problem : problems) {
    std::map<std::string, std::vector<double>> runs;
    std::vector<double> whole;
    prover::Answer answer;
    for (int run = 0; run < repeats; ++run) {
      prover::ProveOptions options;
      options.budget = prover::Budget::seconds(2);
      whole.push_back(
          prover::milliseconds_of([&] { answer = prover::prove(problem.text, catalogue, options); }));
      for (const auto& [stage, time] : answer.time_ms) runs[stage].push_back(time);
      if (whole.back() > 1000) break;  // a slow one says the same every time
    }
    for (const auto& [stage, times] : runs) stages[stage].add(prover::quantile(times, 0.5), problem.id);
    const bool is_proved = answer.verdict == prover::Verdict::proved;
    proved += is_proved ? 1 : 0;
    in_process[is_proved ? "whole, proved" : "whole, not proved"].add(prover::quantile(whole, 0.5), problem.id);
  }
  fmt::print("{}: {} problems, {} proved; milliseconds\n", file, problems.size(), proved);
  fmt::print("  {:20}{:>10}{:>10}{:>10}  slowest problem\n", "stage", "median", "90 %", "slowest");
  for (const auto* table : {&stages, &in_process}) {
    for (const auto& [name, times] : *table) {
      fmt::print("  {:20}{:10.3f}{:10.3f}{:10.3f}  {}\n", name, prover::quantile(times.each, 0.5),
                 prover::quantile(times.each, 0.9), times.slowest, times.slowest_id);
    }
  }
  fmt::print("\n");
}

}  // namespace

int main(int argc, char** argv) {
  const bool quick = argc > 1 && std::string(argv[1]) == "--quick";
  for (const char* file : {"classroom.json", "theorems.json"}) measure(file, quick ? 1 : 7);
}
