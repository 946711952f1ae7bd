#include "prover/reading/title.hpp"

#include <algorithm>

#include "prover/rule/ideas.hpp"

namespace prover {

std::string title_of(const std::vector<RuleId>& cited, const Catalogue& catalogue) {
  // Small change tells nothing about the idea, unless there is nothing else (`rules/ideas.table`).
  std::vector<RuleId> telling, rest;
  for (RuleId r : cited) {
    const auto& b = catalogue[r].builtin;
    if (b == Builtin::angle_addition || b == Builtin::segment_addition || b == Builtin::join) continue;
    auto& list = idea_table().role(catalogue[r]) == IdeaRole::carries ? telling : rest;
    if (std::find(list.begin(), list.end(), r) == list.end()) list.push_back(r);
  }
  const std::vector<RuleId>& chosen = telling.empty() ? rest : telling;
  if (chosen.empty()) return "directly from the givens";
  std::string text = "by ";
  const std::size_t shown = std::min<std::size_t>(chosen.size(), 3);
  for (std::size_t i = 0; i < shown; ++i) {
    if (i > 0) text += i + 1 == shown ? " and " : ", ";
    text += catalogue[chosen[i]].title;
  }
  return text;
}

}  // namespace prover
