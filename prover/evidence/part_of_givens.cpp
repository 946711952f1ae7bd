#include "prover/evidence/part_of_givens.hpp"

namespace prover {

Statement with_only(const Statement& statement, const std::vector<bool>& kept) {
  Statement part = statement;
  part.givens.clear();
  std::vector<std::size_t> place(kept.size());
  for (std::size_t g = 0; g < kept.size(); ++g) {
    if (!kept[g]) continue;
    place[g] = part.givens.size();
    part.givens.push_back(statement.givens[g]);
  }
  for (AddedSentence& added : part.added) {
    std::vector<std::size_t> left;
    for (const std::size_t g : added.givens)
      if (kept[g]) left.push_back(place[g]);
    added.givens = std::move(left);
  }
  return part;
}

Statements with_only(const Statements& statements, const std::vector<bool>& kept) {
  Statements parts;
  for (const Statement& statement : statements) parts.push_back(with_only(statement, kept));
  return parts;
}

Statements without(const Statements& statements, std::size_t given) {
  std::vector<bool> kept(statements[0].givens.size(), true);
  kept[given] = false;
  return with_only(statements, kept);
}

Statements with_instead(const Statements& statements, std::size_t given, const Phrase& phrase) {
  Statements changed = statements;
  for (Statement& statement : changed) {
    statement.givens[given].phrase = phrase;
    statement.givens[given].text = describe(phrase, statement.names);
  }
  return changed;
}

Drawn draw(const Statements& statements, int starts, const Budget& budget, std::uint64_t seed) {
  Drawn result;
  SketchOptions options;
  options.wanted = 1;
  options.starts = starts;
  options.seed = seed;
  options.seek_arrangements = false;
  for (std::size_t s = 0; s < statements.size(); ++s) {
    SketchReport report = sketch(phrases_of(statements[s]), statements[s].names.points.size(), budget, options);
    result.tries += report.starts_tried;
    if (!report.sketches.empty()) {
      result.figure = std::move(report.sketches[0]);
      result.statement = s;
      return result;
    }
    if (report.stop != StopReason::saturated) result.stop = report.stop;
  }
  return result;
}

}  // namespace prover
