#include "prover/language/grammar_words.hpp"

#include <algorithm>
#include <array>

namespace prover::grammar {

namespace {

// Blanks beyond the ASCII ones: no-break, thin, figure and zero-width spaces, the byte order mark, soft
// hyphen.
constexpr std::array<std::string_view, 10> wide_blanks = {"\u00A0", "\u2002", "\u2003", "\u2007", "\u2009",
                                                          "\u200A", "\u200B", "\u202F", "\u2060", "\uFEFF"};

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::string_view rest(const char* begin, const char* end) {
  return {begin, static_cast<std::size_t>(end - begin)};
}

// The end of `word` at `begin`, or null.
const char* match_word(std::string_view word, const char* begin, const char* end) {
  const std::string_view text = rest(begin, end);
  if (text.size() < word.size()) return nullptr;
  for (std::size_t i = 0; i < word.size(); ++i) {
    if (lower(text[i]) != word[i]) return nullptr;
  }
  if (text.size() > word.size() && is_letter(word.back()) && is_letter(text[word.size()])) return nullptr;
  return begin + word.size();
}

template <class Words>
const char* match_any(const Words& words, const char* begin, const char* end) {
  for (const std::string_view word : words) {
    if (const char* after = match_word(word, begin, end)) return after;
  }
  return nullptr;
}

const char* match_choice(std::string_view choice, const char* begin, const char* end) {
  static constexpr std::array<std::string_view, 3> articles = {"the", "an", "a"};
  static constexpr std::array<std::string_view, 3> copulas = {"is", "are", "be"};
  if ((choice == "a" || choice == "is") && (rest(begin, end).starts_with("AN") || rest(begin, end).starts_with("BE")))
    return nullptr;  // segments
  if (choice == "a") {
    // "A" is an article before a small letter; before a capital it is a point.
    const char* after = match_any(articles, begin, end);
    if (after == nullptr || *begin != 'A' || after != begin + 1) return after;
    const char* next = skip_blanks(after, end);
    return next != end && *next >= 'a' && *next <= 'z' ? after : nullptr;
  }
  if (choice == "is") return match_any(copulas, begin, end);
  return match_word(choice, begin, end);
}

std::string_view take_until(std::string_view& text, char separator) {
  const std::size_t cut = text.find(separator);
  const std::string_view head = text.substr(0, cut);
  text.remove_prefix(cut == std::string_view::npos ? text.size() : cut + 1);
  return head;
}

}  // namespace

const char* skip_blanks(const char* begin, const char* end) {
  while (begin != end) {
    const char c = *begin;
    if (c == ' ' || c == '\t' || c == '\r' || c == '\n') {
      ++begin;
      continue;
    }
    if (static_cast<unsigned char>(c) < 0x80U) break;
    const std::string_view text = rest(begin, end);
    const auto* wide = std::find_if(wide_blanks.begin(), wide_blanks.end(),
                                    [&](std::string_view blank) { return text.starts_with(blank); });
    if (wide == wide_blanks.end()) break;
    begin += wide->size();
  }
  return begin;
}

const char* match_bare(std::string_view choices, const char* begin, const char* end) {
  while (!choices.empty()) {
    if (const char* after = match_choice(take_until(choices, '|'), begin, end)) return after;
  }
  return nullptr;
}

const char* match_words(std::string_view pattern, const char* begin, const char* end, Trail& trail) {
  const char* place = begin;
  while (!pattern.empty()) {
    std::string_view word = take_until(pattern, ' ');
    const bool optional = word == "a" || word.ends_with('?');
    if (word.ends_with('?')) word.remove_suffix(1);
    const char* after = match_bare(word, place, end);
    if (after != nullptr) {
      place = skip_blanks(after, end);
    } else if (!optional) {
      trail.note(place, word);
      return nullptr;
    }
  }
  return place;
}

const char* match_sign(std::string_view sign, const char* begin, const char* end, Trail& trail) {
  if (rest(begin, end).starts_with(sign)) return skip_blanks(begin + sign.size(), end);
  trail.note(begin, sign);
  return nullptr;
}

}  // namespace prover::grammar
