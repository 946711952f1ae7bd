#include "prover/marking/grounds.hpp"

namespace prover {

Grounds::Grounds(const Statement& statement, const Solved& solved, bool drawn_more, const AttemptOptions& options,
                 const Budget& budget)
    : statement_(statement), options_(options), budget_(budget) {
  // With further points in it the figure is another one, and is drawn anew.
  if (!drawn_more && solved.figures.sketches.size() > 1) figures_ = solved.figures.sketches;
  if (!drawn_more && solved.cases.size() > 1)
    for (const SolvedCase& one : solved.cases) {
      Case shown{one.name, {}};
      for (const std::size_t v : one.views) shown.views.push_back(solved.figures.sketches[v]);
      cases_.push_back(std::move(shown));
    }
  grounds_.resize(3 + cases_.size());
}

const std::vector<Sketch>& Grounds::figures() {
  if (!figures_) figures_ = sketch(phrases_of(statement_), statement_.names.points.size(), budget_.share(0.3)).sketches;
  return *figures_;
}

const Ground& Grounds::at(std::size_t i) {
  if (grounds_[i]) return *grounds_[i];
  AttemptOptions options = options_;
  std::vector<Sketch> views;
  if (i == 1 || i == 2) views = figures();
  if (i >= 3) views = cases_[i - 3].views;
  if (i == 2) {
    options.join_points = true;
    options.allowed.assign(options.allowed.size(), true);
  }
  grounds_[i] = std::make_unique<Ground>(statement_, views, options, budget_.share(0.4));
  return *grounds_[i];
}

}  // namespace prover
