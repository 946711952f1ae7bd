// What rules cost a figure that they cannot match: the same problems with the catalogue, and with copies of it added
// that ask for one more fact, of a kind that none of these figures has. Such rules should cost nothing measurable.
#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "benchmarks/sample.hpp"
#include "prover/prove.hpp"

namespace {

using prover::Catalogue;
using prover::Rule;

struct Problem {
  std::string name, text;
};

// The demo and the first classroom problems without circle and regular polygon.
std::vector<Problem> problems(std::size_t wanted) {
  std::vector<Problem> chosen;
  std::ifstream demo(std::string(EXAMPLES_DIR) + "/trellis-angle-sum.aw");
  chosen.push_back({"the demo", {std::istreambuf_iterator<char>(demo), {}}});
  std::ifstream stream(std::string(PUBLISHED_DIR) + "/classroom.json");
  for (const auto& item : nlohmann::json::parse(stream)) {
    if (chosen.size() > wanted) break;
    std::string text;
    for (const auto& fact : item["facts"]) text += fact.get<std::string>() + "\n";
    text += (item["answer"].is_boolean() ? "prove: " : "find: ") + item["ask"].get<std::string>() + "\n";
    const auto says = [&](const char* word) { return text.find(word) != std::string::npos; };
    if (says("circle") || says("regular") || says("concyclic") || says("tangent") || says("diameter")) continue;
    chosen.push_back({item["id"], std::move(text)});
  }
  return chosen;
}

// `copies` − 1 copies of every rule with a pattern, each with a regular polygon in addition that no figure here has.
Catalogue enlarged(const Catalogue& catalogue, int copies) {
  Catalogue larger = catalogue;  // its courses too
  for (int copy = 1; copy < copies; ++copy)
    for (Rule rule : catalogue.rules) {
      if (rule.builtin || rule.then.empty()) continue;
      rule.id += fmt::format("-copy-{}", copy);
      prover::Phrase absent;
      absent.predicate = prover::Predicate::regular_polygon;
      for (int corner = 0; corner < 5; ++corner) {
        absent.points.emplace_back(static_cast<std::int64_t>(rule.variables.points.size()));
        absent.point_spans.emplace_back();
        rule.variables.points.push_back(fmt::format("V{}", corner));
      }
      rule.given.push_back(std::move(absent));
      larger.rules.push_back(std::move(rule));
    }
  larger.serial = catalogue.serial + 1'000'000 + static_cast<std::uint64_t>(copies);
  return larger;
}

}  // namespace

int main(int argc, char** argv) {
  const bool quick = argc > 1 && std::string(argv[1]) == "--quick";
  const std::vector<Problem> chosen = problems(10);
  const std::vector<int> sizes = {1, 2, 4};
  std::vector<Catalogue> catalogues;
  for (const int size : sizes) catalogues.push_back(enlarged(prover::standard_catalogue(), size));
  fmt::print("Time against the number of loaded rules; milliseconds (least of the runs) for the walk, Z3 apart\n");
  fmt::print("  {:36}", "problem");
  for (const Catalogue& catalogue : catalogues) fmt::print("{:>10}", fmt::format("{} rules", catalogue.rules.size()));
  fmt::print("\n");
  std::vector<double> total(sizes.size(), 0);
  for (const Problem& problem : chosen) {
    std::vector<double> least(sizes.size(), 1e300);
    // In turn, so that whatever else the machine does falls on all of them; the least, since only that is their own.
    for (int run = 0; run < (quick ? 15 : 60); ++run)
      for (std::size_t i = 0; i < sizes.size(); ++i) {
        prover::ProveOptions options;
        options.budget = prover::Budget::seconds(2);
        prover::Answer answer;
        double time = prover::milliseconds_of([&] { answer = prover::prove(problem.text, catalogues[i], options); });
        if (const auto z3 = answer.time_ms.find("z3"); z3 != answer.time_ms.end()) time -= z3->second;
        least[i] = std::min(least[i], time);
      }
    fmt::print("  {:36}", problem.name);
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      fmt::print("{:10.3f}", least[i]);
      total[i] += least[i];
    }
    fmt::print("\n");
  }
  for (std::size_t i = 1; i < sizes.size(); ++i)
    fmt::print("ratio rules-{}x {:.2f}\n", sizes[i], total[i] / total[0]);
}
