// Steps that are alike: the second one says "similarly" and only what differs. "alternate angles, PQ ∥ LM, cut by KM" under
// "alternate angles, PQ ∥ LM, cut by KL" is "similarly, cut by KM": the places that differ are still named. Reasons of a
// few words stay as they are, since an examiner wants them in full; and JSON keeps every reason whole.
#pragma once
#include <string>

#include "prover/verdict/answer.hpp"

namespace frontend {

// The reason of `step` as it is printed right after `before`.
std::string reason_after(const prover::AnswerStep& before, const prover::AnswerStep& step);

}  // namespace frontend
