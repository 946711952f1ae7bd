// The points that a phrase speaks of, and a phrase made from points: what every room that asks "which points?" or says a
// plain fact of its own needs.
#pragma once
#include <vector>

#include "prover/language/phrase.hpp"

namespace prover {

// Those of the predicate, then those of the angles and segments it compares, in the order in which they stand; a point may
// come more than once. Places that are still open (an angle named by its corner alone) are left out.
std::vector<PointId> points_named(const Phrase& phrase);

// A phrase that nobody wrote: its spans are empty.
Phrase phrase_of(Predicate predicate, std::vector<PointId> points);

}  // namespace prover
