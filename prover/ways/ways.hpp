// Other ways to a goal that an attempt has reached: its ideas from the lightest on, each with its proofs. First the
// carrying facts of the best proof are forbidden in turn – a proof without them is different for sure –, then ideas are
// enumerated by weight until a limit or until there are no others.
#pragma once
#include <cstdint>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include "prover/verdict/attempt.hpp"

namespace prover {

struct WaysLimits {
  Budget budget;
  std::size_t most = 6;             // ideas shown
  std::size_t most_alike = 2;       // of ideas that cite the same theorems, at other places
  std::size_t most_steps = 0;       // of a proof; 0: as many as it takes
  std::vector<RuleId> with;         // every proof shown cites all of these, or one of their families each
  // Only ideas that begin by joining two points, and only where that saves a theorem: those that cite all kinds of theorem of
  // one of these ideas, which draw no line, draw theirs for nothing.
  bool only_with_joined_points = false;
  std::vector<std::set<std::string>> without_lines;
  std::int64_t line_and_theorem = 0;  // by how much they may be heavier than the best proof
  // Whether a proof that both checks have confirmed may be shown: what it reads from the figure may need a look.
  std::function<bool(const CheckedProof&)> admissible;
};

struct WayProof {
  CheckedProof checked;
  std::size_t steps = 0;  // theorems, definitions and lines cited; adding neighbouring parts is free
  bool in_full = false;   // worth a page of its own: in what a title names it is not just another one with additions
};

struct Way {
  bool joins_points = false;
  std::vector<WayProof> proofs;  // the lightest first, then its variants: those in full, then the others, by weight
};

struct WaysFound {
  std::vector<Way> ways;                // by the weight of the first proof
  std::int64_t complete_below = 0;      // every idea that has a lighter proof is among `ways`, or counted in `elsewhere`
  StopReason stop = StopReason::none;   // why there may be others; `saturated` when there are none at all
  std::size_t more = 0;                 // ideas found beyond `most`
  std::size_t elsewhere = 0;            // ideas found beyond `most_alike`, lighter than the last one shown
  std::size_t left_out = 0;             // ideas found that have no proof as asked for (`with`, `most_steps`)
  std::vector<std::set<std::string>> kinds;  // of every idea found: the kinds of its theorems, lines drawn apart
  bool checks_disagree = false;         // a proof was refused by one of the checks, and is not among `ways`
};

WaysFound ways_to(std::size_t goal, const Statement& statement, const Attempt& attempt, const AttemptOptions& options,
                  const WaysLimits& limits, StageTimes& times);

}  // namespace prover
