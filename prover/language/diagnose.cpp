#include "prover/language/diagnose.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "prover/language/problem_text.hpp"

namespace prover {

namespace {

bool is_lower(char c) {
  return c >= 'a' && c <= 'z';
}
bool is_upper(char c) {
  return c >= 'A' && c <= 'Z';
}
bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
bool is_word(char c) {
  return is_lower(c) || is_upper(c) || c == '-' || static_cast<unsigned char>(c) >= 0x80U;
}

// "parallel|perpendicular" are two words; "is", "a" and the like explain nothing.
std::vector<std::string> words_of(const std::vector<std::string_view>& expected) {
  std::vector<std::string> words;
  for (std::string_view choices : expected) {
    while (!choices.empty()) {
      const std::size_t cut = choices.find('|');
      const std::string word(choices.substr(0, cut));
      choices.remove_prefix(cut == std::string_view::npos ? choices.size() : cut + 1);
      if (std::find(words.begin(), words.end(), word) == words.end()) words.push_back(word);
    }
  }
  return words;
}

std::string_view token_at(std::string_view sentence, std::size_t at) {
  std::size_t end = at;
  if (is_digit(sentence[at])) {
    while (end < sentence.size() && is_digit(sentence[end])) ++end;
  } else {
    while (end < sentence.size() && is_word(sentence[end])) ++end;
  }
  if (end == at) ++end;
  return sentence.substr(at, end - at);
}

// After "angle", "triangle" and the like, letters are points.
bool names_points(std::string_view before) {
  static constexpr std::array<std::string_view, 12> nouns = {
      "angle",   "triangle",      "line",  "ray",  "segment", "circle",
      "polygon", "quadrilateral", "chord", "side", "∠",       "△"};
  while (!before.empty() && before.back() == ' ') before.remove_suffix(1);
  return std::any_of(nouns.begin(), nouns.end(),
                     [&](std::string_view noun) { return before.ends_with(noun); });
}

constexpr std::string_view general_advice =
    "say one thing in a sentence, for example \"angle ABC = 40\", \"AB ∥ CD\" or \"D is on AC\"";

Diagnostic too_early(std::string_view sentence, std::size_t offset, const std::vector<std::string>& words) {
  std::size_t end = sentence.find_last_not_of(" \t\r\n");
  end = end == std::string_view::npos ? 0 : end;
  const char last = sentence.empty() ? ' ' : sentence[end];
  const Span place{offset + end, offset + end + 1};
  if (last == '=' || last == '+' || last == '-' || last == '<' || last == '>' || last == '/' || last == '*') {
    return {Severity::error, place, std::string("something is missing after \"") + last + "\"",
            "write a number, an angle or a length there"};
  }
  if (std::count(sentence.begin(), sentence.end(), '(') > std::count(sentence.begin(), sentence.end(), ')')) {
    return {Severity::error, place, "a bracket is not closed", "write \")\" where it ends"};
  }
  std::string way_out(general_advice);
  if (!words.empty() && words.size() <= 4) {
    way_out = "go on with ";
    for (std::size_t i = 0; i < words.size(); ++i) way_out += (i == 0 ? "\"" : ", \"") + words[i] + "\"";
  }
  return {Severity::error, place, "the sentence stops too early", way_out};
}

}  // namespace

Diagnostic diagnose(std::string_view sentence, std::size_t offset, const Trail& trail) {
  const std::size_t at =
      trail.furthest == nullptr ? 0 : static_cast<std::size_t>(trail.furthest - sentence.data());
  const std::vector<std::string> words = words_of(trail.expected);
  if (at >= sentence.size()) return too_early(sentence, offset, words);

  const std::string token(token_at(sentence, at));
  const Span place{offset + at, offset + at + token.size()};
  const auto expects = [&](std::string_view wanted) {
    return std::find(words.begin(), words.end(), wanted) != words.end();
  };
  const bool word = is_lower(token[0]) || (token.size() > 1 && is_upper(token[0]) && is_lower(token[1]));
  if (word) {
    const auto near = nearest_word(token, words);
    if (near && near->size() > 2 && token.size() > 2) {
      return {Severity::error, place, "\"" + token + "\" is not a word known here", "\"" + *near + "\""};
    }
    const bool small = std::all_of(token.begin(), token.end(), is_lower);
    static constexpr std::array<std::string_view, 10> plain = {"is", "are", "and", "with", "has",
                                                               "at", "of",  "in",  "the",  "to"};
    const bool plain_word = std::find(plain.begin(), plain.end(), token) != plain.end();
    if (small && !plain_word && token.size() <= 8 && names_points(sentence.substr(0, at))) {
      std::string capitals = token;
      for (char& c : capitals) c = static_cast<char>(c - 'a' + 'A');
      return {Severity::error, place, "points are capital letters; \"" + token + "\" is small",
              "\"" + capitals + "\""};
    }
    if (small && !plain_word && token.size() > 1 && token.size() <= 3 && expects("a small letter")) {
      return {Severity::error, place,
              "\"" + token +
                  "\" would be a product of unknowns; only sums and multiples of unknowns can be proved here",
              "use one letter for one unknown"};
    }
  }
  if (token == "=" || token == "<" || token == ">") {
    return {Severity::error, place, "\"" + token + "\" has no quantity before it that can be compared",
            "write an angle (\"angle ABC\"), a length (\"AB\") or a number on either side"};
  }
  std::string way_out(general_advice);
  std::vector<std::string> useful;
  for (const std::string& w : words) {
    if (w.size() > 1 && w != "is" && w != "a" && w != "the end of the sentence") useful.push_back(w);
  }
  if (!useful.empty() && useful.size() <= 4) {
    way_out = "here could stand ";
    for (std::size_t i = 0; i < useful.size(); ++i) way_out += (i == 0 ? "\"" : ", \"") + useful[i] + "\"";
  }
  return {Severity::error, place, "\"" + token + "\" is not understood here", way_out};
}

}  // namespace prover
