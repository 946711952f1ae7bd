#include "prover/search/derivation.hpp"

#include <catch2/catch.hpp>
#include <random>

#include "tests/unit/search/small_search.hpp"

using namespace prover;
using namespace small_search;

TEST_CASE("an instance fires once its premises follow, and not before") {
  SearchProblem problem;
  problem.goal = {equal(0, 3)};
  problem.candidates = {
      {{}, {equal(0, 1)}, 1}, {{equal(0, 1)}, {equal(1, 2)}, 1}, {{equal(0, 2)}, {equal(2, 3)}, 1}};
  CHECK(derive(problem, {0, 1, 2}).reached);
  CHECK(derive(problem, {2, 1, 0}).fired == std::vector<int>{0, 1, 2});
  CHECK_FALSE(derive(problem, {1, 2}).reached);
  CHECK(derive(problem, {1, 2}).fired.empty());
  CHECK(derive(problem, {0, 2}).fired == std::vector<int>{0});
}

TEST_CASE("a premise may follow by arithmetic from several conclusions") {
  SearchProblem problem;
  problem.goal = {holds(5)};
  Form sum = value(0, 40);
  sum.add(value(1, 50));
  problem.candidates = {{{}, {value(0, 40)}, 1}, {{}, {value(1, 50)}, 1}, {{sum}, {holds(5)}, 1}};
  CHECK(derive(problem, {0, 1, 2}).reached);
  CHECK_FALSE(derive(problem, {0, 2}).reached);
}

TEST_CASE("without a goal the contradiction is sought") {
  SearchProblem problem;
  problem.candidates = {{{}, {value(0, 40)}, 1}, {{}, {value(0, 50)}, 1}, {{}, {value(1, 50)}, 1}};
  CHECK(derive(problem, {0, 1}).reached);
  CHECK_FALSE(derive(problem, {0, 2}).reached);
}

TEST_CASE("more members never derive less, and the order does not matter") {
  const unsigned seed = 7;
  CAPTURE(seed);
  std::mt19937 random(seed);
  int reached_by_some = 0;
  for (int round = 0; round < 200; ++round) {
    CAPTURE(round);
    const SearchProblem problem = random_problem(random, 10);
    std::vector<int> members, more;
    for (int i = 0; i < 10; ++i) {
      const unsigned draw = static_cast<unsigned>(random() % 3);
      if (draw == 0) members.push_back(i);
      if (draw <= 1) more.push_back(i);
    }
    const Derivation less = derive(problem, members), most = derive(problem, more);
    if (less.reached) CHECK(most.reached);
    reached_by_some += most.reached;
    if (!most.reached)
      for (const int i : less.fired)
        CHECK(std::find(most.fired.begin(), most.fired.end(), i) != most.fired.end());
    std::vector<int> shuffled = more;
    std::reverse(shuffled.begin(), shuffled.end());
    CHECK(derive(problem, shuffled).reached == most.reached);
  }
  CHECK(reached_by_some > 20);
}
