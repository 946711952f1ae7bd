// The search for ideas: sets of carrying facts, minimal, each named once.
#pragma once
#include <cstdint>
#include <set>
#include <string>
#include <vector>

#include "prover/search/lightest_set.hpp"
#include "prover/ways/idea.hpp"

namespace prover {

struct Idea {
  std::vector<int> facts;
  std::vector<std::vector<int>> others;  // further sets of facts that have the idea's name: mirrored, composed, in another order
  std::int64_t weight = 0;  // of the facts alone: no proof of the idea is lighter
};

struct IdeasFound {
  std::vector<Idea> ideas;             // by weight; among equals as found
  std::int64_t complete_below = 0;     // every idea whose facts weigh less is among them
  StopReason stop = StopReason::none;  // `saturated` when there are no others
};

// `best`: the facts of the best proof known; its idea is always among them. Ideas heavier than `heaviest` are not sought.
// `wanted`: kinds of facts (`CarryingFact::kind`) that are sought first, however dear the ideas are that they carry.
IdeasFound explore(const CarryingProblem& carrying, std::vector<int> best, IdeaNames& names, std::int64_t heaviest,
                   const std::set<std::string>& wanted, const Budget& budget);

}  // namespace prover
