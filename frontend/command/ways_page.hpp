// The ways to each claim on a page: every idea with its lightest proof and its variants, a table that compares them, and
// how complete the list is.
#pragma once
#include "frontend/command/answer_page.hpp"

namespace frontend {

void add_ways(const prover::Answer& answer, const prover::Catalogue& catalogue, const PageOptions& options,
              Document& document);

}  // namespace frontend
