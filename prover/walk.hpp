// The walk as far as the verdict: text, statement, proofs. What `prove`, `mark` and `hint` go on from.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/prove.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

struct Walked {
  ProblemText text;
  std::vector<Statement> statements;  // one for each case of the words; none when the text has mistakes
  AttemptOptions options;             // what may be cited; without the theorem that the claim merely states
  std::vector<Solved> solved;         // by statement
  std::vector<std::string> set_aside; // that theorem, by id, where the claim can be proved without it
  std::string states;                 // the same, whether it can or not; empty where the claim says more than a theorem
  Answer answer;                      // with verdict and proofs, without further evidence; all diagnostics
  StageTimes times;
  double sketch_ms = 0;
  bool ended = false;                 // a mistake: nothing was tried, or an added line cannot be drawn
};

// The rules named by `ids` that do not exist become diagnostics of the answer.
std::optional<RuleId> named_rule(const std::string& id, const Catalogue& catalogue, std::vector<Diagnostic>& diagnostics);

// Of what may be cited all that is `rules`, but for givens, additions and mere wording: without them nothing can be written down.
void take_away(const std::vector<bool>& rules, const Catalogue& catalogue, std::vector<bool>& allowed);

Walked walk(std::string_view source, const Catalogue& catalogue, const ProveOptions& options);
// The same for a text that has been read, perhaps with more added to it.
Walked walk(ProblemText text, const Catalogue& catalogue, const ProveOptions& options);

}  // namespace prover
