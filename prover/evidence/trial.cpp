#include "prover/evidence/trial.hpp"

#include <algorithm>
#include <chrono>

#include "prover/verdict/answer_of.hpp"

namespace prover {

Budget for_a_trial(const Budget& budget) {
  Budget short_one = budget;
  const auto soon = Budget::Clock::now() + std::chrono::milliseconds(400);
  short_one.deadline = budget.deadline ? std::min(*budget.deadline, soon) : soon;
  return short_one;
}

Answer try_again(const std::vector<Statement>& statements, const AttemptOptions& options, const Budget& budget) {
  StageTimes times;
  double sketch_ms = 0;
  std::vector<Solved> solved;
  for (const Statement& statement : statements) solved.push_back(solve(statement, options, budget, times, sketch_ms));
  Answer answer;
  fill_answer(statements, solved, options, answer);
  return answer;
}

}  // namespace prover
