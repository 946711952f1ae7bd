#include "prover/evidence/flat.hpp"

#include "prover/reading/number_text.hpp"
#include "prover/sketch/flat.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

std::string words(const FlatFigure& flat, const Names& names) {
  std::vector<std::string> parts;
  for (const auto& [a, b] : flat.together) parts.push_back(names.of(a) + " and " + names.of(b) + " fall together");
  if (flat.together.empty() && !flat.on_a_line.empty()) {
    const auto& [a, b, c] = flat.on_a_line.front();
    parts.push_back(names.of(a) + ", " + names.of(b) + " and " + names.of(c) + " stand on one line");
  }
  if (parts.size() > 2) parts.resize(2);
  return enumerated(parts);
}

}  // namespace

void add_flat_figure(const std::vector<Statement>& statements, const std::vector<Solved>& solved, const Budget& budget,
                     Answer& answer) {
  if (answer.verdict != Verdict::unknown && answer.verdict != Verdict::contradictory) return;
  if (!answer.figures.empty() || !answer.proofs.empty()) return;
  for (const Solved& one : solved)
    if (!one.figures.sketches.empty()) return;
  for (const Statement& statement : statements) {
    const auto flat = flat_figure(phrases_of(statement), statement.names.points.size(), budget.share(0.3));
    if (!flat) continue;
    AnswerFigure shown = answer_figure("flat", flat->figure, statement);
    shown.words = words(*flat, statement.names);
    answer.summary += " The one that came nearest is flat, as far as can be measured: in it " + shown.words + ".";
    answer.figures.push_back(std::move(shown));
    return;
  }
}

}  // namespace prover
