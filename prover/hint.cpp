// From a problem to ladders: prove, find the proof to climb, ask about each of its steps.
#include "prover/hint.hpp"

#include <algorithm>

#include "prover/hints/worth.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

namespace {

// The statement and the goal that a proof belongs to: cases of the words are statements of their own.
const Statement& statement_of(const AnswerProof& proof, const std::vector<Statement>& statements) {
  for (const Statement& one : statements)
    if (!one.case_name.empty() && proof.case_name.starts_with(one.case_name)) return one;
  return statements.front();
}

const Goal* goal_of(const AnswerProof& proof, const Statement& statement) {
  const auto found = std::find_if(statement.goals.begin(), statement.goals.end(), [&](const Goal& g) { return g.text == proof.goal; });
  return found == statement.goals.end() ? nullptr : &*found;
}

}  // namespace

Hints hint(std::string_view text, const Catalogue& catalogue, const HintOptions& options) {
  Hints hints;
  ProveOptions prove_options = options.prove;
  const bool wants_ways = options.every_way || options.way || options.worth;
  if (wants_ways && !prove_options.ways) prove_options.ways = WaysOptions();
  hints.answer = prove(text, catalogue, prove_options);
  if (hints.answer.verdict != Verdict::proved || has_error(hints.answer.diagnostics)) return hints;

  const std::vector<Statement> statements = statements_of(parse_problem(text));
  // Of one claim in one case: its ways, or its one proof.
  std::size_t first = 0;
  while (first < hints.answer.proofs.size()) {
    std::vector<const AnswerProof*> group;
    const AnswerProof& leader = hints.answer.proofs[first];
    std::size_t end = first;
    while (end < hints.answer.proofs.size() && hints.answer.proofs[end].goal == leader.goal &&
           hints.answer.proofs[end].case_name == leader.case_name)
      ++end;
    for (std::size_t i = first; i < end; ++i)
      if (i == first || hints.answer.proofs[i].idea != hints.answer.proofs[i - 1].idea) group.push_back(&hints.answer.proofs[i]);
    first = end;
    const Statement& statement = statement_of(leader, statements);
    const Goal* goal = goal_of(leader, statement);
    if (!goal) continue;
    for (std::size_t w = 0; w < group.size(); ++w) {
      const int number = static_cast<int>(w) + 1;
      if (options.way ? *options.way != number : !options.every_way && number > 1) continue;
      const Climb climb{statement, *goal, hints.answer, *group[w], catalogue, prove_options.wording, {}};
      Ladder ladder = ladder_of(climb);
      if (wants_ways) {
        ladder.way = number;
        ladder.ways = static_cast<int>(group.size());
      }
      if (options.worth) count_open_ways(group, statement, ladder);
      hints.ladders.push_back(std::move(ladder));
    }
  }
  return hints;
}

}  // namespace prover
