// Where the search starts: random points, put roughly where the sentences want them one sentence after the other.
// The solver finds the nearest figure, and which figure that is, which side, which order, how wide an angle, is
// mostly decided here.
#pragma once
#include <array>
#include <vector>

#include "prover/sketch/constraint.hpp"
#include "prover/sketch/random.hpp"

namespace prover::sketching {

// A start about 2 wide, after so many rounds of putting points in place; `sizes` too, which is quicker to a first
// figure, or positions alone, which ends in more different ones.
std::vector<double> random_start(const std::vector<Phrase>& givens, const Layout& layout, Random& random, int rounds,
                                 bool sizes);

// A copy of a figure with a part of it mirrored, swapped or turned over, to start again from.
std::vector<double> altered_start(const std::vector<double>& figure, const Layout& layout, Random& random);

// A copy of a figure to start from with three points turning the other way.
std::vector<double> turned_start(const std::vector<double>& figure, const Layout& layout, std::array<int, 3> points,
                                 Random& random);

}  // namespace prover::sketching
