// The sketch on the published set: how many arrangements a usual search finds beside a very long random one, what a
// search costs, and how that grows with the number of points.
#include <fmt/format.h>

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "benchmarks/sample.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/statement/statement.hpp"

namespace {

using namespace prover;

struct Problem {
  std::string id;
  std::vector<Statement> statements;
};

std::vector<Problem> published(const std::string& file) {
  std::ifstream stream(std::string(PUBLISHED_DIR) + "/" + file);
  std::vector<Problem> problems;
  for (const auto& item : nlohmann::json::parse(stream)) {
    std::string text;
    for (const auto& fact : item["facts"]) text += fact.get<std::string>() + "\n";
    text += (item["answer"].is_boolean() ? "prove: " : "find: ") + item["ask"].get<std::string>() + "\n";
    problems.push_back({item["id"], statements_of(parse_problem(text))});
  }
  return problems;
}

// Values of what is asked, told apart to a ten-thousandth of a degree: few where the givens settle it.
std::set<long> values(const Statement& statement, const SketchReport& report) {
  std::set<long> result;
  if (statement.goals.empty() || statement.goals[0].kind != GoalKind::find) return result;
  for (const Sketch& figure : report.sketches) {
    const double value = measure(statement.goals[0].claims[0].relation.expressions[0], figure);
    if (std::isfinite(value)) result.insert(std::lround(1e4 * value));
  }
  return result;
}

// Every given left out in turn: what was fixed becomes ambiguous, which is what the search must not overlook.
std::vector<Problem> with_one_left_out(const std::vector<Problem>& problems) {
  std::vector<Problem> result;
  for (const Problem& problem : problems)
    for (const Statement& statement : problem.statements)
      for (std::size_t i = 0; i < statement.givens.size(); ++i) {
        Statement less = statement;
        less.givens.erase(less.givens.begin() + static_cast<std::ptrdiff_t>(i));
        if (less.givens.empty()) continue;
        result.push_back({fmt::format("{} without \"{}\"", problem.id, statement.givens[i].text), {std::move(less)}});
      }
  return result;
}

void compare(const std::string& name, const std::vector<Problem>& problems, int starts, bool quiet) {
  int whole = 0, missed_values = 0, all = 0;
  std::size_t found = 0, known = 0;
  std::vector<double> times, per_second;
  for (const Problem& problem : problems)
    for (const Statement& statement : problem.statements) {
      const std::vector<Phrase> givens = phrases_of(statement);
      SketchReport usual, long_run;
      SketchOptions many;
      many.wanted = 400;
      const double ms = milliseconds_of([&] { usual = sketch(givens, statement.names.points.size(), {}); });
      many.starts = many.patience = starts;
      many.seed = 7;
      long_run = sketch(givens, statement.names.points.size(), {}, many);
      const auto seen = values(statement, usual), exist = values(statement, long_run);
      times.push_back(ms);
      if (usual.starts_tried > 0) per_second.push_back(1000 * usual.starts_tried / ms);
      ++all;
      found += usual.arrangements;
      known += long_run.arrangements;
      if (usual.arrangements >= long_run.arrangements) ++whole;
      const bool misses = exist.size() > seen.size() && exist.size() < 12;
      missed_values += misses;
      if (misses || (!quiet && usual.arrangements < long_run.arrangements))
        fmt::print("  {:40} {:2} points: {:4} of {:5} arrangements, {:3} of {:3} values, {:4} starts, {:7.2f} ms{}\n", problem.id,
                   statement.names.points.size(), usual.arrangements, long_run.arrangements, seen.size(), exist.size(),
                   usual.starts_tried, ms, misses ? "  <-- values missed" : "");
    }
  fmt::print("{}: {} statements, {} with every arrangement of the long run ({} starts); {} of {} arrangements; values missed in {}\n", name, all,
             whole, starts, found, known, missed_values);
  fmt::print("  milliseconds: median {:.2f}, 90 % {:.2f}, slowest {:.2f}; starts per second: median {:.0f}\n", quantile(times, 0.5), quantile(times, 0.9),
             quantile(times, 1), quantile(per_second, 0.5));
}

}  // namespace

int main(int argc, char** argv) {
  const int starts = argc > 1 ? std::stoi(argv[1]) : 5000;
  const std::vector<Problem> classroom = published("classroom.json");
  compare("classroom", classroom, starts, false);
  compare("theorems", published("theorems.json"), starts, false);
  compare("classroom, one given left out", with_one_left_out(classroom), starts, true);
}
