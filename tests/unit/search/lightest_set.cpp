#include "prover/search/lightest_set.hpp"

#include <bit>
#include <catch2/catch.hpp>
#include <set>

#include "prover/search/derivation.hpp"
#include "tests/unit/search/small_search.hpp"

using namespace prover;
using namespace small_search;

namespace {

std::int64_t weight_of(const SearchProblem& problem, const std::vector<int>& members) {
  std::int64_t weight = 0;
  for (const int i : members) weight += problem.candidates[static_cast<std::size_t>(i)].weight;
  return weight;
}

std::vector<int> members_of(unsigned set) {
  std::vector<int> members;
  for (int i = 0; set >> i; ++i)
    if (set >> i & 1u) members.push_back(i);
  return members;
}

// The reference: every subset.
std::optional<std::int64_t> lightest_by_force(const SearchProblem& problem) {
  std::optional<std::int64_t> best;
  for (unsigned set = 0; set < 1u << problem.candidates.size(); ++set) {
    const auto members = members_of(set);
    const std::int64_t weight = weight_of(problem, members);
    if ((!best || weight < *best) && derive(problem, members).reached) best = weight;
  }
  return best;
}

// What a set costs a reader: the members with a weight. Two sets that differ in others only are the same.
std::vector<int> charged(const SearchProblem& problem, std::vector<int> members) {
  std::erase_if(members, [&](int i) { return problem.candidates[static_cast<std::size_t>(i)].weight == 0; });
  std::sort(members.begin(), members.end());
  return members;
}

// All sets of charged members that give the goal with the weightless ones, and not without any one of them.
std::set<std::vector<int>> all_minimal_by_force(const SearchProblem& problem) {
  const int n = static_cast<int>(problem.candidates.size());
  std::vector<int> weightless;
  for (int i = 0; i < n; ++i)
    if (problem.candidates[static_cast<std::size_t>(i)].weight == 0) weightless.push_back(i);
  std::set<std::vector<int>> minimal;
  std::vector<unsigned> masks(1u << n);
  for (unsigned set = 0; set < masks.size(); ++set) masks[set] = set;
  std::sort(masks.begin(), masks.end(), [](unsigned a, unsigned b) {
    return std::popcount(a) != std::popcount(b) ? std::popcount(a) < std::popcount(b) : a < b;
  });
  std::vector<unsigned> found;
  for (const unsigned set : masks) {
    auto members = members_of(set);
    if (charged(problem, members).size() != members.size()) continue;
    if (std::any_of(found.begin(), found.end(), [&](unsigned f) { return (f & set) == f; })) continue;
    members.insert(members.end(), weightless.begin(), weightless.end());
    if (!derive(problem, members).reached) continue;
    found.push_back(set);
    minimal.insert(members_of(set));
  }
  return minimal;
}

// A reader of the certificate that knows nothing of how it came about: each cut is tested candidate by candidate,
// and no set lighter than the bound hits all of them.
void check_certificate(const SearchProblem& problem, const std::vector<CutCertificate>& cuts, std::int64_t bound) {
  auto inside = [](const Form& form, const CutCertificate& cut) {
    return std::all_of(cut.duals.begin(), cut.duals.end(), [&](const Form& dual) {
      Rational product = form.constant * dual.constant;
      for (const auto& [unknown, c] : form.terms) product += c * dual.coefficient(unknown);
      return product.is_zero();
    });
  };
  const auto all_inside = [&](const std::vector<Form>& forms, const CutCertificate& cut) {
    return std::all_of(forms.begin(), forms.end(), [&](const Form& f) { return inside(f, cut); });
  };
  std::vector<unsigned> masks;
  for (const CutCertificate& cut : cuts) {
    CHECK_FALSE(all_inside(problem.goal.empty() ? std::vector<Form>{Form::number(1)} : problem.goal, cut));
    unsigned mask = 0;
    for (std::size_t i = 0; i < problem.candidates.size(); ++i)
      if (all_inside(problem.candidates[i].premises, cut) && !all_inside(problem.candidates[i].conclusions, cut))
        mask |= 1u << i;
    unsigned said = 0;
    for (const int i : cut.members) said |= 1u << i;
    CHECK(mask == said);
    masks.push_back(mask);
  }
  std::int64_t lightest = std::numeric_limits<std::int64_t>::max();
  for (unsigned set = 0; set < 1u << problem.candidates.size(); ++set)
    if (std::all_of(masks.begin(), masks.end(), [&](unsigned mask) { return (mask & set) != 0; }))
      lightest = std::min(lightest, weight_of(problem, members_of(set)));
  CHECK(lightest == bound);
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

TEST_CASE("the lightest set is the lightest of all subsets, and its certificate convinces a reader of its own") {
  const unsigned seed = 11;
  CAPTURE(seed);
  std::mt19937 random(seed);
  int solved = 0;
  for (int round = 0; round < 500; ++round) {
    CAPTURE(round);
    const SearchProblem problem = random_problem(random, 6 + round % 6);
    const auto best = lightest_by_force(problem);
    std::vector<CutCertificate> certificate;
    SearchLimits limits;
    limits.certificate = &certificate;
    const auto found = lightest_set(problem, limits);
    REQUIRE(found.has_value() == best.has_value());
    if (!found) continue;
    ++solved;
    check_minimal(problem, *found);
    CHECK(found->weight == *best);
    CHECK(found->lower_bound == *best);
    CHECK(found->proved_lightest);
    check_certificate(problem, certificate, *best);
  }
  CHECK(solved > 150);
}

TEST_CASE("several sets: all minimal ones, each once, by rising weight") {
  const unsigned seed = 29;
  CAPTURE(seed);
  std::mt19937 random(seed);
  std::size_t sets = 0;
  for (int round = 0; round < 200; ++round) {
    CAPTURE(round);
    const SearchProblem problem = random_problem(random, 6 + round % 6);
    const auto all = all_minimal_by_force(problem);
    const LightSets found = lightest_sets(problem, {});
    CHECK(found.stop == StopReason::saturated);
    std::set<std::vector<int>> listed;
    for (std::size_t k = 0; k < found.sets.size(); ++k) {
      const LightSet& set = found.sets[k];
      CHECK(derive(problem, set.members).reached);
      CHECK(set.weight == weight_of(problem, set.members));
      if (k > 0) CHECK(found.sets[k - 1].weight <= set.weight);
      CHECK(listed.insert(charged(problem, set.members)).second);
    }
    CHECK(listed == all);
    sets += listed.size();

    // Cut short: the lightest ones, and what is said to be complete is.
    SeveralLimits few;
    few.most_sets = 2;
    const LightSets some = lightest_sets(problem, few);
    CHECK(some.sets.size() == std::min<std::size_t>(2, all.size()));
    for (const auto& members : all) {
      const std::int64_t weight = weight_of(problem, members);
      if (weight >= some.complete_below && some.stop != StopReason::saturated) continue;
      CHECK(std::any_of(some.sets.begin(), some.sets.end(),
                        [&](const LightSet& set) { return charged(problem, set.members) == members; }));
    }
  }
  CHECK(sets > 200);
}

TEST_CASE("a goal that is there already needs nothing, and one that weightless members give costs nothing") {
  SearchProblem problem;
  problem.candidates = {{{}, {equal(0, 1)}, 0}, {{}, {equal(0, 1)}, 100}};
  problem.goal = {Form{}};
  auto found = lightest_set(problem, {});
  REQUIRE(found);
  CHECK(found->members.empty());
  CHECK(found->proved_lightest);
  problem.goal = {equal(0, 1)};
  found = lightest_set(problem, {});
  REQUIRE(found);
  CHECK(found->members == std::vector<int>{0});
  CHECK(found->weight == 0);
}

TEST_CASE("a contradiction is a goal like others: 0 = 1") {
  SearchProblem problem;
  problem.candidates = {{{}, {value(0, 40)}, 3}, {{}, {value(0, 50)}, 1}, {{}, {equal(0, 1)}, 1}, {{}, {value(1, 50)}, 1},
                        {{}, {value(1, 60)}, 2}};
  const auto found = lightest_set(problem, {});
  REQUIRE(found);
  CHECK(charged(problem, found->members) == std::vector<int>{3, 4});
  CHECK(found->proved_lightest);
  problem.candidates.resize(4);
  problem.candidates.erase(problem.candidates.begin());
  CHECK_FALSE(lightest_set(problem, {}));
}

TEST_CASE("what follows from a contradiction is no proof of anything else") {
  SearchProblem problem;
  problem.candidates = {{{}, {value(0, 40)}, 1}, {{}, {value(0, 50)}, 1}};
  problem.goal = {equal(1, 2)};
  CHECK_FALSE(lightest_set(problem, {}));
}

TEST_CASE("numbers too large for a machine word are said, not wrapped") {
  SearchProblem problem;
  const Rational large = *Rational::parse("123456789012345678901234567890");
  problem.candidates = {{{}, {Form::of(UnknownId(0), large).add(Form::of(UnknownId(1)))}, 5}};
  problem.goal = {Form::of(UnknownId(0), large).add(Form::of(UnknownId(1)))};
  const auto found = lightest_set(problem, {});
  REQUIRE(found);
  CHECK(found->members == std::vector<int>{0});
  CHECK_FALSE(found->proved_lightest);
  CHECK(found->lower_bound == 0);
}

TEST_CASE("a search that has no time says what it knows") {
  SearchProblem problem;  // a ladder with two rungs everywhere: 2^40 minimal sets of equal weight
  for (int i = 0; i < 40; ++i)
    for (int way = 0; way < 2; ++way) problem.candidates.push_back({{}, {equal(i, i + 1)}, 10});
  problem.goal = {equal(0, 40)};
  const auto found = lightest_set(problem, {});
  REQUIRE(found);
  CHECK(found->weight == 400);
  CHECK(found->proved_lightest);
  SeveralLimits limits;
  limits.most_sets = 50;
  const LightSets some = lightest_sets(problem, limits);
  CHECK(some.sets.size() == 50);
  CHECK(some.complete_below == 400);
  CHECK(some.stop == StopReason::instance_limit);
  std::stop_source stop;
  stop.request_stop();
  SearchLimits none;
  none.budget.stop = stop.get_token();
  const auto at_once = lightest_set(problem, none);
  REQUIRE(at_once);
  CHECK(derive(problem, at_once->members).reached);
  CHECK(at_once->lower_bound <= 400);
}
