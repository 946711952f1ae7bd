#include "prover/base/source.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace prover {

namespace {

// Longer lines are cut to a window round the mistake; counted in code points.
constexpr std::size_t window = 100;
constexpr std::size_t before_caret = 60;

bool continues(char c) {
  return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

std::size_t code_points(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return !continues(c); }));
}

// Accents that sit on the letter before them (as in "KL̂M") take no column on the screen.
std::size_t screen_columns(std::string_view text) {
  std::size_t columns = code_points(text);
  for (std::size_t i = 0; i + 1 < text.size(); ++i) {
    const auto first = static_cast<unsigned char>(text[i]), second = static_cast<unsigned char>(text[i + 1]);
    if (first == 0xCC || (first == 0xCD && second < 0xB0)) --columns;
  }
  return columns;
}

// The byte offset of the code point number `count` (or the end of the text).
std::size_t skip(std::string_view text, std::size_t count) {
  std::size_t at = 0;
  while (at < text.size() && count > 0) {
    ++at;
    while (at < text.size() && continues(text[at])) ++at;
    --count;
  }
  return at;
}

std::string_view line_around(std::string_view text, std::size_t offset) {
  const std::size_t newline = offset == 0 ? std::string_view::npos : text.rfind('\n', offset - 1);
  const std::size_t begin = newline == std::string_view::npos ? 0 : newline + 1;
  const std::size_t end = std::min(text.find('\n', begin), text.size());
  std::string_view line = text.substr(begin, end - begin);
  if (line.ends_with('\r')) line.remove_suffix(1);
  return line;
}

// Control characters would move the caret or the terminal; they are shown as blanks.
std::string printable(std::string_view line) {
  std::string shown(line);
  for (char& c : shown) {
    if (static_cast<unsigned char>(c) < 0x20U || c == 0x7F) c = ' ';
  }
  return shown;
}

const char* word_for(Severity severity) {
  switch (severity) {
    case Severity::error:
      return "error";
    case Severity::warning:
      return "warning";
    case Severity::note:
      return "note";
  }
  return "error";
}

}  // namespace

LineColumn line_column(std::string_view text, std::size_t offset) {
  offset = std::min(offset, text.size());
  const std::string_view before = text.substr(0, offset);
  const std::size_t newline = before.rfind('\n');
  const std::size_t begin = newline == std::string_view::npos ? 0 : newline + 1;
  return {static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')) + 1,
          code_points(before.substr(begin)) + 1};
}

std::string render(const Diagnostic& diagnostic, std::string_view file, std::string_view text) {
  const std::size_t offset = std::min(diagnostic.span.begin, text.size());
  const LineColumn place = line_column(text, offset);
  std::string result = fmt::format("{}:{}:{}: {}: {}\n", file, place.line, place.column,
                                   word_for(diagnostic.severity), diagnostic.message);
  std::string_view line = line_around(text, offset);
  std::size_t caret = place.column - 1;
  std::string lead, tail;
  if (code_points(line) > window) {
    if (caret > before_caret) {
      line.remove_prefix(skip(line, caret - before_caret));
      caret = before_caret;
      lead = "… ";
    }
    if (const std::size_t cut = skip(line, window); cut < line.size()) {
      line = line.substr(0, cut);
      tail = " …";
    }
  }
  if (!line.empty()) {
    const std::size_t indent = screen_columns(lead) + screen_columns(line.substr(0, skip(line, caret)));
    result += fmt::format("    {}{}{}\n    {}^\n", lead, printable(line), tail, std::string(indent, ' '));
  }
  if (!diagnostic.way_out.empty()) result += fmt::format("  try: {}\n", diagnostic.way_out);
  return result;
}

bool has_error(const std::vector<Diagnostic>& diagnostics) {
  return std::any_of(diagnostics.begin(), diagnostics.end(),
                     [](const Diagnostic& d) { return d.severity == Severity::error; });
}

}  // namespace prover
