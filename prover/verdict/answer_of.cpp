#include "prover/verdict/answer_of.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace prover {

namespace {

std::string joined(const std::vector<std::string>& rows) {
  std::string text;
  for (const std::string& row : rows) {
    if (!text.empty()) text += row.starts_with("so ") ? ", " : row.starts_with("=") ? " " : "; ";
    text += row;
  }
  return text;
}

struct Measured {           // what the figures say about a goal
  std::size_t least = 0, most = 0;  // figures with the smallest and largest value
  double spread = 0;
  std::optional<std::size_t> breaks;  // prove: a figure in which the claim fails clearly
  bool agree = true;
};

Measured look_at(const Goal& goal, const std::vector<Sketch>& figures) {
  Measured m;
  if (goal.kind == GoalKind::find) {
    const Expression& asked = goal.claims[0].relation.expressions[0];
    for (std::size_t i = 0; i < figures.size(); ++i) {
      const double value = measure(asked, figures[i]);
      if (!std::isfinite(value)) continue;
      if (value < measure(asked, figures[m.least])) m.least = i;
      if (value > measure(asked, figures[m.most])) m.most = i;
    }
    if (!figures.empty()) m.spread = measure(asked, figures[m.most]) - measure(asked, figures[m.least]);
    m.agree = m.spread < 1e-6;
  } else {
    for (std::size_t i = 0; i < figures.size() && !m.breaks; ++i)
      for (const Phrase& claim : goal.claims)
        if (!holds(claim, figures[i], 1e-3)) m.breaks = i;
    m.agree = !m.breaks;
  }
  return m;
}

// Proofs of one goal over all cases of all statements; false when one is missing or not confirmed.
struct GoalProofs {
  std::vector<AnswerProof> proofs;
  std::vector<AnswerCase> cases;
  std::set<std::string> values;
  bool complete = true, disagree = false;
};

GoalProofs proofs_of_goal(std::size_t goal, const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                          const AttemptOptions& options) {
  GoalProofs out;
  for (std::size_t s = 0; s < statements.size(); ++s) {
    out.complete &= solved[s].covers_all_figures && !solved[s].figures.sketches.empty();
    for (const SolvedCase& one : solved[s].cases) {
      if (goal >= one.attempt.goals.size() || !one.attempt.goals[goal]) {
        out.complete = false;
        continue;
      }
      const CheckedProof& checked = *one.attempt.goals[goal];
      if (!trusted(checked)) {
        out.complete = false;
        out.disagree |= refuted(checked);
        continue;
      }
      const std::string name = case_name(statements[s], one);
      out.proofs.push_back(answer_proof(checked, statements[s], statements[s].goals[goal], name, options));
      auto& seen = out.proofs.back().seen_in_figure;
      seen.insert(seen.end(), solved[s].added.provided.begin(), solved[s].added.provided.end());
      out.cases.push_back({name, Verdict::proved, checked.value, ""});
      out.values.insert(checked.value);
    }
  }
  return out;
}

std::string stop_of(const std::vector<Solved>& solved) {
  for (const Solved& s : solved)
    for (const SolvedCase& c : s.cases)
      if (c.attempt.stop != StopReason::saturated) return name_of(c.attempt.stop);
  return name_of(StopReason::saturated);
}

}  // namespace

AnswerProof answer_proof(const CheckedProof& checked, const Statement& statement, const Goal& goal,
                         const std::string& case_name, const AttemptOptions& options) {
  AnswerProof out;
  out.goal = goal.text;
  out.title = checked.reading.title;
  out.case_name = case_name;
  out.cost = weight_as_cost(checked.light.weight).to_string();
  out.measure = name_of(options.measure);
  out.shortest = checked.light.proved_lightest ? "proved" : "best found";
  out.lower_bound = weight_as_cost(checked.light.lower_bound).to_string();
  out.rules = checked.reading.rules;
  for (const ProofStep& step : checked.proof.steps) {
    const Rule& rule = options.catalogue[step.instance.rule];
    if (rule.assumed && std::find(out.assumed.begin(), out.assumed.end(), rule.id) == out.assumed.end())
      out.assumed.push_back(rule.id);
  }
  out.constructions = checked.reading.constructions;
  int n = 0;
  for (const ReadingLine& line : checked.reading.lines) {
    out.steps.push_back({++n, line.claim.empty() ? joined(line.rows) : line.claim, line.rows, line.rule, line.reason, line.uses, line.closing, line.places, line.made_of,
                         line.ask, line.relation, {}});
    for (const int given : line.givens) out.steps.back().givens.push_back(statement.givens[static_cast<std::size_t>(given)].text);
  }
  std::set<Position> seen;
  for (const SeenPosition& p : checked.proof.positions)
    if (p.source == PositionSource::seen && seen.insert(p.position).second)
      out.seen_in_figure.push_back(describe(p.position, statement.names));
  std::set<int> used(checked.reading.givens_used.begin(), checked.reading.givens_used.end());
  // Position sentences serve wherever a step's position rests on the text; which one is not told apart here.
  for (std::size_t i = 0; i < statement.givens.size(); ++i) {
    if (used.contains(static_cast<int>(i))) out.givens_used.push_back(statement.givens[i].text);
  }
  for (std::size_t i = 0; i < statement.givens.size(); ++i) {
    const Predicate kind = statement.givens[i].phrase.predicate;
    const bool says_size = kind == Predicate::relation || kind == Predicate::parallel ||
                           kind == Predicate::perpendicular || kind == Predicate::bisects ||
                           kind == Predicate::midpoint || kind == Predicate::isosceles_at;
    if (says_size && !used.contains(static_cast<int>(i))) out.givens_not_needed.push_back(statement.givens[i].text);
  }
  out.replay = checked.replay.accepted;
  out.z3 = checked.z3.answer == SecondOpinion::Answer::confirmed;
  return out;
}

std::string case_name(const Statement& statement, const SolvedCase& one) {
  if (statement.case_name.empty() || one.name.empty()) return statement.case_name + one.name;
  return statement.case_name + "; " + one.name;
}

namespace {

// Turned so that the first two points stand level, whatever a figure was made by. A rotation by an exact unit vector is
// out of reach of doubles; what it adds is rounding.
std::vector<std::array<double, 2>> levelled(const std::vector<std::array<double, 2>>& points) {
  if (points.size() < 2) return points;
  const double dx = points[1][0] - points[0][0], dy = points[1][1] - points[0][1], length = std::hypot(dx, dy);
  if (length == 0 || dy == 0) return points;
  std::vector<std::array<double, 2>> turned;
  for (const auto& [x, y] : points) turned.push_back({(x * dx + y * dy) / length, (y * dx - x * dy) / length});
  return turned;
}

}  // namespace

AnswerFigure answer_figure(const std::string& name, const Sketch& figure, const Statement& statement) {
  AnswerFigure out;
  out.name = name;
  const std::vector<std::array<double, 2>> points = levelled(figure.points);
  for (std::size_t i = 0; i < points.size(); ++i)
    if (!statement.hidden[i]) out.points[statement.names.points[i]] = {points[i][0], points[i][1]};
  if (!statement.goals.empty() && statement.goals[0].kind == GoalKind::find) {
    const double value = measure(statement.goals[0].claims[0].relation.expressions[0], figure);
    if (std::isfinite(value)) out.value = value;
  }
  return out;
}

void fill_answer(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                 const AttemptOptions& options, Answer& answer) {
  const Statement& statement = statements[0];
  answer.stop = stop_of(solved);

  // The givens exclude each other: in every case of the words.
  std::size_t contradictory = 0;
  for (const Solved& s : solved)
    contradictory += !s.cases.empty() && s.cases[0].attempt.contradiction && trusted(*s.cases[0].attempt.contradiction);
  if (contradictory == solved.size()) {
    const CheckedProof& checked = *solved[0].cases[0].attempt.contradiction;
    answer.verdict = Verdict::contradictory;
    answer.summary = "No figure can meet these givens.";
    if (!solved[0].cases[0].attempt.impossible.empty())
      answer.summary = "No figure can meet these givens: they would make " + solved[0].cases[0].attempt.impossible + ".";
    answer.proofs.push_back(
        answer_proof(checked, statement, statement.goals.empty() ? Goal() : statement.goals[0], "", options));
    for (const int g : checked.reading.givens_used)
      answer.conflict.push_back(statement.givens[static_cast<std::size_t>(g)].text);
    return;
  }
  // Cases of the words that cannot be are left out from here on.
  std::vector<Statement> open;
  std::vector<Solved> open_solved;
  for (std::size_t s = 0; s < statements.size(); ++s) {
    const bool impossible = !solved[s].cases.empty() && solved[s].cases[0].attempt.contradiction &&
                            trusted(*solved[s].cases[0].attempt.contradiction);
    if (impossible) {
      answer.cases.push_back({statements[s].case_name, Verdict::contradictory, "", ""});
      continue;
    }
    open.push_back(statements[s]);
    open_solved.push_back(solved[s]);
  }

  bool all_proved = true, any_disagree = false, depends = false;
  for (std::size_t g = 0; g < statement.goals.size(); ++g) {
    GoalProofs proofs = proofs_of_goal(g, open, open_solved, options);
    any_disagree |= proofs.disagree;
    all_proved &= proofs.complete;
    if (!proofs.complete) continue;
    if (proofs.values.size() > 1) depends = true;
    if (proofs.cases.size() > 1 || proofs.values.size() > 1)
      answer.cases.insert(answer.cases.end(), proofs.cases.begin(), proofs.cases.end());
    if (statement.goals[g].kind == GoalKind::find && proofs.values.size() == 1) {
      if (!answer.value.empty()) answer.value += "; ";
      answer.value += *proofs.values.begin();
    }
    for (AnswerProof& proof : proofs.proofs) answer.proofs.push_back(std::move(proof));
  }
  answer.checks_disagree = any_disagree;
  const auto& figures = open_solved[0].figures.sketches;

  if (all_proved && depends) {
    answer.verdict = Verdict::depends_on_figure;
    answer.value.clear();
    answer.summary = fmt::format("The givens allow {} arrangements with different answers; each has its own proof.",
                                 answer.cases.size());
    for (std::size_t s = 0; s < open.size(); ++s)
      for (const SolvedCase& one : open_solved[s].cases)
        if (!one.views.empty())
          answer.figures.push_back(
              answer_figure(case_name(open[s], one), open_solved[s].figures.sketches[one.views[0]], open[s]));
    return;
  }
  if (all_proved) {
    answer.verdict = Verdict::proved;
    if (!answer.value.empty()) {
      answer.summary = answer.proofs[0].steps.empty() ? "Proved." : "Proved: " + statement.goals[0].text + " = " + answer.value + ".";
      if (statement.goals.size() > 1) answer.summary = "Proved; the values are " + answer.value + ".";
    } else {
      answer.summary = "Proved.";
    }
    if (!figures.empty()) answer.figures.push_back(answer_figure("figure", figures[0], open[0]));
    return;
  }

  // Not proved: what do the figures say?
  answer.value.clear();
  if (any_disagree) {
    answer.summary = "A proof was found that our own checks do not confirm. It is not shown as proved; please report this problem.";
    return;
  }
  if (figures.empty()) {
    answer.summary = "No figure that meets the givens was found, so nothing is claimed. The givens may exclude each other.";
    return;
  }
  bool all_agree = true;
  for (std::size_t g = 0; g < statement.goals.size(); ++g)
    for (std::size_t s = 0; s < open.size(); ++s) {
      const auto& views = open_solved[s].figures.sketches;
      const Measured m = look_at(open[s].goals[g], views);
      all_agree &= m.agree;
      if (m.breaks) {
        answer.verdict = Verdict::false_claim;
        answer.summary = "The claim is false: a figure meets every given and breaks it (measured).";
        answer.figures.push_back(answer_figure("breaks the claim", views[*m.breaks], open[s]));
        return;
      }
      if (m.spread > 1e-3) {
        answer.verdict = Verdict::undetermined;
        answer.summary = "The givens do not settle the answer: two figures meet them all and differ in what is asked (measured).";
        answer.figures.push_back(answer_figure("one figure", views[m.least], open[s]));
        answer.figures.push_back(answer_figure("another figure", views[m.most], open[s]));
        return;
      }
    }
  const bool saturated = answer.stop == name_of(StopReason::saturated);
  if (saturated && all_agree) {
    answer.verdict = Verdict::beyond_rules;
    answer.summary = "It holds in every figure drawn, but these rules do not reach it.";
    const Goal& goal = statement.goals[0];
    if (goal.kind == GoalKind::find)
      answer.summary = fmt::format("It measures {:.6g} in every figure drawn, but these rules do not reach it.",
                                   measure(goal.claims[0].relation.expressions[0], figures[0]));
    answer.figures.push_back(answer_figure("figure", figures[0], open[0]));
    return;
  }
  answer.summary = saturated ? "These rules do not reach the goal, and the figures drawn do not decide it."
                             : "The work ended before the goal was reached (" + answer.stop + ").";
}

}  // namespace prover
