// Givens that exclude each other: a smallest such set. Without any one of them the others can hold together.
//
//   proof     the chain derives the contradiction from them; deletion with the chain, so that what is left still gives it
//   positions what they say of order and sides alone has no figure (smt/position_conflict.hpp)
//   figures   numerical: no figure of them was found, while without any one of them one is found easily, and a number
//             among them is clearly away from all that figures of the others show. A search that fails is no evidence
//             by itself, so in doubt they are only suspected.
#pragma once
#include <vector>

#include "prover/evidence/repair.hpp"

namespace prover {

enum class ConflictShownBy { suspicion, proof, positions, figures };

struct Conflict {
  ConflictShownBy shown_by = ConflictShownBy::suspicion;
  std::vector<std::size_t> givens;  // ascending
  AttemptOptions with;              // proof: the options under which the chain shows it
  int tries = 0;                    // figures: starts of the search that found none
};

// `used`: the givens that a proof of the contradiction cites; they are kept in preference to others. Nothing when the
// chain derives no contradiction from the givens' own positions.
std::optional<Conflict> conflict_by_proof(const Statements& statements, const std::vector<std::size_t>& used,
                                          const AttemptOptions& options, const Budget& budget);

// The chain may need a sentence of position to tell which of two contradictions there is. A part of the conflict that
// cannot be drawn without that sentence either, when figures are evidence enough.
std::optional<Conflict> smaller_by_figures(const Statements& statements, const Conflict& proved, const AttemptOptions& options,
                                           const Budget& budget);

// Where no figure was found: nothing when one is found after all, or time is up.
std::optional<Conflict> conflict_by_figures(const Statements& statements, const AttemptOptions& options,
                                            const Budget& budget);

}  // namespace prover
