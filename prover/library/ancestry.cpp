#include "prover/library/ancestry.hpp"

#include <algorithm>

namespace prover {

namespace {

constexpr int unknown = -2, in_progress = -1;

int depth_of(std::size_t rule, const std::vector<std::vector<RuleId>>& cites, std::vector<int>& depth) {
  if (depth[rule] != unknown) return depth[rule];
  depth[rule] = in_progress;
  int deepest = -1;
  for (const RuleId cited : cites[rule]) {
    const int below = depth_of(cited.index(), cites, depth);
    if (below < 0) return depth[rule];  // a circle: stays below 0
    deepest = std::max(deepest, below);
  }
  return depth[rule] = deepest + 1;
}

}  // namespace

Ancestry::Ancestry(const Catalogue& catalogue, const std::vector<TheoremReport>& reports)
    : cites_(catalogue.rules.size()), depth_(catalogue.rules.size(), unknown), proved_(catalogue.rules.size(), true) {
  for (const TheoremReport& report : reports) {
    if (report.status == TheoremStatus::taken) continue;
    cites_[report.rule.index()] = report.cites;
    proved_[report.rule.index()] = report.status != TheoremStatus::not_proved;
  }
  for (std::size_t i = 0; i < cites_.size(); ++i) depth_of(i, cites_, depth_);
  for (int& depth : depth_)
    if (depth == unknown) depth = in_progress;
}

std::vector<RuleId> Ancestry::deepest_line(RuleId rule) const {
  std::vector<RuleId> line;
  while (!cites_[rule.index()].empty() && depth(rule) > 0) {
    const auto& cited = cites_[rule.index()];
    rule = *std::max_element(cited.begin(), cited.end(), [&](RuleId a, RuleId b) { return depth(a) < depth(b); });
    line.push_back(rule);
  }
  return line;
}

std::vector<RuleId> Ancestry::ancestors(RuleId rule) const {
  std::vector<bool> seen(cites_.size(), false);
  std::vector<RuleId> open = cites_[rule.index()];
  while (!open.empty()) {
    const RuleId next = open.back();
    open.pop_back();
    if (seen[next.index()]) continue;
    seen[next.index()] = true;
    open.insert(open.end(), cites_[next.index()].begin(), cites_[next.index()].end());
  }
  std::vector<RuleId> all;
  for (std::size_t i = 0; i < seen.size(); ++i)
    if (seen[i]) all.emplace_back(static_cast<std::int64_t>(i));
  return all;
}

bool Ancestry::rests_on_itself(RuleId rule) const {
  const std::vector<RuleId> all = ancestors(rule);
  return std::find(all.begin(), all.end(), rule) != all.end();
}

std::vector<RuleId> Ancestry::not_proved_below(RuleId rule) const {
  std::vector<RuleId> missing;
  for (const RuleId ancestor : ancestors(rule))
    if (!proved_[ancestor.index()]) missing.push_back(ancestor);
  if (!proved_[rule.index()]) missing.push_back(rule);
  return missing;
}

}  // namespace prover
