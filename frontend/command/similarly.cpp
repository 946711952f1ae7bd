#include "frontend/command/similarly.hpp"

#include <vector>

namespace frontend {

namespace {

std::vector<std::string> parts_of(const std::string& reason) {
  std::vector<std::string> parts{""};
  for (std::size_t i = 0; i < reason.size(); ++i) {
    if (reason.compare(i, 2, ", ") == 0) {
      parts.emplace_back();
      ++i;
    } else {
      parts.back() += reason[i];
    }
  }
  return parts;
}

}  // namespace

std::string reason_after(const prover::AnswerStep& before, const prover::AnswerStep& step) {
  if (before.rule != step.rule || step.rule == "substitution" || before.rows.size() != step.rows.size()) return step.reason;
  const std::vector<std::string> above = parts_of(before.reason), here = parts_of(step.reason);
  if (above.size() != here.size() || here.size() < 2 || above[0] != here[0] || above == here) return step.reason;
  std::string text = "similarly";
  bool same = true;
  for (std::size_t i = 1; i < here.size(); ++i) {
    same = same && above[i] == here[i];
    if (!same) text += ", " + here[i];
  }
  return text;
}

}  // namespace frontend
