#include "prover/reading/reading.hpp"

#include <algorithm>
#include <numeric>

#include "prover/reading/board.hpp"
#include "prover/reading/chained.hpp"
#include "prover/reading/order.hpp"

namespace prover {

namespace {

// A small letter that the problem does not use.
std::string free_letter(const Statement& statement, const UnknownTable& unknowns) {
  for (const char* letter : {"x", "y", "z", "t", "u", "v", "w"}) {
    bool taken = std::find(statement.names.points.begin(), statement.names.points.end(), letter) != statement.names.points.end();
    for (std::size_t i = 0; i < unknowns.size() && !taken; ++i) {
      const Unknown& unknown = unknowns[UnknownId(static_cast<std::int64_t>(i))];
      taken = unknown.kind == UnknownKind::number && unknown.name == letter;
    }
    for (const Given& given : statement.givens) taken = taken || given.text.find(" " + std::string(letter) + " ") != std::string::npos;
    if (!taken) return letter;
  }
  return {};
}

}  // namespace

Reading reading_of(const Proof& proof, const Statement& statement, const Goal& goal, const Catalogue& catalogue,
                   UnknownTable& unknowns, const Arrangement& arrangement, Register wording) {
  const Scene scene{proof, statement, goal, catalogue, unknowns, arrangement, wording};
  std::vector<std::size_t> order(proof.steps.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  Board board(scene);
  Reading reading = board.write(order);
  const std::string letter = free_letter(statement, unknowns);
  if (const UnknownId unknown = board.worth_a_letter(); unknown.valid() && !letter.empty()) {
    // Again from the start, now that this unknown has a letter and others can be told by it.
    std::vector<const Instance*> members;
    for (const ProofStep& step : proof.steps) members.push_back(&step.instance);
    reading = Board(scene, Letter{unknown, letter}).write(reading_order(members, proof.goal, unknown));
  }
  chain_lines(reading, goal, statement.names);
  return reading;
}

}  // namespace prover
