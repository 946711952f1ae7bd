// A statement solved: attempts from the cheapest to the dearest, and the cases that drawn figures show.
//
//   1. positions of the text, drawn lines         no figure is read
//   2. positions that all figures agree on
//   3. the same, with named points joined         a construction, which pays
//   4. where figures differ in a position that a proof needs: one case for each, found by proving in one figure
//      and asking which others show the same
//
// A figure is drawn in any case: a proof from givens that no figure meets would prove nothing.
#pragma once
#include <set>
#include <string>
#include <vector>

#include "prover/construct/added_lines.hpp"
#include "prover/verdict/attempt.hpp"
#include "prover/verdict/case_names.hpp"

namespace prover {

struct SolvedCase {
  std::string name;               // the positions in which it differs from the others; empty when there is one
  std::vector<Position> told_by;  // the same: a few positions that its figures show and no others
  std::vector<std::size_t> views; // which sketches it covers
  Attempt attempt;
};

struct Solved {
  SketchReport figures;
  AddedLines added;               // with an objection, nothing was tried
  std::vector<SolvedCase> cases;  // several only when figures differ where the proof looks
  bool covers_all_figures = false;
};

// Agreement of figures is evidence, not proof: whether a position that a proof reads from them can be otherwise is asked
// by trying to draw the opposite. Figures of the givens that show it, when some were found.
std::vector<Sketch> figures_against(const Statement& statement, const Position& position, const Budget& budget,
                                    double& sketch_ms);
std::set<Position> seen_positions(const Proof& proof);

Solved solve(const Statement& statement, const AttemptOptions& options, const Budget& budget, StageTimes& times,
             double& sketch_ms);

}  // namespace prover
