// Why one might believe a false claim: the shortest argument to it in which a rule is used without one of its conditions
// ("two sides and an angle that is not between them"), and the step at which it goes wrong. It is no proof: it goes
// through none of the checks, and the checker would refuse it.
#pragma once
#include <optional>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// Of the first claim that some figure breaks. One kind of mistake an argument; nothing when none of the known ones leads
// there with what may be cited. A mistake is made only by a class that has been taught the rule it is taken for.
std::optional<AnswerPlausible> plausible_argument(const Statement& statement, const Solved& solved, const AttemptOptions& options,
                                                  const Budget& budget);

}  // namespace prover
