// What a text and a sentence may be: limits that keep hostile or broken input from costing time, and a look at the letters
// that a text uses.
#pragma once
#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <string_view>

#include "prover/base/source.hpp"

namespace prover {

// The first byte that is no text, if there is one: a NUL, or what is not UTF-8.
std::optional<std::size_t> first_bad_byte(std::string_view text);
std::optional<Diagnostic> not_a_text(std::string_view text);  // a million bytes, bad bytes
std::optional<Diagnostic> too_much(std::string_view sentence, Span span);  // fifty thousand bytes, brackets in brackets

// Names of points, and whatever else looks like one: "KLM", "K1", not the K of "Keep".
std::set<std::string> capitals_of(std::string_view text);

}  // namespace prover
