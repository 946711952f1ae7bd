// Small search problems: unknowns 0, 1, 2 …; an equation ties two of them or gives one a value.
#pragma once
#include <algorithm>
#include <random>

#include "prover/search/derivation.hpp"

namespace small_search {

using namespace prover;

inline Form value(int unknown, int size) {
  return Form::of(UnknownId(unknown)).add(Form::number(-size));
}
inline Form holds(int fact) {
  return Form::of(UnknownId(fact));
}
inline Form equal(int a, int b) {
  return Form::of(UnknownId(a)).add(Form::of(UnknownId(b)), -1);
}

// Candidates that agree with one assignment, so that they never contradict each other; about half have a
// premise, some cost nothing, some say two things, some speak of three unknowns or of twice one of them.
inline SearchProblem random_problem(std::mt19937& random, int candidates) {
  auto below = [&](int bound) { return static_cast<int>(random() % static_cast<unsigned>(bound)); };
  const int sizes[6] = {40, 50, 40, 90, 50, 130};
  auto truth = [&] {
    Form form;
    int size = 0;
    auto take = [&](int u, int factor) {
      form.add(Form::of(UnknownId(u)), factor);
      size += factor * sizes[u];
    };
    const int kind = below(6);
    take(below(6), kind == 5 ? 2 : 1);
    if (kind > 0) take(below(6), kind % 2 == 0 ? 1 : -1);
    if (kind == 4) take(below(6), 1);
    if (form.terms.empty()) {
      size = 0;
      take(below(6), 1);
    }
    return form.add(Form::number(-size));
  };
  SearchProblem problem;
  for (int i = 0; i < candidates; ++i) {
    Candidate candidate;
    if (i > 1 && below(2) == 0) candidate.premises.push_back(truth());
    if (below(8) == 0) candidate.premises.push_back(truth());
    candidate.conclusions.push_back(truth());
    if (below(5) == 0) candidate.conclusions.push_back(truth());
    candidate.weight = below(8) == 0 ? 0 : 100'000 * (1 + below(3)) + 25'000 * below(2);
    problem.candidates.push_back(std::move(candidate));
  }
  problem.goal = {truth()};
  if (below(5) == 0) problem.goal.push_back(truth());
  return problem;
}

}  // namespace small_search
