// From a problem to ladders: prove, find the proof to climb, ask about each of its steps.
#include "prover/hint.hpp"

#include <algorithm>

#include "prover/hints/worth.hpp"
#include "prover/language/work.hpp"
#include "prover/mark.hpp"
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

// Steps of a way that the pupil's lines say, told by what they speak of: for ways that the judge has not looked at.
std::set<int> said_by(const std::vector<JudgedLine>& lines, const AnswerProof& way, const Names& names) {
  std::set<int> said;
  for (const AnswerStep& step : way.steps)
    for (const JudgedLine& line : lines)
      if (line.stated && (same_claim(step.claim, line.read_as, names) || same_claim(step.relation, line.read_as, names))) said.insert(step.n);
  return said;
}

std::set<int> credited(const std::vector<JudgedLine>& lines) {
  std::set<int> steps;
  for (const JudgedLine& line : lines) steps.insert(line.steps.begin(), line.steps.end());
  return steps;
}

// The ladder that goes on from the pupil's work: along the way that the judge has found for it.
std::optional<Ladder> ladder_from(const Judgement& judged, const Statement& statement, const Catalogue& catalogue, Register wording) {
  if (!judged.way) return std::nullopt;
  const Goal* goal = goal_of(*judged.way, statement);
  if (!goal) return std::nullopt;
  Climb climb{statement, *goal, judged.problem, *judged.way, catalogue, wording, credited(judged.lines), judged.lines};
  if (judged.complete)
    for (const AnswerStep& step : judged.way->steps) climb.done.insert(step.n);
  return ladder_of(climb);
}

}  // namespace

Hints hint(std::string_view text, const Catalogue& catalogue, const HintOptions& options) {
  Hints hints;
  const ProblemText problem = parse_problem(text);
  const bool has_work = !options.done.empty() || std::any_of(problem.other_lines.begin(), problem.other_lines.end(),
                                                             [](const OtherLine& line) { return line.keyword == "work"; });
  const bool wants_ways = options.every_way || options.way || options.worth;
  std::vector<Statement> statements;
  if (has_work) {
    Judgement judged = mark(text, options.done, catalogue, options.prove);
    hints.answer = judged.problem;
    hints.lines = judged.lines;
    hints.complete = judged.complete;
    if (hints.answer.verdict != Verdict::proved || has_error(hints.answer.diagnostics)) return hints;
    statements = statements_of(read_work(text, options.done).problem);  // with what the pupil drew
    if (!wants_ways)
      if (auto ladder = ladder_from(judged, statements.front(), catalogue, options.prove.wording)) {
        hints.ladders.push_back(std::move(*ladder));
        return hints;
      }
  }
  if (!has_work || wants_ways) {
    ProveOptions prove_options = options.prove;
    if (wants_ways && !prove_options.ways) prove_options.ways = WaysOptions();
    hints.answer = prove(text, catalogue, prove_options);
    if (hints.answer.verdict != Verdict::proved || has_error(hints.answer.diagnostics)) return hints;
    if (!has_work) statements = statements_of(problem);
  }

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
      const Climb climb{statement, *goal, hints.answer, *group[w], catalogue, options.prove.wording,
                        said_by(hints.lines, *group[w], statement.names), hints.lines};
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
