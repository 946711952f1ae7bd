#include "prover/search/lightest_set.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/search/small_search.hpp"

using namespace prover;
using namespace small_search;

namespace {

// The reference: every subset.
std::optional<std::int64_t> lightest_by_force(const SearchProblem& problem) {
  std::optional<std::int64_t> best;
  const int n = static_cast<int>(problem.candidates.size());
  for (unsigned set = 0; set < 1u << n; ++set) {
    std::int64_t weight = 0;
    std::vector<int> members;
    for (int i = 0; i < n; ++i)
      if (set >> i & 1u) {
        members.push_back(i);
        weight += problem.candidates[static_cast<std::size_t>(i)].weight;
      }
    if ((!best || weight < *best) && derive(problem, members).reached) best = weight;
  }
  return best;
}

void check_minimal(const SearchProblem& problem, const LightSet& found) {
  CHECK(derive(problem, found.members).reached);
  for (const int left_out : found.members) {
    std::vector<int> rest = found.members;
    rest.erase(std::find(rest.begin(), rest.end(), left_out));
    CHECK_FALSE(derive(problem, rest).reached);
  }
  std::int64_t weight = 0;
  for (const int i : found.members) weight += problem.candidates[static_cast<std::size_t>(i)].weight;
  CHECK(found.weight == weight);
}

}  // namespace

TEST_CASE("nothing is found where the goal does not follow") {
  SearchProblem problem;
  problem.candidates = {{{}, {equal(0, 1)}, 1}, {{holds(7)}, {equal(1, 2)}, 1}};
  problem.goal = {equal(0, 2)};
  CHECK_FALSE(lightest_set(problem, {}));
  problem.candidates.push_back({{}, {holds(7)}, 1});
  REQUIRE(lightest_set(problem, {}));
  CHECK(lightest_set(problem, {})->members.size() == 3);
}

TEST_CASE("what is not needed is left out, and the lighter of two ways is taken") {
  SearchProblem problem;
  problem.goal = {equal(0, 2)};
  problem.candidates = {{{}, {equal(0, 1)}, 100'000},
                        {{}, {equal(1, 2)}, 100'000},
                        {{}, {equal(0, 2)}, 300'000},
                        {{}, {equal(3, 4)}, 0}};
  auto found = lightest_set(problem, {});
  REQUIRE(found);
  CHECK(found->members == std::vector<int>{0, 1});
  problem.candidates[2].weight = 100'000;
  found = lightest_set(problem, {});
  REQUIRE(found);
  CHECK(found->members == std::vector<int>{2});
}

TEST_CASE(
    "on small problems the set is minimal, never lighter than the lightest, and its claims about that are "
    "true") {
  const unsigned seed = 11;
  CAPTURE(seed);
  std::mt19937 random(seed);
  int solved = 0, lightest = 0, claimed = 0;
  for (int round = 0; round < 150; ++round) {
    CAPTURE(round);
    const SearchProblem problem = random_problem(random, 6 + round % 5);
    const auto best = lightest_by_force(problem);
    const auto found = lightest_set(problem, {});
    REQUIRE(found.has_value() == best.has_value());
    if (!found) continue;
    ++solved;
    check_minimal(problem, *found);
    CHECK(found->weight >= *best);
    CHECK(found->lower_bound <= *best);
    if (found->proved_lightest) CHECK(found->weight == *best);
    claimed += found->proved_lightest;
    lightest += found->weight == *best;
  }
  CHECK(solved > 50);
  // Shown with -s. The plain method promises no more than a minimal set.
  SUCCEED("lightest in " << lightest << " of " << solved << ", claimed in " << claimed);
}

TEST_CASE("a set of fourteen is judged like the small ones") {
  const unsigned seed = 23;
  CAPTURE(seed);
  std::mt19937 random(seed);
  for (int round = 0; round < 3; ++round) {
    const SearchProblem problem = random_problem(random, 14);
    const auto best = lightest_by_force(problem);
    const auto found = lightest_set(problem, {});
    REQUIRE(found.has_value() == best.has_value());
    if (!found) continue;
    check_minimal(problem, *found);
    CHECK(found->weight >= *best);
    CHECK(found->lower_bound <= *best);
  }
}
