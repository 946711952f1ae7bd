// A problem whose positions the text gives, proved with the standard rules or those taught in it; nothing is
// drawn.
#pragma once
#include <catch2/catch.hpp>
#include <string>

#include "prover/verdict/attempt.hpp"

namespace proved {

using namespace prover;

struct Proved {
  explicit Proved(const std::string& text) {
    const ProblemText problem = parse_problem(text);
    for (const Diagnostic& mistake : problem.diagnostics) FAIL_CHECK(render(mistake, "problem", text));
    statement = statements_of(problem).at(0);
    const AttemptOptions options{standard_catalogue(),
                                 taught_rules(standard_catalogue(), problem.taught).allowed};
    StageTimes times;
    attempt = prover::attempt(statement, {}, options, Budget{}, times);
  }
  const CheckedProof& goal(std::size_t i = 0) const {
    REQUIRE(i < attempt.goals.size());
    REQUIRE(attempt.goals[i]);
    return *attempt.goals[i];
  }

  Statement statement;
  Attempt attempt;
};

// Two problems of the classroom notes, with laths nailed into a trellis.
inline const char* const base_angles =
    "parallel: KL, PQ\nsides: L and P on opposite sides of KQ\ntriangle: KLQ\nKL = KQ\nangle PQK = 52\n"
    "taught: alternate-interior-angles, isosceles-base-angles, triangle-angle-sum\nfind: angle KLQ\n";
inline const char* const angle_sum =
    "triangle: KLM\nline: P, K, Q in this order\nparallel: PQ, LM\nsides: P and L on the same side of KM\n"
    "sides: P and M on opposite sides of KL\nsides: Q and L on opposite sides of KM\n"
    "taught: alternate-interior-angles, angles-on-a-straight-line\n"
    "prove: angle KLM + angle LKM + angle KML = 180\n";

}  // namespace proved
