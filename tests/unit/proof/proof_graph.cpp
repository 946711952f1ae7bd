#include "prover/proof/proof_graph.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/search/small_search.hpp"

using namespace prover;
using namespace small_search;

namespace {
Instance instance(std::vector<Form> premises, std::vector<Form> conclusions) {
  Instance one;
  one.premises = std::move(premises);
  one.conclusions = std::move(conclusions);
  return one;
}
}  // namespace

TEST_CASE("only what is connected with the goal can matter to it") {
  const std::vector<Instance> all{instance({}, {equal(0, 1)}), instance({}, {equal(5, 6)}),
                                  instance({equal(0, 1)}, {holds(2)}), instance({equal(5, 6)}, {holds(7)}),
                                  instance({holds(2)}, {equal(3, 4)})};
  const ProofGraph graph(all);
  CHECK(graph.relevant_to({equal(3, 4)}) == std::vector<int>{0, 2, 4});
  CHECK(graph.relevant_to({holds(7)}) == std::vector<int>{1, 3});
  CHECK(graph.relevant_to({holds(9)}).empty());
}
