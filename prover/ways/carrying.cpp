#include "prover/ways/carrying.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "prover/ways/form_text.hpp"

namespace prover {

namespace {

std::vector<Form> reduced(const std::vector<Form>& forms, const LinearSystem& by) {
  std::vector<Form> left;
  for (const Form& form : forms)
    if (Form f = by.reduce(form); !f.is_zero()) left.push_back(f.normalised());
  std::sort(left.begin(), left.end(), [](const Form& a, const Form& b) { return text_of(a) < text_of(b); });
  left.erase(std::unique(left.begin(), left.end()), left.end());
  return left;
}

bool follow(const std::vector<Form>& forms, const LinearSystem& from) {
  return std::all_of(forms.begin(), forms.end(), [&](const Form& f) { return from.entails(f); });
}

}  // namespace

CarryingProblem carrying_problem(const GoalSearch& search, const Catalogue& catalogue) {
  CarryingProblem out;
  const auto& candidates = search.problem.candidates;
  const IdeaTable& table = idea_table();
  std::vector<int> small, carries;
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    const Rule& rule = catalogue[search.instances[i]->rule];
    (table.role(rule) == IdeaRole::small_change ? small : carries).push_back(static_cast<int>(i));
  }
  const auto at = [&](int i) -> const Candidate& { return candidates[static_cast<std::size_t>(i)]; };
  LinearSystem given;  // what the givens and small change give
  for (const int i : small) {
    if (!at(i).premises.empty()) continue;
    for (const Form& f : at(i).conclusions) {
      given.add(f);
      if (search.instances[static_cast<std::size_t>(i)]->hypothesis < 0) out.small_change.add(f);
    }
  }
  std::vector<int> waiting;
  std::vector<bool> fired(candidates.size(), false);
  for (bool changed = true; changed;) {
    changed = false;
    waiting.clear();
    for (const int i : small) {
      if (fired[static_cast<std::size_t>(i)]) continue;
      if (!follow(at(i).premises, given)) {
        waiting.push_back(i);
        continue;
      }
      fired[static_cast<std::size_t>(i)] = true;
      for (const Form& f : at(i).conclusions) changed |= given.add(f) == LinearSystem::Added::new_row;
    }
  }
  for (const int i : small)
    if (!at(i).premises.empty())
      if (std::vector<Form> says = reduced(at(i).conclusions, out.small_change); !says.empty())
        out.small_steps.push_back({reduced(at(i).premises, out.small_change), std::move(says), 0});
  out.free = small;
  out.problem.goal = reduced(search.problem.goal, given);
  out.free_suffices = !search.problem.goal.empty() && out.problem.goal.empty();

  // Facts: one for each kind, conclusions and premises modulo small change. In the order of the goal search, so that
  // premises still come first.
  struct Entry {
    int first;  // its first candidate in the goal search
    Candidate candidate;
    int fact;
  };
  std::vector<Entry> entries;  // entry i is fact i, then come those that are no facts
  std::map<std::tuple<std::string, std::string, std::string>, std::size_t> known;
  for (const int i : carries) {
    std::vector<Form> news = reduced(at(i).conclusions, given);
    if (news.empty()) {
      out.free.push_back(i);
      continue;
    }
    std::vector<Form> premises = reduced(at(i).premises, out.small_change);
    std::vector<Form> conclusions = reduced(at(i).conclusions, out.small_change);
    const std::string kind = table.fact(catalogue[search.instances[static_cast<std::size_t>(i)]->rule]);
    const auto [place, fresh] = known.try_emplace({kind, text_of(premises), text_of(conclusions)}, out.facts.size());
    if (fresh) {
      entries.push_back({i, {reduced(at(i).premises, given), std::move(news), at(i).weight}, static_cast<int>(out.facts.size())});
      out.facts.push_back({kind, std::move(premises), std::move(conclusions), {}, -1});
    }
    out.facts[place->second].members.push_back(i);
    std::int64_t& weight = entries[place->second].candidate.weight;
    weight = std::min(weight, at(i).weight);
  }
  for (const int i : waiting)
    if (std::vector<Form> news = reduced(at(i).conclusions, given); !news.empty())
      entries.push_back({i, {reduced(at(i).premises, given), std::move(news), at(i).weight}, -1});
  std::sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.first < b.first; });
  for (Entry& entry : entries) {
    if (entry.fact >= 0) out.facts[static_cast<std::size_t>(entry.fact)].candidate = static_cast<int>(out.fact.size());
    out.problem.candidates.push_back(std::move(entry.candidate));
    out.fact.push_back(entry.fact);
  }
  std::sort(out.free.begin(), out.free.end());
  return out;
}

std::vector<int> facts_said(const CarryingProblem& carrying, const std::vector<int>& members) {
  std::vector<int> facts;
  for (std::size_t f = 0; f < carrying.facts.size(); ++f) {
    const auto& said_by = carrying.facts[f].members;
    if (std::any_of(members.begin(), members.end(),
                    [&](int m) { return std::find(said_by.begin(), said_by.end(), m) != said_by.end(); }))
      facts.push_back(static_cast<int>(f));
  }
  return facts;
}

std::vector<int> facts_among(const CarryingProblem& carrying, const std::vector<int>& candidates) {
  std::vector<int> facts;
  for (const int c : candidates)
    if (const int f = carrying.fact[static_cast<std::size_t>(c)]; f >= 0) facts.push_back(f);
  std::sort(facts.begin(), facts.end());
  return facts;
}

}  // namespace prover
