// How pupils write what a book writes otherwise: "m∠KLM", "2 x 40", "70o", "III" for similar, abbreviations, capitals
// throughout. Rewritten for the grammar; what was written stays known (rewritten.hpp).
#pragma once
#include "prover/language/rewritten.hpp"

namespace prover {

// `points`: the letters of the figure, to tell them from words in capitals.
void spell_out(Rewritten& line, const std::string& points);

}  // namespace prover
