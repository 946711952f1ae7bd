// Every rule with a pattern is measured on random figures that fit its premises: 1,000 of each in every run of the
// tests, 100,000 in the long one (`anglewright_tests "[long]"`), which prints a line for each rule. Near the degenerate
// edge, in all arrangements that turn up, and with letters on one point too. A rule of which too few figures can be
// drawn fails. ANGLEWRIGHT_SEED draws others; ANGLEWRIGHT_FIGURES sets how many the long test wants, and
// ANGLEWRIGHT_RULE takes one rule alone.
#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <mutex>

#include <tbb/parallel_for.h>

#include "prover/measure/trial.hpp"

using namespace prover;

namespace {

std::size_t number_from(const char* variable, std::size_t otherwise) {
  const char* text = std::getenv(variable);
  return text ? static_cast<std::size_t>(std::strtoull(text, nullptr, 10)) : otherwise;
}

std::string told(const Refutation& refutation) {
  return describe(refutation.claim, refutation.names) + " does not hold in " +
         coordinates_of(refutation.figure, refutation.names, 17);
}

void measure(std::size_t figures, std::size_t most_shared, bool print) {
  const std::vector<Rule>& rules = standard_catalogue().rules;
  TrialOptions options;
  options.figures = figures;
  options.most_shared = most_shared;
  options.seed = number_from("ANGLEWRIGHT_SEED", 1);
  if (print) fmt::print("seed {}; {:44}{:>9}{:>9}{:>9}{:>7}{:>9}{:>9}{:>10}\n", options.seed, "rule", "figures", "on edge", "arranged",
                        "cases", "shared", "unclear", "tolerance");
  INFO("seed " << options.seed);
  std::vector<Trial> trials(rules.size());
  const char* one = std::getenv("ANGLEWRIGHT_RULE");
  const auto wanted = [&](const Rule& rule) { return !rule.then.empty() && (one == nullptr || rule.id == one); };
  std::mutex printing;
  tbb::parallel_for(std::size_t{0}, rules.size(), [&](std::size_t i) {
    if (!wanted(rules[i])) return;
    trials[i] = try_rule(rules[i], options);
    if (!print) return;
    const Trial& t = trials[i];
    const std::lock_guard lock(printing);
    fmt::print("{:50}{:9}{:9}{:9}{:7}{:9}{:9}{:10.1e}\n", rules[i].id, t.figures, t.on_edge, t.arrangements, t.cases, t.shared,
               t.unclear, t.tolerance);
    std::fflush(stdout);
  });
  for (std::size_t i = 0; i < rules.size(); ++i) {
    if (!wanted(rules[i])) continue;
    INFO(rules[i].id);
    if (trials[i].refutation) FAIL_CHECK(told(*trials[i].refutation));
    CHECK(trials[i].figures >= figures);
  }
}

}  // namespace

TEST_CASE("every conclusion holds in every figure drawn for its premises") { measure(1000, 1, false); }

TEST_CASE("every conclusion holds in a hundred thousand figures", "[.][long]") {
  measure(number_from("ANGLEWRIGHT_FIGURES", 100'000), 2, true);
}
