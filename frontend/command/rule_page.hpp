// The catalogue as pages and as JSON.
#pragma once
#include <string>
#include <vector>

#include "frontend/command/answer_json.hpp"
#include "frontend/document/document.hpp"
#include "prover/rule/rule.hpp"

namespace frontend {

using RuleList = std::vector<const prover::Rule*>;

// One table a topic. With one register its reasons stand in the table, with several below each other.
Document rule_list_page(const RuleList& rules, const std::vector<prover::Register>& wordings);
Document rule_page(const prover::Rule& rule);  // all about one rule

Json rule_json(const prover::Rule& rule);

}  // namespace frontend
