// Inequalities as the checker sees them. An excess is a letter for a difference that a given or a rule says to be positive;
// each letter stands for one difference only, and only what was introduced so counts as positive. What else is: lengths,
// numbers above 0, angles that are known not to be 0°.
#pragma once
#include <map>
#include <vector>

#include "prover/check/naming.hpp"

namespace prover::replay {

class Excesses {
 public:
  // Whether the conclusion is "difference − excess = 0" for one of the differences; remembers the excess then.
  bool introduces(const Equation& conclusion, const std::vector<Equation>& positive, const Naming& naming);
  bool known(int key) const { return difference_.contains(key); }
  // A sum that is more than 0 whatever the sizes are.
  bool surely_positive(const Equation& sum, Naming& naming) const;

 private:
  std::map<int, Equation> difference_;
};

}  // namespace prover::replay
