// The walk of a pupil's work: text in, judgement out. Opens no files, prints nothing.
#pragma once
#include <string_view>

#include "prover/language/work.hpp"
#include "prover/marking/judgement.hpp"
#include "prover/prove.hpp"

namespace prover {

// `problem`: its text, with or without `work:` lines; `further_work`: lines that follow those. Mistakes of the problem itself
// are in `problem.diagnostics` of the judgement, and then no line is judged.
Judgement mark(std::string_view problem, std::string_view further_work, const Catalogue& catalogue, const ProveOptions& options = {});

}  // namespace prover
