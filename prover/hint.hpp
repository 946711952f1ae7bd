// The walk from a problem, and from what a pupil has done of it, to ladders of hints. Opens no files, prints nothing.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "prover/hints/ladder.hpp"
#include "prover/marking/judgement.hpp"
#include "prover/prove.hpp"

namespace prover {

struct HintOptions {
  ProveOptions prove;
  std::string done;          // the pupil's lines, one a line, after those behind `work:`
  bool every_way = false;    // a ladder for each way to a claim
  std::optional<int> way;    // only that of this way, from 1
  bool worth = false;        // how many of the ways are still open after each rung
};

struct Hints {
  Answer answer;             // the verdict, and mistakes of the input
  std::vector<Ladder> ladders;  // one for each claim and case, or for each way to them; none where nothing is proved
  std::vector<JudgedLine> lines;  // the pupil's
  bool complete = false;     // the pupil's lines reach what is asked: nothing is left to hint at
};

Hints hint(std::string_view text, const Catalogue& catalogue, const HintOptions& options = {});

}  // namespace prover
