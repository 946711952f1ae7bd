#include "prover/mark.hpp"

#include "prover/construct/added_lines.hpp"
#include "prover/marking/judge.hpp"
#include "prover/walk.hpp"

namespace prover {

namespace {

// What the pupil draws is examined like an added line; what cannot be drawn is left out, and the rest is judged.
struct Drawn {
  ProblemText text;                  // with what can be drawn
  std::vector<std::string> refused;  // by line
  std::vector<bool> points;          // by point: of refused sentences only
  bool more = false;                 // something was drawn
};

Drawn drawn_by_pupil(const PupilWork& work, std::size_t own_points, const Budget& budget) {
  Drawn result{work.problem, std::vector<std::string>(work.lines.size()), std::vector<bool>(work.problem.names.points.size(), false), false};
  std::vector<bool> by_pupil(work.problem.added.size(), false);
  for (const WorkLine& line : work.lines)
    for (const std::size_t d : line.drawn) by_pupil[d] = true;
  std::vector<Sentence> kept;
  for (std::size_t d = 0; d < by_pupil.size(); ++d)
    if (!by_pupil[d]) kept.push_back(work.problem.added[d]);
  for (std::size_t i = 0; i < work.lines.size(); ++i)
    for (const std::size_t d : work.lines[i].drawn) {
      kept.push_back(work.problem.added[d]);
      result.text.added = kept;
      const AddedLines examined = examine_added_lines(statements_of(result.text)[0], budget.share(0.2));
      if (examined.objection.empty()) {
        result.more = true;
        continue;
      }
      result.refused[i] = "This cannot be drawn so: " + examined.objection + ".";
      kept.pop_back();
    }
  result.text.added = kept;
  // A point that no sentence places any more.
  for (std::size_t p = own_points; p < result.points.size(); ++p) {
    const auto speaks = [&](const Sentence& sentence) {
      for (const Phrase& phrase : sentence.phrases)
        for (const PointId point : phrase.points)
          if (point.index() == p) return true;
      return false;
    };
    result.points[p] = std::none_of(kept.begin(), kept.end(), speaks);
  }
  return result;
}

}  // namespace

Judgement mark(std::string_view problem, std::string_view further_work, const Catalogue& catalogue, const ProveOptions& options) {
  Judgement judgement;
  Walked way = walk(problem, catalogue, options);
  judgement.problem = std::move(way.answer);
  if (way.ended) return judgement;
  for (AnswerProof& proof : judgement.problem.proofs) proof.set_aside = way.set_aside;
  const PupilWork work = read_work(problem, further_work);
  Drawn drawn = drawn_by_pupil(work, way.text.names.points.size(), options.budget);
  Statement statement = drawn.more || work.problem.names.points.size() != way.text.names.points.size()
                            ? statements_of(drawn.text)[0]
                            : way.statements[0];
  const std::size_t goals = statement.goals.size();
  for (const WorkLine& line : work.lines) {
    Goal said;
    said.kind = GoalKind::prove;
    said.claims = line.claims;
    if (!line.claims.empty()) statement.goals.push_back(std::move(said));
  }
  // A claim that merely states a theorem is not shown by citing it, even where the class has no other way.
  std::vector<std::string> set_aside = way.set_aside;
  if (set_aside.empty() && !way.states.empty()) {
    set_aside = {way.states};
    take_away(resting_on(catalogue, *catalogue.find(way.states)), catalogue, way.options.allowed);
  }
  Grounds grounds(statement, way.solved[0], drawn.more, way.options, options.budget);
  judge({work, statement, goals, std::move(drawn.refused), std::move(drawn.points), std::move(set_aside)}, grounds, way.options, judgement);
  return judgement;
}

}  // namespace prover
