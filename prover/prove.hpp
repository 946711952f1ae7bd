// The whole walk: text in, answer out. Opens no files, prints nothing.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/rule/rule.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

// The k best ideas instead of one proof.
struct WaysOptions {
  std::size_t most = 6;            // ideas for each claim
  std::size_t most_alike = 2;      // of ideas that cite the same theorems, at other places
  std::size_t most_steps = 0;      // of a proof; 0: as many as it takes
  std::vector<std::string> with;   // rules that every proof must cite
};

struct ProveOptions {
  std::string measure = "classroom";     // or "fewest-steps", "early" (proof/weights.hpp)
  std::vector<std::string> taught;       // each as behind `taught:`; empty: what the problem says, or everything
  std::vector<std::string> without;      // rules left out, with all that rests on them
  std::vector<std::string> without_only; // rules left out, these alone
  Register wording = Register::plain;
  bool unfold = false;                   // the proof of a teacher's own rule in the place of its citation
  bool solvable = false;                 // evidence in full: also what is superfluous
  std::optional<WaysOptions> ways;
  Budget budget;
};

Answer prove(std::string_view text, const Catalogue& catalogue, const ProveOptions& options = {});

}  // namespace prover
