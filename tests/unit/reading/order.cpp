// The order in which a person would say the steps: values as soon as they can be had, what is said near where it is
// used. Small systems whose best order can be told by hand, each with an order that is worse.
#include "prover/reading/order.hpp"

#include <algorithm>
#include <numeric>
#include <random>

#include "prover/algebra/linear_system.hpp"
#include "tests/unit/proof/proved.hpp"

using namespace prover;
using proved::Proved;

namespace {

Form equation(std::vector<std::pair<int, int>> terms, int constant) {
  Form form = Form::number(-constant);
  for (const auto& [u, c] : terms) form.add(Form::of(UnknownId(u), c));
  return form;
}
Form equal(int a, int b) { return equation({{a, 1}, {b, -1}}, 0); }

Instance step(int rule, Form conclusion, std::vector<Form> premises = {}) {
  Instance one;
  one.rule = RuleId(rule);
  one.premises = std::move(premises);
  one.conclusions = {std::move(conclusion)};
  return one;
}

bool premises_come_first(const std::vector<Instance>& ordered) {
  LinearSystem so_far;
  for (const Instance& one : ordered) {
    for (const Form& premise : one.premises)
      if (!so_far.entails(premise)) return false;
    for (const Form& conclusion : one.conclusions) so_far.add(conclusion);
  }
  return true;
}

// The conclusions in order, as indices into `members`.
std::vector<std::size_t> order_of(const std::vector<Instance>& members, const std::vector<Form>& goal) {
  std::vector<std::size_t> found;
  for (const Instance& one : order_for_reading(members, goal))
    for (std::size_t i = 0; i < members.size(); ++i)
      if (members[i].conclusions == one.conclusions) found.push_back(i);
  return found;
}

}  // namespace

TEST_CASE("an order for reading keeps premises first and loses nobody") {
  const Proved problem(proved::base_angles);
  std::vector<Instance> members;
  for (const ProofStep& step : problem.goal().proof.steps) members.push_back(step.instance);
  const std::vector<Instance> ordered = order_for_reading(members);
  CHECK(ordered.size() == members.size());
  CHECK(premises_come_first(ordered));
}

TEST_CASE("values go in at once: what settles something comes before what leaves it open") {
  // a + b + c = 180 with b = 40; c = b: first c, then the sum.
  const std::vector<Instance> members{step(1, equation({{0, 1}, {1, 1}, {2, 1}}, 180)), step(2, equal(2, 1)),
                                      step(3, equation({{1, 1}}, 40))};
  const auto order = order_of(members, {equation({{0, 1}}, 100)});
  CHECK(order == std::vector<std::size_t>{2, 1, 0});
}

TEST_CASE("base angles before the sum that they settle, the sum first when it stays open") {
  // b = c, then b + c = 130.
  CHECK(order_of({step(1, equation({{1, 1}, {2, 1}}, 130)), step(2, equal(1, 2))}, {equation({{1, 1}}, 65)}) ==
        std::vector<std::size_t>{1, 0});
  // The angle sum by a parallel: the straight line, then what is put into it (classroom notes, section 2).
  CHECK(order_of({step(2, equal(0, 3)), step(2, equal(2, 4)), step(1, equation({{0, 1}, {1, 1}, {2, 1}}, 180))},
                 {equation({{3, 1}, {1, 1}, {4, 1}}, 180)}) == std::vector<std::size_t>{2, 0, 1});
}

TEST_CASE("each line is said near where it is used") {
  // Two threads, 0 = 1 = 2 and 5 = 6 = 7, come together at the end; mixed they are hard to follow.
  const std::vector<Instance> members{step(1, equal(0, 1)), step(2, equal(5, 6)), step(3, equal(1, 2)), step(4, equal(6, 7))};
  const std::vector<Form> goal{equation({{0, 1}, {2, -1}, {5, 1}, {7, -1}}, 0)};
  const auto order = order_of(members, goal);
  CHECK(order == std::vector<std::size_t>{0, 2, 1, 3});
  CHECK(order_cost({members[0], members[2], members[1], members[3]}, goal) < order_cost(members, goal));
}

TEST_CASE("up to twelve steps no order costs less") {
  std::mt19937 random(7);
  for (int round = 0; round < 60; ++round) {
    std::vector<Instance> members;
    for (int i = 0; i < 5; ++i) {
      const int a = static_cast<int>(random() % 6), b = static_cast<int>((a + 1 + random() % 5) % 6);
      std::vector<Form> premises;
      if (i > 2 && random() % 2 == 0) premises.push_back(members[random() % 3].conclusions[0]);
      members.push_back(step(static_cast<int>(random() % 3), random() % 2 == 0 ? equal(a, b) : equation({{a, 1}, {b, 1}}, 180), premises));
    }
    if (!premises_come_first(members)) continue;
    const std::vector<Form> goal{equal(0, 5)};
    const OrderCost best = order_cost(order_for_reading(members, goal), goal);
    std::vector<std::size_t> order(members.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    do {
      std::vector<Instance> other;
      for (const std::size_t i : order) other.push_back(members[i]);
      if (!premises_come_first(other)) continue;
      const OrderCost cost = order_cost(other, goal);
      CHECK(std::tuple(best.open, best.distance, best.narrow) <= std::tuple(cost.open, cost.distance, cost.narrow));
    } while (std::next_permutation(order.begin(), order.end()));
  }
}

TEST_CASE("beyond twelve steps the order is still one: premises first, nobody lost, the same every time") {
  std::vector<Instance> members;
  for (int i = 0; i < 15; ++i)
    members.push_back(step(i % 4, equal(i, i + 1), i == 0 ? std::vector<Form>{} : std::vector<Form>{equal(0, i)}));
  const std::vector<Form> goal{equal(0, 15)};
  const std::vector<Instance> ordered = order_for_reading(members, goal);
  CHECK(ordered.size() == members.size());
  CHECK(premises_come_first(ordered));
  CHECK(order_of(members, goal) == order_of(members, goal));
}

TEST_CASE("a cost that a wrong order does not have: premises that come too late are not led to") {
  const std::vector<Instance> members{step(1, equal(0, 1)), step(2, equal(2, 3), {equal(0, 1)})};
  CHECK(order_of(members, {equal(2, 3)}) == std::vector<std::size_t>{0, 1});
  CHECK_FALSE(premises_come_first({members[1], members[0]}));
}
