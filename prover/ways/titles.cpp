#include "prover/ways/titles.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "prover/rule/ideas.hpp"

namespace prover {

namespace {

std::string listed(const std::vector<std::string>& items) {
  std::string text;
  for (std::size_t i = 0; i < items.size(); ++i)
    text += (i == 0 ? "" : i + 1 == items.size() ? " and " : ", ") + items[i];
  return text;
}

std::string with_lines(std::string title, const AnswerProof& proof) {
  std::vector<std::string> lines;
  for (const std::string& line : proof.constructions)
    if (line.starts_with("Join ")) lines.push_back(line.substr(5));
  return lines.empty() ? title : title + ", joining " + listed(lines);
}

// Everything cited, but for what is not counted either.
std::string in_full(const AnswerProof& proof, const Catalogue& catalogue, bool small_change) {
  std::vector<std::string> titles;
  for (const std::string& id : proof.rules) {
    const auto rule = catalogue.find(id);
    if (!rule) continue;
    const RuleKind kind = catalogue[*rule].kind;
    if (catalogue[*rule].free_step || kind == RuleKind::hypothesis || kind == RuleKind::definition ||
        kind == RuleKind::construction)
      continue;
    if (!small_change && idea_table().role(catalogue[*rule]) == IdeaRole::small_change) continue;
    if (std::find(titles.begin(), titles.end(), catalogue[*rule].title) == titles.end())
      titles.push_back(catalogue[*rule].title);
  }
  return titles.empty() ? proof.title : with_lines("by " + listed(titles), proof);
}

// The reason of its first step that no other one of these has; small change only if there is nothing else.
std::string with_own_place(const std::string& title, const AnswerProof& proof, const std::vector<AnswerProof*>& all,
                           const Catalogue& catalogue) {
  for (const bool small_change : {false, true})
    for (const AnswerStep& step : proof.steps) {
      const auto rule = catalogue.find(step.rule);
      if (!rule || (!small_change && idea_table().role(catalogue[*rule]) == IdeaRole::small_change)) continue;
      const bool shared = std::any_of(all.begin(), all.end(), [&](const AnswerProof* other) {
        return other != &proof && std::any_of(other->steps.begin(), other->steps.end(),
                                              [&](const AnswerStep& s) { return s.reason == step.reason; });
      });
      if (!shared && !step.reason.empty()) return title + " (" + step.reason + ")";
    }
  return title;
}

}  // namespace

void tell_apart(std::span<AnswerProof> proofs, const Catalogue& catalogue) {
  std::set<int> ideas;
  for (AnswerProof& proof : proofs)
    proof.title = ideas.insert(proof.idea).second ? with_lines(proof.title, proof) : in_full(proof, catalogue, true);
  // Of those with one title all but the first get another one.
  const auto among_equals = [&](auto&& rename) {
    std::map<std::string, std::vector<AnswerProof*>> called;
    for (AnswerProof& proof : proofs) called[proof.title].push_back(&proof);
    for (const auto& [title, same] : called)
      for (std::size_t i = 1; i < same.size(); ++i) same[i]->title = rename(*same[i], same);
  };
  among_equals([&](const AnswerProof& proof, const std::vector<AnswerProof*>& same) {
    const std::string title = in_full(proof, catalogue, false);
    return title == in_full(*same[0], catalogue, false) ? with_own_place(proof.title, proof, same, catalogue) : title;
  });
  among_equals([&](const AnswerProof& proof, const std::vector<AnswerProof*>& same) {
    return with_own_place(proof.title, proof, same, catalogue);
  });
  std::map<std::string, int> times;  // last resort
  for (AnswerProof& proof : proofs)
    if (const int n = ++times[proof.title]; n > 1) proof.title += " (" + std::to_string(n) + ")";
}

}  // namespace prover
