#include "prover/evidence/evidence.hpp"

#include "prover/evidence/answer_book.hpp"
#include "prover/evidence/contribution.hpp"

namespace prover {

namespace {

// The directions of the lines decide the goal, although the rules do not reach it.
void add_forced_by_directions(const std::vector<Solved>& solved, Answer& answer) {
  for (const Solved& one : solved)
    for (const SolvedCase& c : one.cases)
      for (const std::string& forced : c.attempt.forced_by_directions) {
        if (forced.empty() || !answer.unlock.empty()) continue;
        answer.unlock.push_back("The directions of the lines alone force " +
                                (forced == "true" ? std::string("the claim") : "the value " + forced) +
                                ": a rule or an auxiliary line is missing, not a given.");
      }
}

}  // namespace

void add_evidence(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                  const AttemptOptions& options, bool in_full, const std::vector<std::string>& answer_book,
                  const Budget& budget, Answer& answer) {
  if (answer.verdict == Verdict::beyond_rules || answer.verdict == Verdict::unknown) add_forced_by_directions(solved, answer);
  if (in_full) answer.contributions = contributions(statements, options, budget.share(0.5), answer);
  answer.answer_book = check_answer_book(answer_book, statements, budget, answer);  // reads what stands above
}

}  // namespace prover
