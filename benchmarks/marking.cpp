// What marking costs: for each published classroom problem with a proof a piece of work of twenty lines, made from the
// proof's own steps, some with a number changed, and the median time to mark it. Beside it Z3 alone, in the same run, asked
// of the same lines whether each follows from all equations at once; it finds no reason, no gap and no carried error.
#include <fmt/format.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

#include "benchmarks/sample.hpp"
#include "benchmarks/z3_alone.hpp"
#include "prover/mark.hpp"
#include "prover/marking/ground.hpp"
#include "prover/walk.hpp"

namespace {

using namespace prover;

constexpr int kLines = 20;

// Every fourth line gets another number.
std::string off_by_ten(std::string line) {
  const auto digit = line.rfind('0');
  if (digit != line.npos) line[digit] = '7';
  return line;
}

std::string twenty_lines(const AnswerProof& proof) {
  std::string work;
  for (int i = 0; i < kLines; ++i) {
    const AnswerStep& step = proof.steps[static_cast<std::size_t>(i) % proof.steps.size()];
    const std::string line = step.claim + " (" + step.reason + ")";
    work += (i % 4 == 3 ? off_by_ten(line) : line) + "\n";
  }
  return work;
}

// Each claim, put to Z3 with every linear equation of the saturation.
double by_z3(const std::string& text, const std::string& work) {
  Walked way = walk(text, standard_catalogue(), {});
  const PupilWork read = read_work(text, work);
  Statement statement = way.statements[0];
  for (const WorkLine& line : read.lines)
    if (!line.claims.empty()) statement.goals.push_back({GoalKind::prove, {}, {}, line.claims, {}});
  const Ground ground(statement, {}, way.options, Budget::seconds(5));
  std::vector<Form> equations;
  for (const Instance& instance : ground.saturation().instances)
    equations.insert(equations.end(), instance.conclusions.begin(), instance.conclusions.end());
  return milliseconds_of([&] {
    for (const WorkLine& line : read.lines)
      for (const Phrase& claim : line.claims)
        for (const Form& form : ground.claim(claim).forms) z3_alone(equations, form, ground.unknowns(), 2'000);
  });
}

}  // namespace

int main() {
  std::ifstream stream(std::string(PUBLISHED_DIR) + "/classroom.json");
  std::vector<double> ours, peers;
  std::string slowest;
  for (const auto& item : nlohmann::json::parse(stream)) {
    if (!item["answer"].is_number()) continue;
    std::string text;
    for (const auto& fact : item["facts"]) text += fact.get<std::string>() + "\n";
    text += "find: " + item["ask"].get<std::string>() + "\n";
    const Answer answer = prove(text, standard_catalogue());
    if (answer.verdict != Verdict::proved) continue;
    const std::string work = twenty_lines(answer.proofs[0]);
    const double ms = median_time([&] { mark(text, work, standard_catalogue()); }, 5, 1000);
    if (ours.empty() || ms > *std::max_element(ours.begin(), ours.end())) slowest = item["id"];
    ours.push_back(ms);
    peers.push_back(by_z3(text, work));
  }
  fmt::print("{} pieces of {} lines: median {:.1f} ms, 90 % {:.1f}, slowest {:.1f} ({})\n", ours.size(), kLines, quantile(ours, 0.5),
             quantile(ours, 0.9), quantile(ours, 1), slowest);
  fmt::print("Z3 alone, whether each line follows: median {:.1f} ms\n", quantile(peers, 0.5));
  fmt::print("ratio marking {:.2f}\n", quantile(peers, 0.5) / quantile(ours, 0.5));
}
