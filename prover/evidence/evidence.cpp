#include "prover/evidence/evidence.hpp"

#include "prover/evidence/add_conflict.hpp"
#include "prover/evidence/answer_book.hpp"
#include "prover/evidence/certificates.hpp"
#include "prover/evidence/contribution.hpp"
#include "prover/evidence/counter_figure.hpp"
#include "prover/evidence/flat.hpp"
#include "prover/evidence/plausible.hpp"
#include "prover/evidence/selecting.hpp"
#include "prover/evidence/superfluous.hpp"
#include "prover/evidence/undetermined.hpp"
#include "prover/evidence/unlock.hpp"

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

// Which givens each proof stands on, those about positions among them; then which are too many.
void add_superfluous(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                     const AttemptOptions& options, const Budget& budget, Answer& answer) {
  std::size_t next = 0;
  for (std::size_t g = 0; g < statements[0].goals.size(); ++g)
    for (std::size_t s = 0; s < statements.size(); ++s)
      for (const SolvedCase& one : solved[s].cases) {
        const Statement& statement = statements[s];
        if (next >= answer.proofs.size() || g >= one.attempt.goals.size() || !one.attempt.goals[g]) return;
        AnswerProof& proof = answer.proofs[next++];
        proof.givens_used.clear();
        for (const int i : sentences_read(*one.attempt.goals[g], statement, statement.goals[g], one, options))
          proof.givens_used.push_back(statement.givens[static_cast<std::size_t>(i)].text);
      }
  answer.superfluous = superfluous_givens(statements, solved, options, budget);
}

std::optional<AnswerPlausible> plausible_of(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                                            const AttemptOptions& options, const Budget& budget) {
  for (std::size_t s = 0; s < statements.size(); ++s)
    if (auto found = plausible_argument(statements[s], solved[s], options, budget)) return found;
  return std::nullopt;
}

}  // namespace

void add_evidence(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                  const AttemptOptions& options, bool in_full, const std::vector<std::string>& answer_book,
                  const Budget& budget, Answer& answer) {
  add_conflict(statements, solved, options, budget, answer);
  add_flat_figure(statements, solved, budget.share(0.3), answer);
  if (answer.verdict == Verdict::beyond_rules || answer.verdict == Verdict::unknown) add_forced_by_directions(solved, answer);
  if (answer.verdict == Verdict::false_claim) answer.plausible = plausible_of(statements, solved, options, budget.share(0.3));
  if (answer.verdict == Verdict::depends_on_figure) select_cases(statements, solved, options, budget.share(0.5), answer);
  if (answer.verdict == Verdict::beyond_rules) add_certificates(statements, solved, options, budget.share(0.5), answer);
  add_unlock(statements, solved, options, in_full, budget.share(0.7), answer);
  if (answer.verdict == Verdict::false_claim) add_counter_figure(statements, solved, budget.share(0.3), answer);
  if (answer.verdict == Verdict::undetermined) add_undetermined(statements, solved, options, budget.share(0.5), answer);
  if (in_full) answer.contributions = contributions(statements, options, budget.share(0.5), answer);
  if (in_full && answer.verdict == Verdict::proved) add_superfluous(statements, solved, options, budget, answer);
  answer.answer_book = check_answer_book(answer_book, statements, options, budget, answer);  // reads what stands above
}

}  // namespace prover
