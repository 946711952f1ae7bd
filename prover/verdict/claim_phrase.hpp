// A form said as a phrase: what was derived as an equation becomes a claim or a given that a person can read and paste.
#pragma once
#include <optional>

#include "prover/fact/unknown.hpp"

namespace prover {

// Sizes of angles, lengths and unknown numbers; parallel and perpendicular lines. Nothing for other facts and for forms
// that mix them.
std::optional<Phrase> claim_phrase(const Form& form, const UnknownTable& unknowns);

}  // namespace prover
