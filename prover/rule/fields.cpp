#include "prover/rule/fields.hpp"

#include <algorithm>

namespace prover {
namespace {

bool is_blank(char c) {
  return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

// The line without its comment. A '#' inside a quoted text is part of the text; `quoted` tells whether the
// line begins inside one and is left telling whether it ends inside one.
std::size_t length_without_comment(std::string_view line, bool& quoted) {
  std::size_t length = line.size();
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"') quoted = !quoted;
    if (line[i] == '#' && !quoted && (i == 0 || is_blank(line[i - 1]))) {
      length = i;
      break;
    }
  }
  while (length > 0 && is_blank(line[length - 1])) --length;
  return length;
}

}  // namespace

std::vector<Field> split_fields(std::string_view text) {
  std::vector<Field> fields;
  std::size_t field_indent = 0;  // of the field that is open
  bool quoted = false;
  for (std::size_t start = 0; start < text.size();) {
    const std::size_t end = std::min(text.find('\n', start), text.size());
    const std::string_view whole = text.substr(start, end - start);
    std::size_t indent = 0;
    while (indent < whole.size() && is_blank(whole[indent])) ++indent;
    const bool continues = !fields.empty() && fields.back().name != "rule" && fields.back().name != "course" &&
                           fields.back().name != "scheme" && indent > field_indent;
    if (!continues) quoted = false;  // a quote left open ends with its field
    const std::size_t length = length_without_comment(whole, quoted);
    if (indent < length) {
      const std::string_view line = whole.substr(0, length);
      if (continues) {
        Field& field = fields.back();
        field.value.append(start + indent - (field.begin + field.value.size()), ' ');
        field.value.append(line.substr(indent));
      } else {
        std::size_t word_end = indent;
        while (word_end < length && !is_blank(line[word_end])) ++word_end;
        std::size_t value = word_end;
        while (value < length && is_blank(line[value])) ++value;
        fields.push_back({line.substr(indent, word_end - indent),
                          {start + indent, start + word_end},
                          std::string(line.substr(value)),
                          start + value});
        field_indent = indent;
      }
    }
    start = end + 1;
  }
  return fields;
}

bool is_rule_name(std::string_view word) {
  const auto good = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
  return !word.empty() && word.front() != '-' && word.back() != '-' && std::all_of(word.begin(), word.end(), good);
}

std::string quoted_text(const Field& field, std::vector<Diagnostic>& mistakes, std::size_t* begin) {
  const auto mistake = [&](std::string message, std::string way_out) {
    mistakes.push_back({Severity::error, field.span(), std::move(message), std::move(way_out)});
  };
  const std::string& v = field.value;
  if (v.size() < 2 || v.front() != '"' || v.back() != '"' || std::count(v.begin(), v.end(), '"') != 2) {
    mistake("`" + std::string(field.name) + "` holds a text between quotes", "write it as \"…\"");
    return {};
  }
  if (begin) *begin = field.begin + 1;
  const std::string text = one_line(std::string_view(v).substr(1, v.size() - 2));
  if (text.empty()) mistake("there is nothing between the quotes", "write the text, or leave the field out");
  return text;
}

std::string one_line(std::string_view value) {
  std::string out;
  for (const char c : value) {
    if (!is_blank(c))
      out += c;
    else if (!out.empty() && out.back() != ' ')
      out += ' ';
  }
  if (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

}  // namespace prover
