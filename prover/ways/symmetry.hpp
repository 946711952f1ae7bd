// The symmetries of a figure with its givens and one goal: the exchanges of points after which the same lines are
// drawn, the same is given and the same is asked. A proof and its mirror image are one idea.
//
// Found by colour refinement on the points (McKay 1981, from memory): points get the same colour as long as lines, givens
// and goal do not tell them apart; then points are matched one after the other with points of their colour, and a
// complete matching is verified exactly. Nothing is read from coordinates.
#pragma once
#include <optional>
#include <vector>

#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

using Exchange = std::vector<PointId>;  // by PointId: where the point goes

// What an equation becomes when the points are exchanged, normalised; nothing when a line that it needs is not drawn.
std::optional<Form> image_of(const Form& form, const Exchange& exchange, const Arrangement& arrangement,
                             UnknownTable& unknowns);

// All symmetries, the identity first. `goal` are the forms of the goal. At a limit on their number, or on the work, those found so far:
// then a mirrored proof may be taken for another one, never the other way round.
std::vector<Exchange> symmetries(const Statement& statement, const std::vector<Form>& goal,
                                 const Arrangement& arrangement, UnknownTable& unknowns);

}  // namespace prover
