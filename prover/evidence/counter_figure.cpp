#include "prover/evidence/counter_figure.hpp"

#include <optional>

#include "prover/evidence/failing.hpp"
#include "prover/motion/counter_figure.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

void add_counter_figure(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const Budget& budget,
                        Answer& answer) {
  std::optional<motion::CounterFigure> best;
  const Statement* statement = nullptr;
  const Goal* goal = nullptr;
  const Phrase* claim = nullptr;
  for (std::size_t s = 0; s < statements.size(); ++s)
    for (const Goal& one : statements[s].goals) {
      if (one.kind != GoalKind::prove) continue;
      for (const Phrase& phrase : one.claims) {
        auto figure = motion::counter_figure(phrases_of(statements[s]), solved[s].figures.sketches, phrase, budget.share(0.5));
        if (!figure || (best && figure->margin <= best->margin)) continue;
        best = std::move(figure);
        statement = &statements[s];
        goal = &one;
        claim = &phrase;
      }
    }
  if (!best) return;
  AnswerFigure shown = answer_figure("breaks the claim", best->figure, *statement);
  shown.value.reset();
  shown.exists = best->exists;
  shown.words = how_it_fails(*claim, best->figure, statement->names);
  answer.figures = {std::move(shown)};
  const std::string which = goal->claims.size() > 1 || statement->goals.size() > 1
                                ? "The claim " + describe(*claim, statement->names) + " is false"
                                : "The claim is false";
  answer.summary = which + ": a figure meets every given and breaks it" +
                   (answer.figures[0].words.empty() ? "" : ": " + answer.figures[0].words) +
                   (best->exists ? " (measured; that such a figure exists is proved by intervals)." : " (measured).");
}

}  // namespace prover
