#include "prover/language/work_words.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace prover::work_words {

namespace {

bool is_letter(char c) {
  return is_small(c) || is_capital(c);
}
char lower(char c) {
  return is_capital(c) ? static_cast<char>(c - 'A' + 'a') : c;
}

std::size_t match_one(std::string_view text, std::size_t at, std::string_view words) {
  std::size_t i = at;
  for (std::size_t k = 0; k < words.size(); ++k) {
    if (words[k] == ' ') {
      const std::size_t next = skip_blanks(text, i);
      if (next == i) return 0;
      i = next;
      continue;
    }
    if (i >= text.size()) return 0;
    const bool first = k == 0 || words[k - 1] == ' ';
    if (first ? lower(text[i]) != words[k] : text[i] != words[k]) return 0;
    ++i;
  }
  if (i < text.size() && (is_letter(text[i]) || is_digit(text[i]))) return 0;
  return i;
}

constexpr std::array<std::string_view, 26> joining = {"=", "+", "-", "−", "–", "<", ">", "*", "/", "×", "÷", "·", "∥", "⊥", "⟂",
                                                      "≅", "≡", "~", "∼", "|||", "||", "‖", "≤", "≥", "°", ":"};

}  // namespace

bool is_small(char c) {
  return c >= 'a' && c <= 'z';
}
bool is_capital(char c) {
  return c >= 'A' && c <= 'Z';
}
bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

std::size_t skip_blanks(std::string_view text, std::size_t at) {
  while (at < text.size()) {
    if (text[at] == ' ' || text[at] == '\t' || text[at] == '\r' || text[at] == '\n') {
      ++at;
    } else if (text.substr(at).starts_with("\u00A0") || text.substr(at).starts_with("\u00AD")) {
      at += 2;
    } else if (text.substr(at).starts_with("\u2009") || text.substr(at).starts_with("\u202F") ||
               text.substr(at).starts_with("\u200B") || text.substr(at).starts_with("\u2003") ||
               text.substr(at).starts_with("\uFEFF")) {
      at += 3;
    } else {
      break;
    }
  }
  return at;
}

bool is_blank(std::string_view text) {
  return skip_blanks(text, 0) == text.size();
}

std::size_t match(std::string_view text, std::size_t at, std::string_view choices) {
  if (at > 0 && at <= text.size() && (is_letter(text[at - 1]) || is_digit(text[at - 1]))) return 0;
  while (!choices.empty()) {
    const std::size_t cut = choices.find('|');
    if (const std::size_t end = match_one(text, at, choices.substr(0, cut))) return end;
    choices.remove_prefix(cut == std::string_view::npos ? choices.size() : cut + 1);
  }
  return 0;
}

std::size_t find(std::string_view text, std::string_view choices) {
  for (std::size_t at = 0; at < text.size(); ++at)
    if (is_letter(text[at]) && match(text, at, choices) != 0) return at;
  return std::string_view::npos;
}

std::size_t skip_signs(std::string_view text, std::size_t at, std::string_view signs) {
  while (!signs.empty()) {
    const std::size_t cut = signs.find('|');
    const std::string_view sign = signs.substr(0, cut);
    if (text.substr(at).starts_with(sign)) return at + sign.size();
    signs.remove_prefix(cut == std::string_view::npos ? signs.size() : cut + 1);
  }
  return at;
}

bool joins_at(std::string_view text, std::size_t at) {
  at = skip_blanks(text, at);
  const std::string_view rest = text.substr(std::min(at, text.size()));
  if (rest.starts_with("=>") || rest.starts_with("->")) return false;
  return std::any_of(joining.begin(), joining.end(), [&](std::string_view sign) { return rest.starts_with(sign); });
}

bool joins_before(std::string_view text, std::size_t end) {
  std::string_view before = text.substr(0, end);
  while (!before.empty() && (before.back() == ' ' || before.back() == '\t')) before.remove_suffix(1);
  if (before.ends_with("°")) return false;
  return std::any_of(joining.begin(), joining.end(), [&](std::string_view sign) { return before.ends_with(sign); });
}

bool has_relation(std::string_view text) {
  static constexpr std::array<std::string_view, 17> signs = {"=", "∥", "//", "||", "‖", "⊥", "⟂", "≅", "≡",
                                                             "~", "∼", "∽", "≠", "≤", "≥", ">", "<"};
  return std::any_of(signs.begin(), signs.end(),
                     [&](std::string_view sign) { return text.find(sign) != std::string_view::npos; });
}

bool has_letters(std::string_view text) {
  static constexpr std::array<std::string_view, 14> known = {"SAS", "SSS", "ASA", "AAS", "SAA", "RHS", "HL", "QED",
                                                             "CPCTC", "SSA", "AAA", "AA", "LHS", "QEF"};
  for (std::size_t i = 0; i < text.size();) {
    if (!is_capital(text[i])) {
      ++i;
      continue;
    }
    std::size_t end = i;
    while (end < text.size() && (is_capital(text[end]) || is_digit(text[end]))) ++end;
    const std::string_view row = text.substr(i, end - i);
    const bool word = end < text.size() && is_small(text[end]);
    const bool inside = i > 0 && is_small(text[i - 1]);
    if (!word && !inside && !(row.size() == 1 && (row == "I" || row == "A") && end < text.size() && text[end] == ' ') &&
        std::find(known.begin(), known.end(), row) == known.end())
      return true;
    i = end;
  }
  return false;
}

bool has_prose(std::string_view text) {
  static constexpr std::array<std::string_view, 12> of_claims = {"angle", "angles", "and", "the", "triangle", "triangles",
                                                                 "reflex", "line", "lines", "deg", "degrees", "are"};
  for (std::size_t i = 0; i < text.size();) {
    if (!is_letter(text[i])) {
      ++i;
      continue;
    }
    std::size_t end = i, small = 0;
    std::string word;
    while (end < text.size() && is_letter(text[end])) {
      small += is_small(text[end]) ? 1 : 0;
      word += lower(text[end]);
      ++end;
    }
    if (small >= 3 || (small == 2 && word.size() == 3))
      if (std::find(of_claims.begin(), of_claims.end(), word) == of_claims.end()) return true;
    i = end;
  }
  return false;
}

}  // namespace prover::work_words
