// What a line rests on: the cheapest way to it from the givens and the lines before, where the rules that its reason names
// cost next to nothing. The same search that finds shortest proofs finds how big a gap is.
#pragma once
#include <optional>
#include <vector>

#include "prover/marking/ground.hpp"

namespace prover {

// An earlier line as the search may use it.
struct SaidBefore {
  int number = 0;               // of the line
  std::vector<Form> forms;
  bool shown = true;            // false: true perhaps, but with a gap before it; used when nothing else is as short
};

struct SupportQuestion {
  std::vector<Form> forms;            // what is to be supported
  std::vector<bool> named;            // by RuleId: rules that the reason names; may be empty
  std::vector<SaidBefore> lines;
  std::vector<bool> allowed;          // by RuleId
  bool only_named = false;            // no other theorem or definition
  bool definitions_too = false;       // of those not named, definitions all the same
  bool doubtful = false;              // some line may be wrong, or what is asked false
};

struct Support {
  std::vector<int> instances;         // of the ground, in an order in which premises come first
  std::vector<int> lines;             // numbers of the lines used
  std::vector<int> named;             // of the instances: those by a rule that the reason names
  std::vector<int> missing;           // those by other rules, in that order: nobody has cited them
  int missing_theorems = 0, missing_definitions = 0;
  bool premise_missing = false;       // a theorem is missing on whose fact another step rests: congruence before its parts
  bool only_givens = false;           // it is a sentence of the problem, or several
};

std::optional<Support> support(const Ground& ground, const SupportQuestion& question, const Budget& budget);

// A reader counts it: a theorem, a definition or a construction, not adding angles or what a word means.
bool is_cited(const Rule& rule);

}  // namespace prover
