// The mark schemes compiled into the program, as text; they stand in `rules/schemes` beside the rules, and
// prover/marking reads them.
#pragma once
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

const std::vector<RuleFile>& builtin_scheme_files();

}  // namespace prover
