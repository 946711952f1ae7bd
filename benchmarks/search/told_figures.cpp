#include "benchmarks/search/told_figures.hpp"

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <numeric>

#include "benchmarks/sample.hpp"
#include "prover/rule/rule.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

std::optional<ToldFigure> told_figure(const std::string& name, const std::string& text, double limit_seconds) {
  const auto statements = statements_of(parse_problem(text));
  if (statements.empty() || statements.front().goals.size() != 1) return std::nullopt;
  const Statement& statement = statements.front();
  const Catalogue& catalogue = standard_catalogue();
  const std::vector<bool> everything(catalogue.rules.size(), true);
  AttemptOptions options{catalogue, everything};
  StageTimes times;
  double sketch_ms = 0;
  const Solved solved = solve(statement, options, Budget::seconds(limit_seconds), times, sketch_ms);
  if (solved.cases.size() != 1) return std::nullopt;
  Workings& workings = *solved.cases[0].attempt.workings;
  if (workings.goals.size() != 1 || !workings.goals[0].reached || workings.saturation.contradictory) return std::nullopt;

  ToldFigure figure;
  figure.fired = workings.saturation.instances.size();
  figure.chain_seconds = median_time(
                             [&] {
                               UnknownTable unknowns;
                               note_goal(statement.goals[0], workings.arrangement, unknowns);
                               saturate(statement, workings.arrangement, catalogue, unknowns, {}, {everything}, Budget::seconds(limit_seconds));
                             },
                             5, 1000 * limit_seconds / 5) /
                         1000;
  const GoalForms& goal = workings.goals[0];
  const Claim claim{statement.goals[0], goal.forms, goal.positions};
  const Scene scene{statement, workings.arrangement, workings.unknowns, workings.views, options};
  figure.instance.name = name;
  figure.instance.problem = goal_search(workings.saturation, claim, scene).problem;
  figure.instance.unknowns = workings.unknowns.size();
  const auto& candidates = figure.instance.problem.candidates;
  figure.nested = static_cast<std::size_t>(
      std::count_if(candidates.begin(), candidates.end(), [](const Candidate& c) { return !c.premises.empty(); }));
  return figure;
}

SearchInstance with_premises_granted(const ToldFigure& figure) {
  SearchInstance flat = figure.instance;
  flat.name += "-granted";
  std::int64_t common = 0;
  for (Candidate& candidate : flat.problem.candidates) {
    candidate.premises.clear();
    common = std::gcd(common, candidate.weight);
  }
  if (common > 1)
    for (Candidate& candidate : flat.problem.candidates) candidate.weight /= common;
  return flat;
}

std::vector<PublishedText> published_texts() {
  std::vector<PublishedText> texts;
  for (const char* file : {"classroom.json", "theorems.json"}) {
    std::ifstream stream(std::string(PUBLISHED_DIR) + "/" + file);
    for (const auto& item : nlohmann::json::parse(stream)) {
      std::string text;
      for (const auto& fact : item["facts"]) text += fact.get<std::string>() + "\n";
      text += (item["answer"].is_boolean() ? "prove: " : "find: ") + item["ask"].get<std::string>() + "\n";
      texts.push_back({item["id"], std::move(text)});
    }
  }
  return texts;
}

}  // namespace prover
