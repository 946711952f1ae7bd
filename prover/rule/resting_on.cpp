// Who rests on whom, as the files say it; that they say what the proofs cite is a test's business.
#include <map>

#include "prover/rule/rule.hpp"

namespace prover {

std::vector<bool> resting_on(const Catalogue& catalogue, RuleId rule) {
  std::map<std::string, std::vector<std::size_t>> cited_by;
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i)
    for (const std::string& id : catalogue.rules[i].rests) cited_by[id].push_back(i);
  std::vector<bool> found(catalogue.rules.size(), false);
  std::vector<std::size_t> open{rule.index()};
  while (!open.empty()) {
    const std::size_t next = open.back();
    open.pop_back();
    if (found[next]) continue;
    found[next] = true;
    const auto& above = cited_by[catalogue.rules[next].id];
    open.insert(open.end(), above.begin(), above.end());
  }
  return found;
}

}  // namespace prover
