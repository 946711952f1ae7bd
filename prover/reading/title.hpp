// A proof's title: the theorems that carry it. "by alternate angles and SAS"
#pragma once
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

std::string title_of(const std::vector<RuleId>& cited, const Catalogue& catalogue);  // cited: in order of use

}  // namespace prover
