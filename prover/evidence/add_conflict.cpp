#include "prover/evidence/add_conflict.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "prover/evidence/conflict.hpp"
#include "prover/language/phrase_points.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

// "∠KLM = 44°, not 54°"
std::string not_that(const std::string& instead, const std::string& given) {
  constexpr std::string_view equals = " = ";
  const auto here = given.rfind(equals);
  if (here != std::string::npos && instead.compare(0, here + equals.size(), given, 0, here + equals.size()) == 0)
    return instead + ", not " + given.substr(here + equals.size());
  return instead + " instead of " + given;
}

bool of_angles(const Phrase& phrase) {
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (std::holds_alternative<Angle>(term.quantity)) return true;
  return false;
}

std::string decimal(double value) {
  std::string text = fmt::format("{:.2f}", value);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

// "any angle below about 37°"
std::string any_in(const Range& range, bool degrees) {
  const std::string what = degrees ? "any angle" : "any number", unit = degrees ? "°" : "";
  const auto end = [&](double value) {
    const double whole = std::round(value);
    const bool clearly_whole = std::fabs(value - whole) < (degrees ? 0.05 : 1e-3);
    return (clearly_whole ? fmt::format("{:.0f}", whole) : "about " + decimal(value)) + unit;
  };
  if (range.low && range.high) return fmt::format("{} between {} and {}", what, end(*range.low), end(*range.high));
  if (range.low) return fmt::format("{} above {}", what, end(*range.low));
  return range.high ? fmt::format("{} below {}", what, end(*range.high)) : what;
}

AnswerRepair in_words(const Repair& repair, const Statement& statement) {
  AnswerRepair out;
  const Given& given = statement.givens[repair.given];
  out.given = given.text;
  if (!repair.instead) {
    out.text = "leave out: " + given.text;
    return out;
  }
  out.instead = describe(*repair.instead, statement.names);
  out.exact = repair.exact;
  std::string shown = out.instead;
  if (repair.rounded)
    if (const auto equals = shown.rfind(" = "); equals != std::string::npos) shown.replace(equals, 3, " ≈ ");
  out.text = repair.rounded ? shown + " instead of " + given.text : not_that(shown, given.text);
  if (repair.between) {
    if (repair.between->low) out.low = decimal(*repair.between->low);
    if (repair.between->high) out.high = decimal(*repair.between->high);
    out.text = fmt::format("{}; {} can be drawn, for example this one", out.text,
                           any_in(*repair.between, of_angles(given.phrase) && !repair.number->factor));
  } else if (!repair.exact) {
    out.text += " (measured)";
  }
  return out;
}

// Why a forced size cannot be, where the figure would be flat.
std::string flat(const CheckedProof& contradiction, const Workings& workings, const Names& names) {
  const Proof& proof = contradiction.proof;
  if (proof.goal.size() != 1 || proof.goal[0].terms.size() != 1) return {};
  const Unknown& unknown = workings.unknowns[proof.goal[0].terms[0].first];
  const Rational value = -proof.goal[0].constant / proof.goal[0].terms[0].second;
  const auto& p = unknown.points;
  if (unknown.kind == UnknownKind::angle && (value.is_zero() || value == Rational(180)))
    return fmt::format("{}, {} and {} would lie on one line, so that the figure would be flat", names.of(p[1]),
                       names.of(p[0]), names.of(p[2]));
  if (unknown.kind == UnknownKind::excess && value.is_zero() && !proof.steps.empty()) {
    const ProofStep& last = proof.steps.back();  // the triangle inequality, with both sides equal
    const auto& corners = last.instance.places;
    const bool lengths_only = std::all_of(workings.unknowns.difference(proof.goal[0].terms[0].first).terms.begin(),
                                          workings.unknowns.difference(proof.goal[0].terms[0].first).terms.end(),
                                          [&](const auto& t) { return workings.unknowns[t.first].kind == UnknownKind::length; });
    if (corners.size() == 3 && last.instance.premises.empty() && lengths_only)
      return fmt::format("{}, {} and {} would lie on one line, so that the figure would be flat", names.of(corners[0]),
                         names.of(corners[1]), names.of(corners[2]));
  }
  if (unknown.kind == UnknownKind::length && value.is_zero())
    return fmt::format("{} and {} would be one point", names.of(p[0]), names.of(p[1]));
  return {};
}

void list_conflict(const Statement& statement, const Conflict& conflict, Answer& answer) {
  answer.conflict.clear();
  for (const std::size_t g : conflict.givens) answer.conflict.push_back(statement.givens[g].text);
}

// The proof may rest on more than the smallest set: then it is made again from that set alone.
void prove_from_conflict(const Statements& statements, const Conflict& conflict, const std::vector<std::size_t>& used,
                         const Budget& budget, Answer& answer) {
  if (statements.size() > 1 || std::includes(conflict.givens.begin(), conflict.givens.end(), used.begin(), used.end())) return;
  std::vector<bool> kept(statements[0].givens.size(), false);
  for (const std::size_t g : conflict.givens) kept[g] = true;
  const Statement part = with_only(statements[0], kept);
  StageTimes times;
  const Attempt again = attempt(part, {}, conflict.with, budget.share(0.5), times);
  if (again.contradiction && trusted(*again.contradiction))
    answer.proofs = {answer_proof(*again.contradiction, part, part.goals.empty() ? Goal() : part.goals[0], "", conflict.with)};
}

void say_rounding(const Statements& statements, Drawn drawn, Answer& answer) {
  answer.verdict = Verdict::unknown;
  answer.conflict_shown_by.clear();
  answer.proofs.clear();
  answer.figures = {answer_figure("within the rounding of the numbers", *drawn.figure, statements[drawn.statement])};
  answer.summary = "The numbers agree only after rounding: taken exactly, no figure meets them, but within their last decimal one does.";
  if (answer.figures[0].value)
    answer.summary += fmt::format(" In it, what is asked measures about {:.1f}.", *answer.figures[0].value);
}

void contradiction_found(const Statements& statements, const std::vector<Solved>& solved, const AttemptOptions& options,
                         const Budget& budget, Answer& answer) {
  const Attempt& attempt = solved[0].cases[0].attempt;
  std::set<std::size_t> cited;
  for (const Solved& one : solved)
    for (const int g : one.cases[0].attempt.contradiction->reading.givens_used) cited.insert(static_cast<std::size_t>(g));
  const std::vector<std::size_t> used(cited.begin(), cited.end());
  auto conflict = conflict_by_proof(statements, used, options, budget.share(0.3));
  if (!conflict) return;
  list_conflict(statements[0], *conflict, answer);
  answer.conflict_shown_by = "proof";
  if (auto drawn = drawn_within_rounding(statements, conflict->givens, budget.share(0.3)))
    return say_rounding(statements, std::move(*drawn), answer);
  prove_from_conflict(statements, *conflict, used, budget, answer);
  if (const std::string why = flat(*attempt.contradiction, *attempt.workings, statements[0].names); !why.empty())
    answer.summary = "No figure can meet these givens: " + why + ".";
  if (const auto smaller = smaller_by_figures(statements, *conflict, options, budget.share(0.5))) {
    std::string also;
    for (const std::size_t g : conflict->givens)
      if (std::find(smaller->givens.begin(), smaller->givens.end(), g) == smaller->givens.end())
        also += (also.empty() ? "" : "; ") + statements[0].givens[g].text;
    answer.summary += fmt::format(" The proof also uses: {}. Without it no figure was found either ({} tries).", also, smaller->tries);
    conflict->givens = smaller->givens;
    list_conflict(statements[0], *conflict, answer);
    answer.conflict_shown_by = "figures";
  }
  for (const Repair& repair : repairs(statements, conflict->givens, options, budget.share(0.5)))
    answer.repair.push_back(in_words(repair, statements[0]));
}

void no_figure_found(const Statements& statements, const AttemptOptions& options, const Budget& budget, Answer& answer) {
  const auto conflict = conflict_by_figures(statements, options, budget.share(0.5));
  if (!conflict) return;
  list_conflict(statements[0], *conflict, answer);
  if (auto drawn = drawn_within_rounding(statements, conflict->givens, budget.share(0.3)))
    return say_rounding(statements, std::move(*drawn), answer);
  if (conflict->shown_by == ConflictShownBy::positions) {
    answer.verdict = Verdict::contradictory;
    answer.conflict_shown_by = "positions";
    answer.summary = "No figure can meet these givens: what those listed below say of order and sides cannot all hold.";
  } else if (conflict->shown_by == ConflictShownBy::figures) {
    answer.verdict = Verdict::contradictory;
    answer.conflict_shown_by = "figures";
    answer.summary = fmt::format(
        "No figure meets these givens: none of the {} below was found in {} tries, while without any one of them it is drawn at once. This is numerical, not a proof.",
        conflict->givens.size(), conflict->tries);
  } else {
    answer.summary = fmt::format(
        "No figure that meets the givens was found, so nothing is claimed. Those listed below may exclude each other: no figure of them was found in {} tries.",
        conflict->tries);
  }
  for (const Repair& repair : repairs(statements, conflict->givens, options, budget.share(0.5)))
    answer.repair.push_back(in_words(repair, statements[0]));
}

}  // namespace

void add_conflict(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                  const AttemptOptions& options, const Budget& budget, Answer& answer) {
  if (answer.verdict == Verdict::contradictory) return contradiction_found(statements, solved, options, budget, answer);
  const bool none_drawn = std::all_of(solved.begin(), solved.end(), [](const Solved& one) {
    return one.figures.sketches.empty();
  });
  if (answer.verdict == Verdict::unknown && none_drawn && !answer.checks_disagree)
    no_figure_found(statements, options, budget, answer);
}

}  // namespace prover
