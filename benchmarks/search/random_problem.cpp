#include "benchmarks/search/random_problem.hpp"

#include <algorithm>
#include <numeric>

#include "prover/search/derivation.hpp"
#include "prover/sketch/random.hpp"

namespace prover {

namespace {

using sketching::Random;

class Point {  // whole numbers for all unknowns
 public:
  Point(Random& random, std::size_t unknowns) {
    for (std::size_t i = 0; i < unknowns; ++i) values_.push_back(static_cast<std::int64_t>(random.below(170)) + 5);
  }
  std::size_t unknowns() const { return values_.size(); }

  // An equation with two or three terms that holds here.
  Form equation(Random& random) const {
    Form form;
    const std::size_t terms = 2 + random.below(2);
    while (form.terms.size() < terms) {
      const std::size_t u = random.below(values_.size());
      if (!form.coefficient(UnknownId(static_cast<std::int64_t>(u))).is_zero()) continue;
      const std::int64_t c = (random.chance(0.2) ? 2 : 1) * (random.chance(0.5) ? 1 : -1);
      form.add(Form::of(UnknownId(static_cast<std::int64_t>(u)), c));
      form.constant -= c * values_[u];
    }
    return form;
  }

 private:
  std::vector<std::int64_t> values_;
};

bool follows(const SearchProblem& problem) {
  std::vector<int> all(problem.candidates.size());
  std::iota(all.begin(), all.end(), 0);
  return derive(problem, all).reached;
}

}  // namespace

SearchInstance random_problem(std::uint64_t number, bool nested) {
  Random random(number * 2 + (nested ? 1 : 0));
  for (;;) {
    const Point point(random, 4 + random.below(4));
    SearchInstance instance;
    instance.name = (nested ? "nested " : "flat ") + std::to_string(number);
    instance.unknowns = point.unknowns();
    const std::size_t count = 6 + random.below(7);
    for (std::size_t i = 0; i < count; ++i) {
      Candidate candidate;
      if (nested && random.chance(0.5)) candidate.premises.push_back(point.equation(random));
      candidate.conclusions.push_back(point.equation(random));
      if (random.chance(0.15)) candidate.conclusions.push_back(point.equation(random));
      candidate.weight = static_cast<std::int64_t>(random.below(6));
      instance.problem.candidates.push_back(std::move(candidate));
    }
    instance.problem.goal = {point.equation(random)};
    if (follows(instance.problem)) return instance;
  }
}

}  // namespace prover
