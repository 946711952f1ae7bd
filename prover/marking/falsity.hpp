// Why a line is false: a figure that breaks it, the value that it should have, the classic mistake that leads to it.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/marking/grounds.hpp"
#include "prover/marking/links.hpp"
#include "prover/rule/mistakes.hpp"

namespace prover {

struct InFigures {
  std::vector<std::size_t> holds, breaks;  // indices into the figures
};
InFigures in_figures(const Phrase& claim, const std::vector<Sketch>& figures);

// "70°": what the left side of "∠KLP = 60°" is by all that follows; nothing where it is not forced.
std::optional<std::string> right_value(const Phrase& claim, const Ground& ground);

// The mistake by which the claim would follow from the givens and the lines before. `named`: rules that the reason names;
// only mistakes that are taken for one of them are tried, and all of them where there is none. `trials`: so
// many more may be tried; goes down.
struct MistakeMade {
  std::string id, name;
  std::string missing;  // what would have to be known
  std::string hint;     // a question that leads to it
};
std::optional<MistakeMade> mistake_behind(const Phrase& claim, const std::vector<Phrase>& before, const std::vector<bool>& named,
                                          const Statement& statement, const std::vector<Sketch>& figures,
                                          const AttemptOptions& options, const Budget& budget, int& trials);

}  // namespace prover
