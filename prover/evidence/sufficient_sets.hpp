// Every smallest set of elements that has a property which more elements never take away: sets of givens that settle an
// answer. Only the question "has this set it?" is asked, and each question may be dear (a problem solved anew), so none
// is asked whose answer follows from earlier ones.
//
// A set without the property misses an element of every smallest set; so the largest sets without it are the
// complements of the smallest sets that meet all of them. Take the smallest sets known, leave out a smallest set that
// meets each of them, and ask about the rest: a "yes" holds a further smallest set, and when all answers are "no" there
// is none. (Minimal unsatisfiable subsets are enumerated so: Bailey and Stuckey, PADL 2005, cited from memory.)
#pragma once
#include <cstddef>
#include <functional>
#include <vector>

#include "prover/base/budget.hpp"

namespace prover {

using ElementSet = std::vector<bool>;  // by element

struct SufficientSets {
  std::vector<std::vector<int>> sets;  // each without a member to spare; the smallest first, then by their members
  StopReason stop = StopReason::none;  // `saturated`: these are all; else the limit that ended the search
  std::size_t questions = 0;
};

// `kept`: elements that stand in every set and are never left out. No sets when not even all elements have the property.
SufficientSets sufficient_sets(const ElementSet& kept, const std::function<bool(const ElementSet&)>& suffices,
                               std::size_t most_questions, const Budget& budget);

}  // namespace prover
