#include "prover/search/plain_first_set.hpp"

#include <catch2/catch.hpp>

#include "prover/search/derivation.hpp"
#include "prover/search/minimal_set.hpp"
#include "tests/unit/search/small_search.hpp"

using namespace prover;
using namespace small_search;

TEST_CASE("among plain equations a minimal set is found whenever the goal follows, and none otherwise") {
  const unsigned seed = 41;
  CAPTURE(seed);
  std::mt19937 random(seed);
  int found = 0, none = 0;
  for (int round = 0; round < 600; ++round) {
    CAPTURE(round);
    SearchProblem problem = random_problem(random, 4 + round % 9);
    for (Candidate& candidate : problem.candidates) {
      candidate.premises.clear();
      candidate.conclusions.resize(1);
    }
    problem.goal.resize(1);
    std::vector<int> all;
    for (std::size_t i = 0; i < problem.candidates.size(); ++i) all.push_back(static_cast<int>(i));
    const FlatProblem flat(problem);
    REQUIRE(is_plain(flat));
    const std::vector<int> set = plain_first_set(flat);
    if (!derive(problem, all).reached) {
      CHECK(set.empty());
      ++none;
      continue;
    }
    CHECK(derive(problem, set).reached);
    CHECK(is_minimal(flat, set));
    ++found;
  }
  CHECK(found > 100);
  CHECK(none > 50);
}

TEST_CASE("a chain of ten thousand equal angles is one proof") {
  SearchProblem problem;
  const int length = 10'000;
  for (int i = 0; i < length; ++i) problem.candidates.push_back({{}, {equal(i, i + 1)}, 1});
  problem.goal = {equal(0, length)};
  CHECK(plain_first_set(FlatProblem(problem)).size() == static_cast<std::size_t>(length));
  problem.candidates.erase(problem.candidates.begin() + length / 2);
  CHECK(plain_first_set(FlatProblem(problem)).empty());
}
