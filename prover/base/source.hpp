// Places in a text, and what is said about them. Mistakes are collected, all of a file at once, each with its
// place and a way out; nothing throws across rooms.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace prover {

// A stretch of a text: bytes [begin, end). Line and column are computed when a diagnostic is printed.
struct Span {
  std::size_t begin = 0;
  std::size_t end = 0;
  friend bool operator==(const Span&, const Span&) = default;
};

enum class Severity { error, warning, note };

struct Diagnostic {
  Severity severity = Severity::error;
  Span span;
  std::string message;  // one sentence without a full stop, lower case
  std::string way_out;  // what to write instead; may be empty
};

struct LineColumn {
  std::size_t line = 1;    // from 1
  std::size_t column = 1;  // from 1, in characters as a person counts them (code points), not bytes
};

LineColumn line_column(std::string_view text, std::size_t offset);

// As STYLE asks: "kite.aw:3:9: error: …", the line (shortened when very long), a caret under the place, "try: …".
std::string render(const Diagnostic& diagnostic, std::string_view file, std::string_view text);

bool has_error(const std::vector<Diagnostic>& diagnostics);

}  // namespace prover
