// The enumeration of smallest sets, beside all subsets.
#include "prover/evidence/sufficient_sets.hpp"

#include <catch2/catch.hpp>
#include <random>

using namespace prover;

namespace {

using Sets = std::vector<std::vector<int>>;

bool holds_one(const Sets& sets, const ElementSet& chosen) {
  for (const auto& set : sets) {
    bool all = true;
    for (const int i : set) all = all && chosen[static_cast<std::size_t>(i)];
    if (all) return true;
  }
  return false;
}

// Every subset is asked; those with the property and without one to spare, in the order of the answer.
Sets smallest_of_all_subsets(std::size_t n, const std::function<bool(const ElementSet&)>& suffices) {
  Sets found;
  for (std::size_t bits = 0; bits < (std::size_t{1} << n); ++bits) {
    ElementSet set(n);
    std::vector<int> members;
    for (std::size_t i = 0; i < n; ++i) {
      set[i] = (bits >> i & 1U) != 0;
      if (set[i]) members.push_back(static_cast<int>(i));
    }
    if (!suffices(set)) continue;
    bool spare = false;
    for (const int i : members) {
      ElementSet less = set;
      less[static_cast<std::size_t>(i)] = false;
      spare = spare || suffices(less);
    }
    if (!spare) found.push_back(members);
  }
  std::sort(found.begin(), found.end(),
            [](const auto& a, const auto& b) { return a.size() != b.size() ? a.size() < b.size() : a < b; });
  return found;
}

}  // namespace

TEST_CASE("every smallest set is found, as by asking all subsets") {
  std::minstd_rand random(7);
  for (int round = 0; round < 200; ++round) {
    const std::size_t n = 1 + random() % 8;
    Sets sets(1 + random() % 4);
    for (auto& set : sets)
      for (std::size_t i = 0; i < n; ++i)
        if (random() % 3 == 0) set.push_back(static_cast<int>(i));
    const auto suffices = [&](const ElementSet& chosen) { return holds_one(sets, chosen); };
    const SufficientSets found = sufficient_sets(ElementSet(n, false), suffices, 100'000, {});
    CHECK(found.stop == StopReason::saturated);
    CHECK(found.sets == smallest_of_all_subsets(n, suffices));
  }
}

TEST_CASE("what is always kept stands in every set and is never left out") {
  const Sets sets{{1, 2}, {1, 3}};
  const auto suffices = [&](const ElementSet& chosen) {
    CHECK(chosen[0]);
    return holds_one(sets, chosen);
  };
  ElementSet kept(4, false);
  kept[0] = true;
  CHECK(sufficient_sets(kept, suffices, 1000, {}).sets == Sets{{0, 1, 2}, {0, 1, 3}});
}

TEST_CASE("where not even all suffice there is no set; where nothing is needed it is what is always kept") {
  CHECK(sufficient_sets(ElementSet(3, false), [](const ElementSet&) { return false; }, 1000, {}).sets.empty());
  CHECK(sufficient_sets(ElementSet(3, false), [](const ElementSet&) { return true; }, 1000, {}).sets == Sets{{}});
}

TEST_CASE("a limit is said, and only sets without a member to spare are listed") {
  const Sets sets{{0, 1}, {2, 3}, {4, 5}};
  const auto suffices = [&](const ElementSet& chosen) { return holds_one(sets, chosen); };
  const SufficientSets all = sufficient_sets(ElementSet(6, false), suffices, 1000, {});
  CHECK(all.sets == sets);
  for (std::size_t most = 0; most < all.questions; ++most) {
    const SufficientSets some = sufficient_sets(ElementSet(6, false), suffices, most, {});
    CHECK(some.stop == StopReason::instance_limit);
    CHECK(some.questions <= most);
    for (const auto& set : some.sets) CHECK(std::find(sets.begin(), sets.end(), set) != sets.end());
  }
  // Nothing needed is asked twice: 6 elements, 3 sets.
  CHECK(all.questions < 40);
}
