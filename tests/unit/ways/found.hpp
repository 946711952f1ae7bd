// A problem whose positions the text gives, and the ways to its first goal.
#pragma once
#include "tests/unit/proof/proved.hpp"

#include "prover/ways/symmetry.hpp"
#include "prover/ways/ways.hpp"

namespace proved {

struct Found : Proved {
  explicit Found(const std::string& text, WaysLimits limits = {}) : Proved(text) {
    goal();
    const AttemptOptions options{standard_catalogue(), taught_rules(standard_catalogue(), parse_problem(text).taught).allowed};
    StageTimes times;
    found = ways_to(0, statement, attempt, options, limits, times);
  }
  // Titles of the first proof of each way, then of its variants.
  std::vector<std::vector<std::string>> titles() const {
    std::vector<std::vector<std::string>> all;
    for (const Way& way : found.ways) {
      all.emplace_back();
      for (const WayProof& proof : way.proofs) all.back().push_back(proof.checked.reading.title);
    }
    return all;
  }

  WaysFound found;
};

inline std::size_t symmetry_count(const std::string& text) {
  const Proved problem(text);
  Workings& workings = *problem.attempt.workings;
  return symmetries(problem.statement, workings.goals.at(0).forms, workings.arrangement, workings.unknowns).size();
}

}  // namespace proved
