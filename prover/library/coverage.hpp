// Are all figures spoken of? Sketches do not hit boundaries, so boundaries are drawn on purpose: figures of the
// premises with a point exactly on the line of which a case or a proof only knows the two sides.
#pragma once
#include <string>

#include "prover/base/budget.hpp"
#include "prover/library/theorem.hpp"
#include "prover/proof/proof.hpp"

namespace prover {

// A figure of the premises that no case covers, in words; empty when none was found.
std::string uncovered_figure(const Theorem& theorem, const Budget& budget);

// The proof reads from figures that a point lies on one side of a line: can it lie on the line? In words; empty when
// no such figure was found. Left out are angles that the claim itself names (they are never 0° or 180°), and letters
// that only name a line (`names_line`, by letter): such a point may be chosen elsewhere on its line.
std::string open_boundary(const Proof& proof, const Statement& statement, const std::vector<bool>& names_line,
                          const Budget& budget);

}  // namespace prover
