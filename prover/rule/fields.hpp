// The outer shape of a file of a rule, a course or a mark scheme: a header line "rule ID", "course ID" or "scheme ID" and
// fields below it, each a word and a value. A value goes on over lines that are indented deeper than the fields. Values keep the length they have in the
// file (line breaks and comments become blanks), so that an offset into a value is an offset into the file
// and every mistake, however deep, is shown in its place.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/base/source.hpp"

namespace prover {

struct Field {
  std::string_view name;
  Span name_span;
  std::string value;      // as long as its stretch of the file
  std::size_t begin = 0;  // where the value begins in the file
  Span span() const { return {begin, begin + value.size()}; }
};

// The header comes first, as a field named "rule", "course" or "scheme".
std::vector<Field> split_fields(std::string_view text);

// Small letters, digits and hyphens, as in "vertical-angles".
bool is_rule_name(std::string_view word);

// The text between the quotes, on one line, with a mistake when there is none. `begin`, where it starts, keeps
// further mistakes in their place as long as the text stands on one line.
std::string quoted_text(const Field& field, std::vector<Diagnostic>& mistakes, std::size_t* begin = nullptr);

std::string one_line(std::string_view value);  // runs of blanks become one, none at the ends

}  // namespace prover
