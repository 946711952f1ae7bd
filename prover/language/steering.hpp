// The lines that steer the work: `taught:` and `figure:`.
#pragma once
#include <string_view>

#include "prover/language/draft.hpp"
#include "prover/language/syntax.hpp"

namespace prover {

Taught read_taught(const Node& line, std::string_view text);
void read_figure(const Node& line, std::string_view text, Draft& draft, ProblemText& problem);

}  // namespace prover
