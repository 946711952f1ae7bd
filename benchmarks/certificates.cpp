// What an exact value costs: for each published adventitious item the medians of certifying it by trigonometry (its own
// chaining with points joined included), and of the chaining alone, so that the share of the certificate shows.
#include <fmt/format.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

#include "benchmarks/sample.hpp"
#include "prover/statement/statement.hpp"
#include "prover/trigonometry/certify.hpp"

int main() {
  using namespace prover;
  std::ifstream stream(std::string(PUBLISHED_DIR) + "/theorems.json");
  const AttemptOptions options{standard_catalogue(), std::vector<bool>(standard_catalogue().rules.size(), true),
                               Measure::classroom, Register::plain, false};
  fmt::print("{:32} {:>10} {:>12} {:>6}  {}\n", "item", "chain ms", "certify ms", "steps", "value");
  std::vector<double> all;
  for (const auto& item : nlohmann::json::parse(stream)) {
    if (item["kind"] != "adventitious") continue;
    std::string text;
    for (const auto& fact : item["facts"]) text += fact.get<std::string>() + "\n";
    const Statement statement = statements_of(parse_problem(text + "find: " + item["ask"].get<std::string>() + "\n"))[0];
    StageTimes times;
    double sketch_ms = 0;
    const Solved solved = solve(statement, options, Budget::seconds(10), times, sketch_ms);
    AttemptOptions joined = options;
    joined.join_points = true;
    const double chain =
        median_time([&] { attempt(statement, solved.figures.sketches, joined, Budget::seconds(10), times); }, 9, 500);
    Certified certified;
    const double whole = median_time([&] { certified = certify(statement, 0, solved, options, Budget::seconds(10)); }, 9, 1000);
    all.push_back(whole);
    fmt::print("{:32} {:10.1f} {:12.1f} {:6}  {}\n", item["id"].get<std::string>(), chain, whole,
               certified.exact ? certified.cases[0].settling.steps.size() : 0,
               certified.exact ? certified.value->to_string() : certified.obstacle);
  }
  fmt::print("median {:.1f} ms\n", quantile(all, 0.5));
}
