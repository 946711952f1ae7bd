#include "benchmarks/search/comparison_table.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "benchmarks/sample.hpp"
#include "benchmarks/search/time_text.hpp"

namespace prover {

std::string ComparisonTable::text_of(const Cell& cell) const {
  if (cell.skipped) return "–";
  switch (cell.state) {
    case PeerState::solved: return time_text(quantile(cell.seconds, 0.5));
    case PeerState::time_up: return fmt::format("> {:g} s", options_.limit_seconds);
    case PeerState::not_installed: return "missing";
    case PeerState::not_suited: return "not suited";
    case PeerState::failed: return "failed";
  }
  return "";
}

void ComparisonTable::print_head() const {
  fmt::print("{:34}{:>10}{:>13}", "instance", "equations", "Anglewright");
  for (const Peer& peer : peers_) fmt::print("{:>13}", peer.name);
  fmt::print("  answer\n");
}

int ComparisonTable::measure(const SearchInstance& instance, std::set<std::string>& out_of_time) {
  const Own ours = own_(instance);
  const auto columns = columns_of(instance);
  const Multipliers multipliers = columns && !ours.members.empty() ? multipliers_of(instance, ours.members) : Multipliers();
  std::vector<double> own_seconds{ours.seconds};
  std::vector<Cell> cells(peers_.size());
  const double slow = options_.limit_seconds / 10;
  for (int run = 0; run < options_.runs; ++run) {
    for (int again = 0; again < (ours.seconds < 0.01 ? 5 : 1) && (run == 0 || ours.seconds < slow); ++again)
      own_seconds.push_back(own_(instance).seconds);
    for (std::size_t i = 0; i < peers_.size(); ++i) {
      Cell& cell = cells[i];
      cell.skipped = out_of_time.count(peers_[i].name) > 0 || !columns;
      const bool enough = !cell.seconds.empty() && cell.seconds[0] > slow;
      if (cell.skipped || cell.state != PeerState::solved || enough) continue;
      const PeerRun peer = peers_[i].run({instance, *columns, multipliers, options_.limit_seconds});
      cell.state = peer.state;
      if (peer.state != PeerState::solved) continue;
      cell.seconds.push_back(peer.seconds);
      cell.answer = peer.answer;
    }
  }
  const double own_seconds_median = quantile(own_seconds, 0.5);
  fmt::print("{:34}{:10}{:>13}", instance.name, instance.problem.candidates.size(), time_text(own_seconds_median));
  int disagreements = 0;
  for (std::size_t i = 0; i < peers_.size(); ++i) {
    const Cell& cell = cells[i];
    if (!cell.skipped && cell.state == PeerState::time_up) out_of_time.insert(peers_[i].name);
    const bool differs = ours.answer && cell.answer && *cell.answer != *ours.answer;
    disagreements += differs ? 1 : 0;
    fmt::print("{:>13}", text_of(cell) + (differs ? fmt::format(" ({})", *cell.answer) : ""));
  }
  fmt::print("  {}{}{}\n", ours.answer ? std::to_string(*ours.answer) : "none", ours.remark,
             disagreements > 0 ? "  DISAGREEMENT" : "");
  std::fflush(stdout);
  if (ours.answer) note_ratio(instance.name, own_seconds_median, cells, columns.has_value());
  own_median_[instance.name] = own_seconds_median;
  return disagreements;
}

// When every peer ran out of time, the limit stands for the fastest: the true ratio is larger.
void ComparisonTable::note_ratio(const std::string& name, double own_seconds, const std::vector<Cell>& cells, bool suited) {
  std::optional<double> fastest;
  bool at_the_limit = false;
  for (const Cell& cell : cells) {
    if (!cell.seconds.empty()) fastest = std::min(fastest.value_or(1e300), quantile(cell.seconds, 0.5));
    at_the_limit |= cell.state == PeerState::time_up || (cell.skipped && suited);
  }
  const std::string head = fmt::format("ratio {}-{}", prefix_, name);
  if (fastest)
    ratios_.push_back(fmt::format("{} {:.1f}", head, *fastest / own_seconds));
  else if (at_the_limit)
    ratios_.push_back(fmt::format("{} {:.1f} (at least: no peer ended within {:g} s)", head,
                                  options_.limit_seconds / own_seconds, options_.limit_seconds));
}

void ComparisonTable::print_ratios() const {
  for (const std::string& line : ratios_) fmt::print("{}\n", line);
  fmt::print("\n");
}

std::optional<double> ComparisonTable::own_median(const std::string& name) const {
  const auto found = own_median_.find(name);
  return found == own_median_.end() ? std::nullopt : std::optional(found->second);
}

}  // namespace prover
