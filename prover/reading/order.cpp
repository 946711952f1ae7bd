#include "prover/reading/order.hpp"

#include <algorithm>
#include <cassert>
#include <tuple>

#include "prover/algebra/linear_system.hpp"

namespace prover {

namespace {

bool shares_unknown(const Instance& a, const Instance& b) {
  for (const Form& f : a.conclusions)
    for (const auto& [u, c] : f.terms)
      for (const auto* forms : {&b.conclusions, &b.premises})
        for (const Form& g : *forms)
          if (!g.coefficient(u).is_zero()) return true;
  return false;
}

}  // namespace

std::vector<Instance> order_for_reading(std::vector<Instance> members) {
  std::vector<Instance> ordered;
  LinearSystem system;
  auto say = [&](std::size_t i) {
    for (const Form& f : members[i].conclusions) system.add(f);
    ordered.push_back(std::move(members[i]));
    members.erase(members.begin() + static_cast<std::ptrdiff_t>(i));
  };
  for (std::size_t i = 0; i < members.size();) {
    if (members[i].hypothesis >= 0)
      say(i);
    else
      ++i;
  }
  while (!members.empty()) {
    std::size_t best = members.size();
    std::tuple<bool, bool, std::size_t, std::size_t> best_score;
    for (std::size_t i = 0; i < members.size(); ++i) {
      const Instance& m = members[i];
      if (!std::all_of(m.premises.begin(), m.premises.end(), [&](const Form& p) { return system.entails(p); }))
        continue;
      std::size_t open = 99, terms = 99;  // unknowns that the line would leave open, and that it speaks of
      for (const Form& f : m.conclusions) {
        open = std::min(open, system.reduce(f).terms.size());
        terms = std::min(terms, f.terms.size());
      }
      const bool linked = !ordered.empty() && ordered.back().hypothesis < 0 && shares_unknown(ordered.back(), m);
      // Values as soon as they can be had; among open equations those between two things before sums.
      const std::tuple<bool, bool, std::size_t, std::size_t> score{open > 1, open > 1 ? terms > 2 : !linked, open, linked ? 0 : 1};
      if (best == members.size() || score < best_score) {
        best = i;
        best_score = score;
      }
    }
    assert(best < members.size() && "the members of a proof must be derivable in some order");
    say(best);
  }
  return ordered;
}

}  // namespace prover
