#include "prover/reading/order.hpp"

#include "prover/algebra/linear_system.hpp"
#include "tests/unit/proof/proved.hpp"

using namespace prover;
using proved::Proved;

TEST_CASE("an order for reading keeps premises first and loses nobody") {
  const Proved problem(proved::base_angles);
  std::vector<Instance> members;
  for (const ProofStep& step : problem.goal().proof.steps) members.push_back(step.instance);
  const std::vector<Instance> ordered = order_for_reading(members);
  CHECK(ordered.size() == members.size());
  LinearSystem so_far;
  for (const Instance& one : ordered) {
    for (const Form& premise : one.premises) CHECK(so_far.entails(premise));
    for (const Form& conclusion : one.conclusions) so_far.add(conclusion);
  }
}
