// Ways to an answer, written by hand as the prover would lay them out, for the tests of schemes and marks.
#pragma once
#include "prover/verdict/answer.hpp"

namespace prover {

inline AnswerStep way_step(int n, std::string claim, std::string rule, std::string reason, std::vector<int> uses = {}, bool closing = false) {
  AnswerStep step;
  step.n = n;
  step.claim = std::move(claim);
  step.rule = std::move(rule);
  step.reason = std::move(reason);
  step.uses = std::move(uses);
  step.closing = closing;
  return step;
}

inline AnswerProof way_of(std::vector<AnswerStep> steps) {
  AnswerProof way;
  way.steps = std::move(steps);
  return way;
}

// KL ∥ PQ, KL = KQ, ∠PQK = 52°: find ∠KLQ.
inline AnswerProof laths() {
  return way_of({way_step(1, "∠LKQ = ∠PQK = 52°", "alternate-interior-angles", "alternate angles, KL ∥ PQ, cut by KQ"),
                 way_step(2, "∠KLQ = ∠KQL", "isosceles-base-angles", "angles opposite equal sides, KL = KQ, triangle KLQ"),
                 way_step(3, "∠KLQ = (180° − 52°) ÷ 2 = 64°", "triangle-angle-sum", "angle sum of triangle KLQ", {1, 2}, true)});
}

inline AnswerProof one_sum() {
  return way_of({way_step(1, "∠LKM = 180° − 50° − 60° = 70°", "triangle-angle-sum", "angle sum of triangle KLM", {}, true)});
}

// PQ ∥ LM through K: prove the angle sum of triangle KLM.
inline AnswerProof angle_sum() {
  return way_of({way_step(1, "∠PKL + ∠LKM + ∠MKQ = 180°", "angles-on-a-straight-line", "angles on the straight line PKQ"),
                 way_step(2, "∠PKL = ∠KLM", "alternate-interior-angles", "alternate angles, PQ ∥ LM, cut by KL"),
                 way_step(3, "∠MKQ = ∠KML", "alternate-interior-angles", "alternate angles, PQ ∥ LM, cut by KM"),
                 way_step(4, "∠KLM + ∠LKM + ∠KML = 180°", "substitution", "substituting", {1, 2, 3}, true)});
}

}  // namespace prover
