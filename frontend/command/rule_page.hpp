// One rule as a page and as JSON.
#pragma once
#include <string>

#include "frontend/command/answer_json.hpp"
#include "frontend/document/document.hpp"
#include "prover/rule/rule.hpp"

namespace frontend {

// "{AB} ∥ {CD}" as a person reads it: the letters stand for any points. A dash where a school has no phrase.
std::string reason_pattern(const prover::Rule& rule, prover::Register wording);

Json rule_json(const prover::Rule& rule, const prover::Catalogue& catalogue);

}  // namespace frontend
