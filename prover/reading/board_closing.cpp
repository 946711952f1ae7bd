// How the board ends: with the line that is the answer already, or one that puts together what leads to it.
#include <algorithm>
#include <set>

#include "prover/reading/board.hpp"
#include "prover/reading/goal_rows.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/reading/worked_out.hpp"

namespace prover {

namespace {

// For the last line, where substituting is what a reader expects: three sums, or one sum and what is put into it.
bool is_too_much_at_once(const std::vector<Said::Part>& parts) {
  std::set<int> open;
  for (const Said::Part& p : parts)
    if (p.line > 0 && !p.plain) open.insert(p.line);
  return open.size() + lines_of(parts).size() > 2 * kAtOnce;
}

}  // namespace

// The answer line, unless the last line is the answer already.
void Board::close() {
  const Proof& proof = scene_.proof;
  if (!proof.contradiction)
    for (const Form& g : proof.goal) {
      const auto parts = said_.parts(g);
      if (parts && (proof.goal.size() > 1 ? lines_of(*parts).size() > 1 : is_too_much_at_once(*parts))) work_out(*parts, g);
    }
  const bool nothing_said = reading_.lines.empty();
  if (!nothing_said && proof.goal.size() == 1 && !proof.contradiction && reading_.lines.back().rule == "substitution" &&
      last_.size() == 1 && last_[0] == proof.goal[0]) {
    reading_.lines.back().closing = true;
    reading_.lines.back().rows = goal_rows(scene_.goal, proof.goal, known_, said_.given(), names_, scene_.statement.names);
    return;
  }
  // The last row says it already: "so ∠GFH + ∠GEH = 180°".
  if (!nothing_said && proof.goal.size() == 1 && scene_.goal.kind == GoalKind::prove && scene_.goal.claims.size() == 1 &&
      scene_.goal.claims[0].predicate == Predicate::relation && reading_.lines.back().rows.back().starts_with("so ") &&
      std::any_of(last_told_.begin(), last_told_.end(), [&](const Form& f) { return f.normalised() == proof.goal[0].normalised(); })) {
    reading_.lines.back().closing = true;
    reading_.lines.back().rows.back() = "so " + describe(scene_.goal.claims[0], scene_.statement.names);
    return;
  }
  if (!nothing_said && proof.goal.size() == 1 && goal_is_last()) {
    ReadingLine& last = reading_.lines.back();
    last.closing = true;
    const Phrase* claim = scene_.goal.claims.size() == 1 ? &scene_.goal.claims[0] : nullptr;
    // As the question puts it, not the other way round.
    if (scene_.goal.kind == GoalKind::prove && claim && claim->predicate == Predicate::relation && last.rows.size() == 1 &&
        proof.goal[0].terms.size() > 1)
      last.rows = {describe(*claim, scene_.statement.names)};
    return;
  }
  ReadingLine line;
  line.closing = true;
  line.rule = "substitution";
  line.reason = nothing_said ? "given" : "substituting";
  std::set<int> uses;
  std::vector<std::string> givens;
  for (const Form& g : proof.goal) rest_on(g, uses, &givens);
  std::erase_if(givens, [&](const std::string& text) {
    return std::any_of(reading_.lines.begin(), reading_.lines.end(),
                       [&](const ReadingLine& l) { return l.reason.find(text) != std::string::npos; });
  });
  line.uses.assign(uses.begin(), uses.end());
  line.rows = goal_rows(scene_.goal, proof.goal, known_, said_.given(), names_, scene_.statement.names);
  if (proof.contradiction && nothing_said) {
    ReadingLine givens_alone;
    givens_alone.rule = "given";
    givens_alone.reason = "given";
    for (const int g : reading_.givens_used) {
      const std::string& text = scene_.statement.givens[static_cast<std::size_t>(g)].text;
      const bool last = g == reading_.givens_used.back();
      givens_alone.rows.push_back(givens_alone.rows.empty() ? text : (last ? "but " : "and ") + text);
    }
    if (!givens_alone.rows.empty()) {
      reading_.lines.push_back(std::move(givens_alone));
      line.uses = {1};
    }
  }
  if (proof.contradiction) {
    line.rows = {"The givens cannot all hold."};
    line.reason = reading_.lines.size() > 1 ? "the lines above exclude each other" : "the line above cannot hold";
    line.rule = "contradiction";
  }
  if (!proof.contradiction && scene_.goal.kind == GoalKind::prove && all_shown()) line.reason = "as shown";
  if (!givens.empty() && !nothing_said && !proof.contradiction) line.reason += ", given " + enumerated(givens);
  reading_.lines.push_back(std::move(line));
}

// Each part of the goal is the claim of some line.
bool Board::all_shown() const {
  return std::all_of(scene_.proof.goal.begin(), scene_.proof.goal.end(), [&](const Form& g) {
    const auto parts = said_.parts(g);
    return parts && parts->size() == 1 && (*parts)[0].line > 0;
  });
}

bool Board::goal_is_last() const {
  const Form goal = scene_.proof.goal[0].normalised();
  if (scene_.goal.kind == GoalKind::find && goal.terms.size() == 1 && !is_plain_goal()) return false;
  return std::any_of(last_.begin(), last_.end(), [&](const Form& f) { return f.normalised() == goal; }) && last_shows(goal);
}

// A quantity asked for as it stands, not a sum or a reflex angle.
bool Board::is_plain_goal() const {
  const auto& terms = scene_.goal.claims[0].relation.expressions[0].terms;
  if (terms.size() != 1 || !terms[0].coefficient.is_one()) return false;
  const auto* angle = std::get_if<Angle>(&terms[0].quantity);
  return !angle || (!angle->reflex && !angle->exterior);
}

bool Board::last_shows(const Form& goal) const {
  const auto& rows = reading_.lines.back().rows;
  if (rows.empty()) return false;
  if (scene_.goal.kind == GoalKind::prove) {
    if (scene_.goal.claims.size() != 1) return false;
    if (rows.size() == 1) return true;  // the claim itself, in the words of the line
  }
  if (goal.terms.size() != 1) return false;
  const std::string name = names_.of(goal.terms[0].first) + " = ";
  return rows.front().starts_with(name) || rows.back().starts_with(name) || rows.back().starts_with("so " + name);
}

}  // namespace prover
