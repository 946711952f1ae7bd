// General solvers on the same equations. Each gets the problem in the form that suits it; each proves its optimum.
//   Z3 Optimize   real multipliers; "used or zero" as clauses, weights as soft constraints
//   CBC, GLPK     a mixed integer program: multipliers between −m and m times a binary "used"
//   clingo        an answer set program: multipliers −2, −1, 1, 2
// Z3 works in a copy of this process and its own time is taken, the encoding included. The others are programs: their
// time is that of the process, less what the same program takes for an empty problem, which is in their favour.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "benchmarks/search/columns.hpp"

namespace prover {

enum class PeerState { solved, time_up, not_installed, not_suited, failed };
struct PeerRun {
  PeerState state = PeerState::failed;
  double seconds = 0;
  std::int64_t answer = 0;  // the optimum; 1 for "follows" and 0 for "does not"; how many sets were found
};

struct PeerTask {
  const SearchInstance& instance;
  const Columns& columns;
  Multipliers multipliers;  // of a known optimal set: what the solvers with bounded multipliers must be allowed
  double limit_seconds;
  std::size_t wanted = 10;  // how many sets to enumerate
};
struct Peer {
  const char* name;
  PeerRun (*run)(const PeerTask& task);
};
const std::vector<Peer>& peers_for_the_optimum();
const std::vector<Peer>& peers_for_entailment();
const std::vector<Peer>& peers_for_several();

PeerRun z3_optimum(const PeerTask& task);
PeerRun z3_entailment(const PeerTask& task);
PeerRun z3_several(const PeerTask& task);  // minimal sets in no order, by a map of what has been seen
PeerRun cbc_optimum(const PeerTask& task);
PeerRun glpk_optimum(const PeerTask& task);
PeerRun clingo_optimum(const PeerTask& task);
PeerRun flint_entailment(const PeerTask& task);  // the rank with and without the goal

// "SECONDS ANSWER", as a child hands it over.
std::string child_result(double seconds, std::int64_t answer);
PeerRun peer_run_of(const struct ChildRun& child);

}  // namespace prover
