#include "prover/proof/assemble.hpp"

#include "tests/unit/proof/proved.hpp"

using namespace prover;
using proved::Proved;

namespace {

Form multiplied_out(const Proof& proof, const Combination& combination, std::size_t before) {
  Form sum;
  for (const Combination::Part& part : combination.parts) {
    REQUIRE(part.step >= 0);
    REQUIRE(static_cast<std::size_t>(part.step) < before);  // only what stands above
    const auto& conclusions = proof.steps[static_cast<std::size_t>(part.step)].instance.conclusions;
    REQUIRE(static_cast<std::size_t>(part.conclusion) < conclusions.size());
    CHECK_FALSE(part.multiplier.is_zero());
    sum.add(conclusions[static_cast<std::size_t>(part.conclusion)], part.multiplier);
  }
  return sum;
}

void check_exact(const Proof& proof) {
  for (std::size_t s = 0; s < proof.steps.size(); ++s) {
    const ProofStep& step = proof.steps[s];
    REQUIRE(step.premises.size() == step.instance.premises.size());
    for (std::size_t i = 0; i < step.premises.size(); ++i)
      CHECK(multiplied_out(proof, step.premises[i], s) == step.instance.premises[i]);
  }
  REQUIRE(proof.conclusion.size() == proof.goal.size());
  for (std::size_t i = 0; i < proof.goal.size(); ++i)
    CHECK(multiplied_out(proof, proof.conclusion[i], proof.steps.size()) == proof.goal[i]);
}

}  // namespace

TEST_CASE("every premise and the goal are exact sums of what stands before") {
  const std::string text =
      GENERATE(as<std::string>{}, proved::base_angles, proved::angle_sum,
               "triangle: KLM\ntriangle: KNM\nKL = KN\nLM = NM\nangle KLM = 70\nfind: angle KNM\n",
               "line: L, M, P in this order\ntriangle: KLM\nangle KLM = 2x\nangle LKM = 3x + 5\nangle KMP = "
               "105\nfind: x\n",
               "polygon: KLMN parallelogram\nangle KLM = 110\nfind: angle LMN\n");
  INFO(text);
  const Proved problem(text);
  check_exact(problem.goal().proof);
  CHECK(problem.goal().replay.accepted);
  CHECK(problem.goal().z3.answer == SecondOpinion::Answer::confirmed);
}

TEST_CASE("a proof that the givens exclude each other ends in an equation that cannot be") {
  const Proved problem("triangle: KLM\nangle KLM = 50\nangle LMK = 60\nangle MKL = 80\nfind: angle KLM\n");
  REQUIRE(problem.attempt.contradiction);
  const Proof& proof = problem.attempt.contradiction->proof;
  CHECK(proof.contradiction);
  for (std::size_t i = 0; i < proof.conclusion.size(); ++i) {
    const Form shown = multiplied_out(proof, proof.conclusion[i], proof.steps.size());
    if (proof.goal.empty()) {
      CHECK(shown.is_constant());
      CHECK_FALSE(shown.is_zero());
    } else {
      CHECK(shown == proof.goal[i]);
    }
  }
  CHECK(problem.attempt.contradiction->replay.accepted);
}
