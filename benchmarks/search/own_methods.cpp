#include "benchmarks/search/own_methods.hpp"

#include <algorithm>

#include "prover/algebra/linear_system.hpp"
#include "prover/search/lightest_set.hpp"

namespace prover {

namespace {

class Watch {
 public:
  double seconds() const { return std::chrono::duration<double>(Budget::Clock::now() - start_).count(); }

 private:
  Budget::Clock::time_point start_ = Budget::Clock::now();
};

}  // namespace

LightestRun run_lightest(const SearchProblem& problem, double limit_seconds) {
  LightestRun run;
  const Watch watch;
  SearchLimits limits;
  limits.budget = Budget::seconds(limit_seconds);
  limits.on_better = [&](const LightSet&) {
    if (run.seconds_to_first == 0) run.seconds_to_first = watch.seconds();
  };
  const auto light = lightest_set(problem, limits);
  run.seconds = watch.seconds();
  if (run.seconds_to_first == 0) run.seconds_to_first = run.seconds;
  if (!light) return run;
  run.weight = light->weight;
  run.members = light->members;
  run.lower_bound = light->lower_bound;
  run.proved = light->proved_lightest;
  return run;
}

SeveralRun run_several(const SearchProblem& problem, std::size_t wanted, double limit_seconds) {
  SeveralRun run;
  const Watch watch;
  SeveralLimits limits;
  limits.search.budget = Budget::seconds(limit_seconds);
  limits.most_sets = wanted;
  const LightSets found = lightest_sets(problem, limits);
  run.seconds = watch.seconds();
  run.sets = found.sets.size();
  if (!found.sets.empty()) run.heaviest = found.sets.back().weight;
  run.complete_below = found.complete_below;
  run.complete = run.sets >= wanted || found.stop == StopReason::saturated;
  return run;
}

EntailmentRun run_entailment(const SearchInstance& instance, Entailment method, double limit_seconds) {
  EntailmentRun run;
  const auto& directions = instance.directions;
  if (method != Entailment::angles && directions.lines == 0) return run;
  const Watch watch;
  LinearSystem system;
  std::size_t added = 0;
  const auto in_time = [&] { return ++added % 64 != 0 || watch.seconds() < limit_seconds; };
  const auto add_all = [&](const std::vector<Form>& forms) {
    return std::all_of(forms.begin(), forms.end(), [&](const Form& form) {
      system.add(form);
      return in_time();
    });
  };
  const auto& candidates = instance.problem.candidates;
  switch (method) {
    case Entailment::angles:
      if (std::all_of(candidates.begin(), candidates.end(), [&](const Candidate& c) { return add_all(c.conclusions); }))
        run.follows = std::all_of(instance.problem.goal.begin(), instance.problem.goal.end(),
                                  [&](const Form& goal) { return system.entails(goal); });
      break;
    case Entailment::directions_of_all:
      if (add_all(directions.equations)) run.follows = system.entails(directions.goal);
      break;
    case Entailment::directions_of_givens:
      if (add_all(directions.given)) run.follows = system.entails(directions.goal);
      break;
  }
  run.seconds = watch.seconds();
  return run;
}

}  // namespace prover
