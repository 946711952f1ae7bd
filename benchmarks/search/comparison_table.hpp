// One table: our own time beside those of some peers, instance by instance; then a line "ratio NAME VALUE" for each, the fastest
// peer's time divided by ours. Everything that is quick is run several times in turn, so that whatever else the machine
// does falls on all of them, and medians are compared.
#pragma once
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "benchmarks/search/peers.hpp"
#include "benchmarks/search/side_by_side.hpp"

namespace prover {

class ComparisonTable {
 public:
  struct Own {
    double seconds = 0;
    std::optional<std::int64_t> answer;  // what peers must answer too; nothing when we do not know it ourselves
    std::string remark;
    std::vector<int> members;  // of the lightest set: what solvers with bounded multipliers must be able to express
  };
  using OwnMethod = std::function<Own(const SearchInstance&)>;

  ComparisonTable(const SideBySide& options, std::string ratio_prefix, std::vector<Peer> peers, OwnMethod own)
      : options_(options), prefix_(std::move(ratio_prefix)), peers_(std::move(peers)), own_(std::move(own)) {}

  void print_head() const;
  // Prints a line. Peers that ran out of time are added to `out_of_time`; those in it are not asked.
  // Answers: how many answers differ from ours.
  int measure(const SearchInstance& instance, std::set<std::string>& out_of_time);
  void print_ratios() const;
  std::optional<double> own_median(const std::string& name) const;

 private:
  struct Cell {
    std::vector<double> seconds;
    std::optional<std::int64_t> answer;
    PeerState state = PeerState::solved;
    bool skipped = false;
  };
  std::string text_of(const Cell& cell) const;
  void note_ratio(const std::string& name, double own_seconds, const std::vector<Cell>& cells, bool suited);

  SideBySide options_;
  std::string prefix_;
  std::vector<Peer> peers_;
  OwnMethod own_;
  std::vector<std::string> ratios_;
  std::map<std::string, double> own_median_;
};

}  // namespace prover
