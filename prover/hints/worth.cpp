#include "prover/hints/worth.hpp"

#include <algorithm>

#include "prover/hints/sentence_maths.hpp"

namespace prover {

namespace {

// The sizes and points that a claim speaks of, whichever way round it says so.
std::vector<std::string> spoken_of(const std::string& claim, const Names& names) {
  std::vector<std::string> all = maths_of(claim, names).quantities;
  for (std::string& quantity : all) {  // ∠KLM is ∠MLK, KL is LK
    std::string mirrored = quantity;
    const std::size_t letters = quantity.starts_with("∠") ? std::string_view("∠").size() : 0;
    std::reverse(mirrored.begin() + static_cast<std::ptrdiff_t>(letters), mirrored.end());
    quantity = std::min(quantity, mirrored);
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

bool goes_with(const AnswerProof& way, const Rung& rung, const Names& names) {
  if (rung.rule.empty() || rung.kind == RungKind::answer) return true;
  return std::any_of(way.steps.begin(), way.steps.end(), [&](const AnswerStep& step) {
    if (step.rule != rung.rule) return false;
    return rung.kind != RungKind::step || same_claim(step.relation, rung.claim, names) || same_claim(step.claim, rung.claim, names);
  });
}

}  // namespace

bool same_claim(const std::string& a, const std::string& b, const Names& names) {
  const std::vector<std::string> first = spoken_of(a, names);
  return !first.empty() && first == spoken_of(b, names);
}

void count_open_ways(const std::vector<const AnswerProof*>& ways, const Statement& statement, Ladder& ladder) {
  std::vector<const AnswerProof*> open = ways;
  for (Rung& rung : ladder.rungs) {
    std::erase_if(open, [&](const AnswerProof* way) { return !goes_with(*way, rung, statement.names); });
    rung.ways_open = static_cast<int>(open.size());
  }
}

}  // namespace prover
