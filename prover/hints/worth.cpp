#include "prover/hints/worth.hpp"

#include <algorithm>


namespace prover {

namespace {

bool goes_with(const AnswerProof& way, const Rung& rung, const Catalogue& catalogue, ClaimReader& reader) {
  if (rung.rule.empty() || rung.kind == RungKind::answer) return true;
  // Adding what lies side by side is small change, in any way and put in many ways.
  if (const auto rule = catalogue.find(rung.rule); rule && catalogue[*rule].free_step) return true;
  return std::any_of(way.steps.begin(), way.steps.end(), [&](const AnswerStep& step) {
    if (step.rule != rung.rule) return false;
    return rung.kind != RungKind::step || same_claim(step.relation, rung.claim, reader) || same_claim(step.claim, rung.claim, reader);
  });
}

}  // namespace

bool same_claim(const std::string& a, const std::string& b, ClaimReader& reader) {
  const std::set<UnknownId> first = reader.spoken_of(a);
  return !first.empty() && first == reader.spoken_of(b);
}

void count_open_ways(const std::vector<const AnswerProof*>& ways, const Catalogue& catalogue, ClaimReader& reader, Ladder& ladder) {
  std::vector<const AnswerProof*> open = ways;
  ladder.ways = static_cast<int>(ways.size());
  for (Rung& rung : ladder.rungs) {
    std::erase_if(open, [&](const AnswerProof* way) { return !goes_with(*way, rung, catalogue, reader); });
    rung.ways_open = static_cast<int>(open.size());
  }
}

}  // namespace prover
