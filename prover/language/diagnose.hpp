// A sentence that the grammar could not read becomes a diagnostic: a finger on the word, and what could stand
// there instead.
#pragma once
#include <optional>
#include <string_view>

#include "prover/base/source.hpp"
#include "prover/language/trail.hpp"

namespace prover {

Diagnostic diagnose(std::string_view sentence, std::size_t offset, const Trail& trail);

// A note, or a second way of drawing, in an `add:` line (drawing_remarks.cpp).
std::optional<Diagnostic> draws_nothing(std::string_view sentence, std::size_t offset);

}  // namespace prover
