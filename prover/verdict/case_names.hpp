// What tells the cases of a problem apart: for each a few positions that all its figures show and no figure outside it
// shows. Where one question ("on which side of LM is P?") is answered in every case, each is named by its answer to it,
// whichever positions its proof happens to read.
#pragma once
#include <set>
#include <vector>

#include "prover/figure/position.hpp"
#include "prover/sketch/sketch.hpp"

namespace prover {

struct CaseOfFigures {
  std::vector<std::size_t> views;  // which figures it covers
  std::set<Position> read;         // what its proofs read from them
};

bool shows(const Sketch& figure, const Position& position);

// By case; as far as positions of these kinds, about what the proofs of some case read, tell it from the others.
std::vector<std::vector<Position>> told_apart(const std::vector<CaseOfFigures>& cases, const std::vector<Sketch>& figures);

std::string describe(const std::vector<Position>& positions, const Names& names);  // joined by ", and "

}  // namespace prover
