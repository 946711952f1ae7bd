// The replay checker: reads a proof with nothing but the problem's phrases, the rules' text and exact
// rationals, and says whether it is one. It shares no code with the search (chain, the closure of positions,
// the elimination): it has its own reading of phrases as equations, its own identification of rays, its own
// closure of positions, so that a mistake there is found here. The only room that may say "checked".
#pragma once
#include <string>

#include "prover/proof/proof.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

struct CheckReport {
  bool accepted = false;
  int step = -1;          // the first step refused, -1 for the goal or the whole
  std::string objection;  // a sentence for us, empty when accepted
};

// `sketches` are the figures that all showed what the proof calls "seen"; may be empty when nothing is seen.
CheckReport check(const Proof& proof, const Statement& statement, const Goal& goal,
                  const Catalogue& catalogue, const UnknownTable& unknowns,
                  const std::vector<Sketch>& sketches);

}  // namespace prover
