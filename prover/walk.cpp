#include "prover/walk.hpp"

#include <fmt/format.h>

#include "prover/base/log.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

// The replay checker keeps a sign for every three points.
constexpr std::size_t kMostPoints = 120;

class Stopwatch {
 public:
  double lap() {
    const auto now = Budget::Clock::now();
    const double ms = std::chrono::duration<double, std::milli>(now - last_).count();
    last_ = now;
    return ms;
  }

 private:
  Budget::Clock::time_point last_ = Budget::Clock::now();
};

// The theorem that the problem merely states: its whole proof is one citation, every given is among its premises, and
// there are no points beside its own.
std::optional<RuleId> merely_stated(const Statement& statement, const Answer& answer, const Catalogue& catalogue) {
  if (answer.verdict != Verdict::proved || answer.proofs.size() != statement.goals.size()) return std::nullopt;
  std::optional<RuleId> stated;
  for (std::size_t g = 0; g < answer.proofs.size(); ++g) {
    const AnswerProof& proof = answer.proofs[g];
    if (statement.goals[g].kind != GoalKind::prove || !proof.givens_not_needed.empty()) return std::nullopt;
    for (const AnswerStep& step : proof.steps) {
      const auto rule = catalogue.find(step.rule);
      if (!rule || step.places.empty()) continue;  // substituting; joined lines; shapes that add up
      const RuleKind kind = catalogue[*rule].kind;
      if (kind == RuleKind::definition || kind == RuleKind::postulate) continue;
      if ((stated && *stated != *rule) || step.places.size() != statement.names.points.size()) return std::nullopt;
      stated = rule;
    }
  }
  return stated;
}

// What may be cited: the problem's own `taught:` lines, or the options' in their place, less what is left out.
std::vector<bool> allowed_rules(const ProblemText& text, const Catalogue& catalogue, const ProveOptions& options,
                                std::vector<Diagnostic>& diagnostics) {
  std::vector<Taught> taught = text.taught;
  if (!options.taught.empty()) {
    taught.clear();
    for (const std::string& line : options.taught)
      for (const Taught& read : parse_problem("taught: " + line).taught) taught.push_back(read);
  }
  TaughtRules rules = taught_rules(catalogue, taught);
  for (Diagnostic& mistake : rules.diagnostics) {
    if (!options.taught.empty()) mistake.span = {};  // it does not stand in the problem
    diagnostics.push_back(std::move(mistake));
  }
  const auto leave_out = [&](const std::string& id, bool with_what_rests_on_it) {
    const auto rule = named_rule(id, catalogue, diagnostics);
    if (!rule) return;
    if (with_what_rests_on_it) return take_away(resting_on(catalogue, *rule), catalogue, rules.allowed);
    rules.allowed[rule->index()] = false;
  };
  for (const std::string& id : options.without) leave_out(id, true);
  for (const std::string& id : options.without_only) leave_out(id, false);
  return rules.allowed;
}

// The lines that the problem is answered with, as far as an added one cannot be drawn.
bool refused(const std::vector<Statement>& statements, const std::vector<Solved>& solved, Answer& answer) {
  for (const Solved& one : solved) {
    if (one.added.objection.empty()) continue;
    answer.diagnostics.push_back({Severity::error, one.added.span, one.added.objection, one.added.way_out});
    answer.summary = "An added line cannot be drawn as it is described; nothing was proved.";
    if (one.added.figure) {
      AnswerFigure figure = answer_figure("no such line here", *one.added.figure, statements[0]);
      const std::vector<bool> old = points_of_problem(statements[0]);
      for (std::size_t p = 0; p < old.size(); ++p)
        if (!old[p]) figure.points.erase(statements[0].names.points[p]);
      answer.figures.push_back(std::move(figure));
    }
    return true;
  }
  return false;
}

}  // namespace

void take_away(const std::vector<bool>& rules, const Catalogue& catalogue, std::vector<bool>& allowed) {
  for (std::size_t i = 0; i < rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    if (rules[i] && !rule.meaning && rule.builtin != Builtin::given) allowed[i] = false;
  }
}

std::optional<RuleId> named_rule(const std::string& id, const Catalogue& catalogue, std::vector<Diagnostic>& diagnostics) {
  const auto rule = catalogue.find(id);
  if (rule) return rule;
  const auto nearest = nearest_word(id, catalogue.ids());
  diagnostics.push_back({Severity::error, {}, fmt::format("there is no rule named “{}”", id),
                         nearest ? fmt::format("did you mean “{}”?", *nearest) : "the command `rules` lists them"});
  return std::nullopt;
}

Walked walk(std::string_view source, const Catalogue& catalogue, const ProveOptions& options) {
  Stopwatch watch;
  ProblemText text = parse_problem(source);
  const double ms = watch.lap();
  Walked result = walk(std::move(text), catalogue, options);
  result.answer.time_ms["language"] = ms;
  return result;
}

Walked walk(ProblemText text, const Catalogue& catalogue, const ProveOptions& options) {
  Stopwatch watch;
  const std::optional<Measure> measure = measure_from(options.measure);
  Walked result{std::move(text), {}, {catalogue, {}, measure.value_or(Measure::classroom), options.wording, false}, {}, {}, {}, {}, {}, 0, false};
  Answer& answer = result.answer;
  answer.diagnostics = result.text.diagnostics;
  result.options.allowed = allowed_rules(result.text, catalogue, options, answer.diagnostics);
  if (!measure)
    answer.diagnostics.push_back({Severity::error, {}, fmt::format("there is no measure named “{}”", options.measure),
                                  "write “classroom”, “fewest-steps” or “early”"});
  if (options.ways)
    for (const std::string& id : options.ways->with) named_rule(id, catalogue, answer.diagnostics);
  const std::size_t points = result.text.names.points.size();
  if (points > kMostPoints)
    answer.diagnostics.push_back(
        {Severity::error, {}, fmt::format("the figure has {} points; more than {} cannot be checked", points, kMostPoints),
         "leave out what the question does not need, or split the problem"});
  if (has_error(answer.diagnostics)) {
    answer.summary = "The problem has mistakes; nothing was tried.";
    result.ended = true;
    return result;
  }
  std::vector<Statement>& statements = result.statements;
  statements = statements_of(result.text);
  for (const Given& given : statements[0].givens)
    if (!given.added) answer.read_as.push_back(given.text);
  for (const AddedSentence& added : statements[0].added) answer.read_as.push_back("added: " + added.text);
  answer.read_as.insert(answer.read_as.end(), result.text.assumptions.begin(), result.text.assumptions.end());
  answer.marks = figure_marks(statements[0]);
  answer.time_ms["statement"] = watch.lap();

  for (const Statement& statement : statements)
    result.solved.push_back(solve(statement, result.options, options.budget, result.times, result.sketch_ms));
  if (refused(statements, result.solved, answer)) {
    result.ended = true;
    return result;
  }
  fill_answer(statements, result.solved, result.options, answer);
  // A claim that says no more than a theorem of the catalogue is not proved by citing that theorem, if it can be helped.
  if (const auto stated = statements.size() == 1 ? merely_stated(statements[0], answer, catalogue) : std::nullopt) {
    result.states = catalogue[*stated].id;
    AttemptOptions earlier = result.options;
    take_away(resting_on(catalogue, *stated), catalogue, earlier.allowed);
    Answer again = answer;
    again.proofs.clear();
    again.figures.clear();
    std::vector<Solved> solved_again{solve(statements[0], earlier, options.budget.share(0.5), result.times, result.sketch_ms)};
    fill_answer(statements, solved_again, earlier, again);
    if (again.verdict == Verdict::proved) {
      answer = std::move(again);
      result.solved = std::move(solved_again);
      result.options.allowed = std::move(earlier.allowed);
      result.set_aside = {catalogue[*stated].id};
    }
  }
  return result;
}

}  // namespace prover
