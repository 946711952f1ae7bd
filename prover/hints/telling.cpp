#include "prover/hints/telling.hpp"

#include <algorithm>

namespace prover {

namespace {

constexpr std::string_view equals = " = ", angle_sign = "∠", degree = "°";

std::vector<std::string> sides_of(const std::string& chain) {
  std::vector<std::string> sides;
  std::size_t begin = 0;
  for (std::size_t at = chain.find(equals); at != chain.npos; at = chain.find(equals, begin)) {
    sides.push_back(chain.substr(begin, at - begin));
    begin = at + equals.size();
  }
  sides.push_back(chain.substr(begin));
  return sides;
}

bool names_something(const std::string& side) {
  return std::any_of(side.begin(), side.end(), [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); });
}

bool holds_number(const std::string& side) {
  // "2∠KLM" counts, and is no size.
  for (std::size_t i = 0; i < side.size(); ++i) {
    if (side[i] < '0' || side[i] > '9') continue;
    while (i < side.size() && side[i] >= '0' && side[i] <= '9') ++i;
    if (i >= side.size() || std::string_view(side).substr(i).starts_with(degree) || side[i] == ' ') return true;
  }
  return false;
}

// "∠VWX = ∠RVW = 64°" without its sizes; empty where fewer than two sides are left.
std::string without_sizes(const AnswerStep& step) {
  if (step.claim.find(", so ") != step.claim.npos || step.claim.find(';') != step.claim.npos) return {};
  std::string text;
  int kept = 0;
  for (const std::string& side : sides_of(step.claim)) {
    if (!names_something(side) || holds_number(side)) continue;
    text += (kept++ ? std::string(equals) : "") + side;
  }
  return kept >= 2 ? text : std::string();
}

// "∠OTP = 90°" says that two lines are perpendicular, without the number.
std::string as_perpendicular(const std::string& relation) {
  const std::string right = " = 90°";
  if (!relation.starts_with(angle_sign) || !relation.ends_with(right)) return {};
  const std::string corners = relation.substr(angle_sign.size(), relation.size() - angle_sign.size() - right.size());
  if (corners.size() != 3) return {};
  return corners.substr(0, 2) + " ⟂ " + corners.substr(1, 2);
}

}  // namespace

bool is_mere_working(const AnswerStep& step) {
  return step.rule == "substitution" || step.rule == "let" || step.rule == "given" || step.rule == "contradiction";
}

std::vector<Telling> tellings_of(const AnswerStep& step) {
  std::vector<Telling> ways{{step.claim, step.reason}};
  const auto add = [&](std::string claim) {
    const bool known = std::any_of(ways.begin(), ways.end(), [&](const Telling& t) { return t.claim == claim; });
    if (!claim.empty() && !known) ways.push_back({std::move(claim), step.reason});
  };
  add(without_sizes(step));
  add(step.relation);
  add(as_perpendicular(step.relation));
  return ways;
}

Telling joined_telling(const std::vector<const AnswerStep*>& steps) {
  Telling all;
  for (const AnswerStep* step : steps) {
    if (steps.size() > 1 && step->rule == "substitution" && step->reason == "as shown") continue;  // repeats the others
    all.claim += (all.claim.empty() ? "" : "; ") + step->claim;
    if (!step->reason.empty() && all.reason.find(step->reason) == all.reason.npos)
      all.reason += (all.reason.empty() ? "" : " and ") + step->reason;
  }
  return all;
}

}  // namespace prover
