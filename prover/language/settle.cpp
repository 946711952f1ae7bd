#include "prover/language/draft.hpp"

namespace prover {

void settle(Draft& draft, const Units& units, std::vector<Goal>& goals) {
  settle_circles(draft, units);
  settle_lettered_lines(draft, units);
  settle_angles(draft, units, goals);
  settle_vague_shapes(draft, units);
  check_orders(draft, units);
  check_sizes(draft, units);
}

}  // namespace prover
