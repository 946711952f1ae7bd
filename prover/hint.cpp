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
std::set<int> said_by(const std::vector<JudgedLine>& lines, const AnswerProof& way, ClaimReader& reader) {
  std::set<int> said;
  for (const AnswerStep& step : way.steps)
    for (const JudgedLine& line : lines)
      if (line.stated && (same_claim(step.claim, line.read_as, reader) || same_claim(step.relation, line.read_as, reader))) said.insert(step.n);
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

// The proofs of one claim in one case, one for each idea.
std::vector<std::vector<const AnswerProof*>> by_claim(const Answer& answer) {
  std::vector<std::vector<const AnswerProof*>> groups;
  const AnswerProof* last = nullptr;
  for (const AnswerProof& proof : answer.proofs) {
    const bool same = last && last->goal == proof.goal && last->case_name == proof.case_name;
    if (!same) groups.emplace_back();
    if (!same || proof.idea != last->idea) groups.back().push_back(&proof);
    last = &proof;
  }
  return groups;
}

bool is_climbable(const Answer& answer) { return answer.verdict == Verdict::proved && !has_error(answer.diagnostics); }

}  // namespace

Hints hint(std::string_view text, const Catalogue& catalogue, const HintOptions& options) {
  Hints hints;
  const ProblemText problem = parse_problem(text);
  const bool has_work = !options.done.empty() || std::any_of(problem.other_lines.begin(), problem.other_lines.end(),
                                                             [](const OtherLine& line) { return line.keyword == "work"; });
  const bool chooses_way = options.every_way || options.way;
  ProveOptions with_ways = options.prove;
  if ((chooses_way || options.worth) && !with_ways.ways) with_ways.ways = WaysOptions();

  if (has_work) {
    Judgement judged = mark(text, options.done, catalogue, options.prove);
    hints.lines = judged.lines;
    hints.complete = judged.complete;
    const Statement statement = statements_of(read_work(text, options.done).problem).front();  // with what the pupil drew
    std::optional<Ladder> ladder;
    if (!chooses_way && is_climbable(judged.problem)) ladder = ladder_from(judged, statement, catalogue, options.prove.wording);
    hints.answer = std::move(judged.problem);
    if (!is_climbable(hints.answer)) return hints;
    if (ladder) {
      hints.ladders.push_back(std::move(*ladder));
      if (options.worth) {
        const Answer ways = prove(text, catalogue, with_ways);
        if (const auto groups = by_claim(ways); groups.size() == 1) {
          ClaimReader reader(statement, ways.figures);
          count_open_ways(groups[0], catalogue, reader, hints.ladders[0]);
        }
      }
      return hints;
    }
  }
  if (!has_work || chooses_way || options.worth) hints.answer = prove(text, catalogue, with_ways);
  if (!is_climbable(hints.answer)) return hints;

  const std::vector<Statement> statements = statements_of(problem);
  for (const std::vector<const AnswerProof*>& group : by_claim(hints.answer)) {
    const Statement& statement = statement_of(*group.front(), statements);
    const Goal* goal = goal_of(*group.front(), statement);
    if (!goal) continue;
    ClaimReader reader(statement, hints.answer.figures);
    for (std::size_t w = 0; w < group.size(); ++w) {
      const int number = static_cast<int>(w) + 1;
      if (options.way ? *options.way != number : !options.every_way && number > 1) continue;
      Ladder ladder = ladder_of({statement, *goal, hints.answer, *group[w], catalogue, options.prove.wording,
                                 said_by(hints.lines, *group[w], reader), hints.lines});
      if (chooses_way) ladder.way = number;
      if (with_ways.ways) ladder.ways = static_cast<int>(group.size());
      if (options.worth) count_open_ways(group, catalogue, reader, ladder);
      hints.ladders.push_back(std::move(ladder));
    }
  }
  return hints;
}

}  // namespace prover
