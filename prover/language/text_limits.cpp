#include "prover/language/text_limits.hpp"

#include <utf8proc.h>

namespace prover {

namespace {

constexpr std::size_t max_text = 1'000'000;
constexpr std::size_t max_sentence = 50'000;
constexpr std::size_t max_nesting = 50;

}  // namespace

std::optional<std::size_t> first_bad_byte(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    utf8proc_int32_t code = 0;
    const auto length = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + at,
                                         static_cast<utf8proc_ssize_t>(text.size() - at), &code);
    if (length <= 0 || code == 0) return at;
    at += static_cast<std::size_t>(length);
  }
  return std::nullopt;
}

std::optional<Diagnostic> not_a_text(std::string_view text) {
  if (text.size() > max_text) {
    return Diagnostic{
        Severity::error, {0, 0}, "the text is longer than a million bytes", "split it into several problems"};
  }
  if (const auto bad = first_bad_byte(text)) {
    return Diagnostic{Severity::error,
                      {*bad, *bad + 1},
                      "this is not a text: a byte here is not UTF-8",
                      "save the file as plain text, in UTF-8"};
  }
  return std::nullopt;
}

std::optional<Diagnostic> too_much(std::string_view sentence, Span span) {
  if (sentence.size() > max_sentence) {
    return Diagnostic{Severity::error, span,
                      "this sentence is longer than " + std::to_string(max_sentence) + " bytes",
                      "split it into several"};
  }
  std::size_t depth = 0;
  for (std::size_t i = 0; i < sentence.size(); ++i) {
    if (sentence[i] == '(' && ++depth > max_nesting) {
      return Diagnostic{Severity::error,
                        {span.begin + i, span.begin + i + 1},
                        "brackets are nested more than " + std::to_string(max_nesting) + " deep",
                        "multiply some of them out"};
    }
    if (sentence[i] == ')' && depth > 0) --depth;
  }
  return std::nullopt;
}

std::set<std::string> capitals_of(std::string_view text) {
  std::set<std::string> names;
  const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
  const auto small = [](char c) { return c >= 'a' && c <= 'z'; };
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!capital(text[i]) || (i + 1 < text.size() && small(text[i + 1]))) continue;
    std::string name(1, text[i]);
    names.insert(name);
    for (std::size_t k = i + 1; k < text.size() && text[k] >= '0' && text[k] <= '9'; ++k) name += text[k];
    names.insert(name);
  }
  return names;
}

}  // namespace prover
