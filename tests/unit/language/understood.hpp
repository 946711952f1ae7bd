// What a text was understood to say, in canonical words, for tests that read like a small claim.
#pragma once
#include <string>
#include <vector>

#include "prover/language/problem_text.hpp"

namespace prover {

inline std::string joined(const std::vector<Phrase>& phrases, const Names& names) {
  std::string all;
  for (const Phrase& phrase : phrases) all += (all.empty() ? "" : "; ") + describe(phrase, names);
  return all;
}

// The givens of a problem, or the first mistake in it.
inline std::string understood(const std::string& text) {
  const ProblemText problem = parse_problem(text + "\nfind: x");
  if (!problem.diagnostics.empty()) return "mistake: " + problem.diagnostics.front().message;
  std::vector<Phrase> all;
  for (const Sentence& sentence : problem.sentences)
    all.insert(all.end(), sentence.phrases.begin(), sentence.phrases.end());
  return joined(all, problem.names);
}

// The goals, "find …" or "prove …", one after the other.
inline std::string asked(const std::string& text) {
  const ProblemText problem = parse_problem(text);
  if (!problem.diagnostics.empty()) return "mistake: " + problem.diagnostics.front().message;
  std::string all;
  for (const Goal& goal : problem.goals) {
    all += (all.empty() ? "" : " | ") + std::string(goal.kind == GoalKind::find ? "find " : "prove ") +
           joined(goal.claims, problem.names);
  }
  return all;
}

inline std::vector<Diagnostic> mistakes(const std::string& text) {
  return parse_problem(text).diagnostics;
}

}  // namespace prover
