#include "benchmarks/search/peers.hpp"

#include <fmt/format.h>

#include <sstream>

#include "benchmarks/search/child.hpp"

namespace prover {

const std::vector<Peer>& peers_for_the_optimum() {
  static const std::vector<Peer> peers = {
      {"Z3 Optimize", z3_optimum}, {"CBC", cbc_optimum}, {"GLPK", glpk_optimum}, {"clingo", clingo_optimum}};
  return peers;
}

const std::vector<Peer>& peers_for_entailment() {
  static const std::vector<Peer> peers = {{"Z3", z3_entailment}, {"FLINT", flint_entailment}};
  return peers;
}

const std::vector<Peer>& peers_for_several() {
  static const std::vector<Peer> peers = {{"Z3 maps", z3_several}};
  return peers;
}

std::string child_result(double seconds, std::int64_t answer) { return fmt::format("{} {}", seconds, answer); }

PeerRun peer_run_of(const ChildRun& child) {
  PeerRun run;
  if (child.time_up) run.state = PeerState::time_up;
  if (!child.output) return run;
  std::istringstream text(*child.output);
  if (text >> run.seconds >> run.answer) run.state = PeerState::solved;
  return run;
}

}  // namespace prover
