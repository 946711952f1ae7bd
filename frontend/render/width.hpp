// How wide a text stands on a screen of equal columns, and breaking it into lines. Columns, not bytes or code
// points: "∠KL̂M" has combining marks, and some signs take two columns.
#pragma once
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace frontend {

inline constexpr std::size_t page_width = 100;  // fixed: the same input gives the same bytes on every terminal

std::size_t display_width(std::string_view text);
std::string padded(std::string_view text, std::size_t width);  // with spaces on the right

// Broken at spaces into lines of at most `width`; a word that is longer stands alone. Never empty.
std::vector<std::string> wrapped(std::string_view text, std::size_t width);

// The same, but broken after commas where that will do: a formula inside a reason stays in one piece.
std::vector<std::string> wrapped_at_commas(std::string_view text, std::size_t width);

}  // namespace frontend
