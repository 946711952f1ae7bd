// What stands in an `add:` line and draws nothing: notes in brackets, another way to draw, what is to be noticed. It
// must not be dropped in silence, because it may be what the writer relies on.
#include <algorithm>
#include <array>
#include <string>

#include "prover/language/diagnose.hpp"

namespace prover {

namespace {

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// Where this small word stands as a word, not inside another.
std::size_t find_word(std::string_view text, std::string_view word) {
  for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
    const bool begins = at == 0 || !is_letter(text[at - 1]);
    const bool ends = at + word.size() >= text.size() || !is_letter(text[at + word.size()]);
    if (begins && ends) return at;
  }
  return std::string_view::npos;
}

std::string quoted(std::string_view text) {
  return "\"" + std::string(text) + "\"";
}

Diagnostic alternative(std::string_view text, std::size_t offset) {
  return {Severity::error, {offset, offset + text.size()}, "one way of drawing at a time: which of the two?",
          "leave " + quoted(text) + " out, or ask again with that drawing alone"};
}

}  // namespace

std::optional<Diagnostic> draws_nothing(std::string_view sentence, std::size_t offset) {
  const std::size_t open = sentence.find('(');
  if (open != std::string_view::npos) {
    const std::size_t close = std::min(sentence.find(')', open), sentence.size() - 1);
    const std::string_view bracket = sentence.substr(open, close - open + 1);
    const std::string_view inside = bracket.substr(1);
    if (find_word(inside, "or") == 0) return alternative(bracket, offset + open);
    const bool words = std::count_if(inside.begin(), inside.end(), [](char c) { return c >= 'a' && c <= 'z'; }) > 3;
    if (words && find_word(inside, "order") == std::string_view::npos &&
        find_word(inside, "marks") == std::string_view::npos) {
      return Diagnostic{Severity::error,
                        {offset + open, offset + open + bracket.size()},
                        "what stands in brackets draws nothing",
                        "leave " + quoted(bracket) + " out: what is true of the new line is for the proof to find"};
    }
  }
  if (const std::size_t at = find_word(sentence, "or"); at != std::string_view::npos)
    return alternative(sentence.substr(at), offset + at);
  static constexpr std::array<std::string_view, 6> remarks = {"note", "Note", "notice", "Notice", "observe", "Observe"};
  for (const std::string_view remark : remarks) {
    if (find_word(sentence, remark) != 0) continue;
    return Diagnostic{Severity::error,
                      {offset, offset + sentence.size()},
                      "this draws nothing",
                      "leave " + quoted(sentence) + " out: what is true of the figure is for the proof to find"};
  }
  return std::nullopt;
}

}  // namespace prover
