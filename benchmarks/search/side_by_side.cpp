#include "benchmarks/search/side_by_side.hpp"

#include <fmt/format.h>

#include <chrono>
#include <cmath>
#include <functional>
#include <map>
#include <optional>
#include <set>

#include "benchmarks/sample.hpp"
#include "benchmarks/search/families.hpp"
#include "benchmarks/search/own_methods.hpp"
#include "benchmarks/search/peers.hpp"
#include "benchmarks/search/time_text.hpp"
#include "prover/search/lightest_set.hpp"

namespace prover {

namespace {

// Instances from small to large. A solver that ran out of time on one is not asked about the next.
using Family = std::vector<std::string>;

std::vector<Family> families(bool quick) {
  if (quick)
    return {{"triangle"}, {"triangle-weighted"}, {"grid-2x2", "grid-3x3", "grid-5x5-chain5"}, {"random-5", "random-8"}, {"fan-5", "fan-10"}, {"doubling-fan-4"}};
  return {{"triangle"},
          {"triangle-weighted"},
          {"grid-2x2", "grid-3x3", "grid-4x4-neighbours", "grid-5x5-chain5", "grid-10x8-chain5", "grid-13x10-chain5", "grid-29x19-chain5"},
          {"grid-10x8-chain8", "grid-13x10-chain10", "grid-29x19-chain10"},
          {"grid-5x5-chain5-weighted", "grid-10x8-chain8-weighted", "grid-29x19-chain6-weighted"},
          {"random-5", "random-8", "random-12", "random-20", "random-30", "random-48-seed7"},
          {"random-8-goal10-weighted", "random-12-goal10-weighted", "random-20-goal10-weighted"},
          {"fan-5", "fan-10", "fan-20", "fan-40", "fan-80"},
          {"doubling-fan-4", "doubling-fan-6"}};
}

std::vector<Family> families_for_entailment(bool quick) {
  if (quick) return {{"triangle"}, {"grid-3x3", "grid-5x5-chain5"}, {"random-8"}, {"fan-20"}};
  return {{"triangle"},
          {"grid-3x3", "grid-5x5-chain5", "grid-10x8-chain5", "grid-13x10-chain5", "grid-29x19-chain5"},
          {"random-8", "random-12", "random-20", "random-30", "random-48-seed7"},
          {"fan-20", "fan-80", "fan-1000", "fan-25000"}};
}

struct Cell {
  std::vector<double> seconds;
  std::optional<std::int64_t> answer;
  PeerState state = PeerState::solved;
  bool skipped = false;
};

std::string text_of(const Cell& cell, double limit) {
  if (cell.skipped) return "–";
  switch (cell.state) {
    case PeerState::solved: return time_text(quantile(cell.seconds, 0.5));
    case PeerState::time_up: return fmt::format("> {:g} s", limit);
    case PeerState::not_installed: return "missing";
    case PeerState::not_suited: return "not suited";
    case PeerState::failed: return "failed";
  }
  return "";
}

// One table: our own time beside those of some peers, instance by instance.
class Table {
 public:
  struct Own {
    double seconds = 0;
    std::optional<std::int64_t> answer;
    std::string remark;
  };
  using OwnMethod = std::function<Own(const SearchInstance&)>;

  Table(const SideBySide& options, std::string ratio_prefix, const std::vector<Peer>& peers, OwnMethod own)
      : options_(options), prefix_(std::move(ratio_prefix)), peers_(peers), own_(std::move(own)) {}

  void print_head() const {
    fmt::print("{:28}{:>10}{:>12}", "instance", "equations", "Anglewright");
    for (const Peer& peer : peers_) fmt::print("{:>13}", peer.name);
    fmt::print("  answer\n");
  }

  // Prints a line; the number of answers that differ from ours.
  int measure(const SearchInstance& instance, std::set<std::string>& out_of_time) {
    Own ours = own_(instance);  // the first run warms up, and tells how large the multipliers are
    const auto columns = columns_of(instance);
    const Multipliers multipliers = known_multipliers(instance);
    std::vector<double> own_seconds;
    std::vector<Cell> cells(peers_.size());
    for (int run = 0; run < options_.runs; ++run) {
      for (int again = 0; again < (ours.seconds < 0.01 ? 5 : 1); ++again)
        if (run == 0 || ours.seconds < options_.limit_seconds / 5) own_seconds.push_back(own_(instance).seconds);
      for (std::size_t i = 0; i < peers_.size(); ++i) {
        Cell& cell = cells[i];
        cell.skipped = out_of_time.count(peers_[i].name) > 0 || !columns;
        const bool slow = !cell.seconds.empty() && cell.seconds[0] > options_.limit_seconds / 10;
        if (cell.skipped || cell.state != PeerState::solved || slow) continue;
        const PeerRun peer = peers_[i].run({instance, *columns, multipliers, options_.limit_seconds});
        cell.state = peer.state;
        if (peer.state != PeerState::solved) continue;
        cell.seconds.push_back(peer.seconds);
        cell.answer = peer.answer;
      }
    }
    const double own_seconds_median = quantile(own_seconds, 0.5);
    fmt::print("{:28}{:10}{:>12}", instance.name, instance.problem.candidates.size(), time_text(own_seconds_median));
    int disagreements = 0;
    std::optional<double> fastest;
    bool at_the_limit = false;
    for (std::size_t i = 0; i < peers_.size(); ++i) {
      const Cell& cell = cells[i];
      bool differs = false;
      if (cell.state == PeerState::time_up && !cell.skipped) out_of_time.insert(peers_[i].name);
      at_the_limit |= cell.state == PeerState::time_up || (cell.skipped && columns);
      if (cell.answer) {
        differs = ours.answer && *cell.answer != *ours.answer;
        disagreements += differs ? 1 : 0;
        fastest = std::min(fastest.value_or(1e300), quantile(cell.seconds, 0.5));
      }
      fmt::print("{:>13}", text_of(cell, options_.limit_seconds) + (differs ? fmt::format(" ({})", *cell.answer) : ""));
    }
    fmt::print("  {}{}{}\n", ours.answer ? std::to_string(*ours.answer) : "none", ours.remark,
               disagreements > 0 ? "  DISAGREEMENT" : "");
    std::fflush(stdout);
    // When every peer ran out of time, the limit stands for the fastest: the true ratio is larger.
    if (!fastest && at_the_limit) {
      ratios_.push_back(fmt::format("ratio {}-{} {:.1f} (at least: no peer ended within {:g} s)", prefix_, instance.name,
                                    options_.limit_seconds / own_seconds_median, options_.limit_seconds));
    } else if (fastest) {
      ratios_.push_back(fmt::format("ratio {}-{} {:.1f}", prefix_, instance.name, *fastest / own_seconds_median));
    }
    own_median_[instance.name] = own_seconds_median;
    return disagreements;
  }

  void print_ratios() const {
    for (const std::string& line : ratios_) fmt::print("{}\n", line);
    fmt::print("\n");
  }
  std::optional<double> own_median(const std::string& name) const {
    const auto found = own_median_.find(name);
    return found == own_median_.end() ? std::nullopt : std::optional(found->second);
  }

 private:
  // Of a set that is known to be lightest, so that solvers with bounded multipliers can find one as light.
  Multipliers known_multipliers(const SearchInstance& instance) const {
    SearchLimits limits;
    limits.budget = Budget::seconds(options_.limit_seconds);
    const auto light = lightest_set(instance.problem, limits);
    return light ? multipliers_of(instance, light->members) : Multipliers();
  }

  SideBySide options_;
  std::string prefix_;
  std::vector<Peer> peers_;
  OwnMethod own_;
  std::vector<std::string> ratios_;
  std::map<std::string, double> own_median_;
};

int measure_families(Table& table, const std::vector<Family>& chosen) {
  table.print_head();
  int disagreements = 0;
  for (const Family& family : chosen) {
    std::set<std::string> out_of_time;
    for (const std::string& name : family) {
      const auto instance = instance_named(name);
      if (instance) disagreements += table.measure(*instance, out_of_time);
    }
  }
  table.print_ratios();
  return disagreements;
}

// The same question and answer at 1,030 and 107,540 equations: the time may grow like n log n.
void print_growth(const Table& table) {
  const auto small = table.own_median("grid-5x5-chain5"), large = table.own_median("grid-29x19-chain5");
  if (!small || !large) return;
  const double n = 1030, m = 107540;
  const double allowed = m * std::log(m) / (n * std::log(n));
  fmt::print("From {:.0f} to {:.0f} equations the time grows {:.1f} times; n log n grows {:.1f} times.\n", n, m,
             *large / *small, allowed);
  fmt::print("ratio growth-of-grids {:.2f}\n\n", allowed / (*large / *small));
}

}  // namespace

int compare_side_by_side(const SideBySide& options) {
  const double limit = options.limit_seconds;
  int disagreements = 0;

  fmt::print("The lightest proof, and that it is the lightest\n");
  Table optimum(options, "optimum", peers_for_the_optimum(), [&](const SearchInstance& instance) {
    const LightestRun run = run_lightest(instance.problem, limit);
    Table::Own own{run.seconds, std::nullopt, ""};
    if (run.proved)
      own.answer = run.weight;
    else if (run.weight)
      own.remark = fmt::format(" proved: {} found, none below {}", *run.weight, run.lower_bound);
    return own;
  });
  disagreements += measure_families(optimum, families(options.quick));
  print_growth(optimum);

  fmt::print("Ten different minimal sets: ours are the lightest, in order; Z3 finds any ten\n");
  Table several(options, "ten-sets", peers_for_several(), [&](const SearchInstance& instance) {
    const SeveralRun run = run_several(instance.problem, 10, limit);
    return Table::Own{run.seconds, static_cast<std::int64_t>(run.sets), fmt::format(" sets, up to weight {}", run.heaviest)};
  });
  disagreements += measure_families(
      several, options.quick
                   ? std::vector<Family>{{"triangle"}, {"grid-3x3", "grid-5x5-chain5"}, {"fan-10"}}
                   : std::vector<Family>{{"triangle"},
                                         {"triangle-weighted"},
                                         {"grid-3x3", "grid-5x5-chain5", "grid-10x8-chain5", "grid-29x19-chain5"},
                                         {"random-8", "random-12", "random-20"},
                                         {"fan-10", "fan-20", "fan-40"}});

  fmt::print("Does the goal follow? By the directions of the lines, from the givens\n");
  Table directions(options, "follows-by-directions", peers_for_entailment(), [&](const SearchInstance& instance) {
    const EntailmentRun run = run_entailment(instance, Entailment::directions_of_givens, limit);
    Table::Own own{run.seconds, std::nullopt, ""};
    if (run.follows) own.answer = *run.follows ? 1 : 0;
    return own;
  });
  disagreements += measure_families(directions, families_for_entailment(options.quick));

  fmt::print("Does the goal follow? By elimination over all angles: the very same equations\n");
  Table elimination(options, "follows-by-angles", peers_for_entailment(), [&](const SearchInstance& instance) {
    const EntailmentRun run = run_entailment(instance, Entailment::angles, limit);
    Table::Own own{run.seconds, std::nullopt, ""};
    if (run.follows) own.answer = *run.follows ? 1 : 0;
    return own;
  });
  disagreements += measure_families(elimination, families_for_entailment(options.quick));
  fmt::print("{} disagreements\n", disagreements);
  return disagreements;
}

}  // namespace prover
