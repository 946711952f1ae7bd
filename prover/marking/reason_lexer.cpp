#include "prover/marking/reason_lexer.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace prover {
namespace {

struct Sign {
  std::uint32_t code;
  std::string_view one;
};
// Code points that are signs, each with the one form in which the tables of rules/reasons write it.
constexpr std::array<Sign, 51> signs = {{
    {0x2220, "∠"}, {0x2221, "∠"}, {0x2222, "∠"}, {0x29A3, "∠"}, {0x2225, "∥"}, {0x2016, "∥"}, {0x01C1, "∥"}, {0x2AFD, "∥"}, {0x22A5, "⊥"},
    {0x27C2, "⊥"}, {0x0394, "Δ"}, {0x2206, "Δ"}, {0x25B3, "Δ"}, {0x25B5, "Δ"}, {0x25B2, "Δ"}, {0x25B4, "Δ"}, {0x2245, "≅"}, {0x2261, "≅"},
    {0x224C, "≅"}, {0x2980, "⦀"}, {0x223C, "⦀"}, {0x223D, "⦀"}, {0x00B0, "°"}, {0x00BA, "°"}, {0x02DA, "°"}, {0x00BD, "½"}, {0x2299, "⊙"},
    {0x25CB, "⊙"}, {0x25EF, "⊙"}, {0x00D7, "×"}, {0x00F7, "÷"}, {0x2212, "−"}, {0x2260, "≠"}, {0x2264, "<"}, {0x2265, ">"}, {0x2234, "∴"},
    {0x2235, "∵"}, {0x21D2, "⇒"}, {0x27F9, "⇒"}, {0x2192, "⇒"}, {0x2190, "∵"}, {0x22C5, "×"}, {0x00B7, "×"}, {'=', "="}, {'+', "+"}, {'&', "&"},
    {'(', "("}, {')', ")"}, {'>', ">"}, {'*', "×"}, {'~', "⦀"},
}};

std::string_view sign_of(std::uint32_t code) {
  for (const Sign& sign : signs)
    if (sign.code == code) return sign.one;
  return {};
}

// Letters with a hat of their own, by which angles are written: "Â".
char plain_hat(std::uint32_t code) {
  switch (code) {
    case 0xC2: return 'A';
    case 0xCA: return 'E';
    case 0xCE: return 'I';
    case 0xD4: return 'O';
    case 0xDB: return 'U';
    case 0x108: return 'C';
    case 0x11C: return 'G';
    case 0x124: return 'H';
    case 0x134: return 'J';
    case 0x15C: return 'S';
    case 0x174: return 'W';
    case 0x176: return 'Y';
    case 0x1E90: return 'Z';
    default: return 0;
  }
}

struct Decoded {
  std::uint32_t code = 0;
  std::size_t size = 1;
};

// Bytes that are no UTF-8 are blanks.
Decoded decode(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const unsigned first = byte(at);
  if (first < 0x80) return {first, 1};
  const std::size_t size = first >= 0xF0 && first < 0xF8 ? 4 : first >= 0xE0 ? 3 : first >= 0xC0 ? 2 : 1;
  if (size == 1 || first >= 0xF8) return {' ', 1};
  std::uint32_t code = first & (0x7FU >> size);
  for (std::size_t i = 1; i < size; ++i) {
    if ((byte(at + i) & 0xC0U) != 0x80U) return {' ', 1};
    code = code << 6 | (byte(at + i) & 0x3FU);
  }
  return {code, size};
}

bool is_letter(std::uint32_t c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool is_digit(std::uint32_t c) {
  return c >= '0' && c <= '9';
}

class Lexer {
 public:
  Lexer(std::string_view text, std::size_t most) : text_(text), most_(most) {}

  std::vector<RawToken> read() {
    while (at_ < text_.size() && tokens_.size() < most_) step();
    return std::move(tokens_);
  }

 private:
  std::uint32_t code(std::size_t at) const { return at < text_.size() ? decode(text_, at).code : 0; }
  bool starts(std::string_view what) const { return text_.substr(at_, what.size()) == what; }

  void add(RawKind kind, std::string text, std::size_t end) {
    RawToken token{kind, std::move(text), {}, false, !tokens_.empty() && tokens_.back().span.end == at_, false, {at_, end}};
    token.lower = token.text;
    for (char& c : token.lower)
      if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    tokens_.push_back(std::move(token));
    at_ = end;
  }
  void separator(std::size_t size, bool sentence) {
    add(RawKind::separator, ",", at_ + size);
    tokens_.back().sentence = sentence;
  }

  // ∥ glued to "m", "gm", "gram" is the short sign of the parallelogram, unless it stands between two lines called by letters.
  void parallel(std::size_t size) {
    std::size_t end = at_ + size;
    const bool between_letters = !tokens_.empty() && tokens_.back().kind == RawKind::word && tokens_.back().text.size() == 1;
    for (const std::string_view tail : {"ograms", "ogram", "grams", "gram", "gms", "gm", "ms", "m"})
      if (!between_letters && text_.substr(end, tail.size()) == tail && !is_letter(code(end + tail.size()))) return add(RawKind::sign, "∥m", end + tail.size());
    add(RawKind::sign, "∥", end);
  }

  // "∠s", "Δs", "Δ's": the plural of a sign.
  void plural_sign(std::string_view one, std::size_t size) {
    std::size_t end = at_ + size;
    for (const std::string_view tail : {"'s", "’s", "s"})
      if (text_.substr(end, tail.size()) == tail && !is_letter(code(end + tail.size()))) {
        end += tail.size();
        break;
      }
    add(RawKind::sign, std::string(one), end);
  }

  bool less_is_angle() const {
    const std::uint32_t next = code(at_ + 1);
    if (next == 's' && !is_letter(code(at_ + 2))) return true;
    const bool open = at_ == 0 || std::string_view(" \t(=+,;-").find(text_[at_ - 1]) != std::string_view::npos;
    return open && (is_letter(next) || next == ' ') && !(next == ' ' && !tokens_.empty() && tokens_.back().kind == RawKind::word && tokens_.back().text.size() > 1 &&
                                                         tokens_.back().text == upper(tokens_.back().text));
  }
  static std::string upper(std::string text) {
    for (char& c : text)
      if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return text;
  }

  void word() {
    std::string out;
    bool hat = false;
    std::size_t end = at_;
    while (end < text_.size()) {
      const Decoded next = decode(text_, end);
      if (is_letter(next.code) || (is_digit(next.code) && !out.empty())) {
        out += static_cast<char>(next.code);
      } else if (next.code == 0x302) {
        hat = true;
      } else if (plain_hat(next.code) != 0) {
        out += plain_hat(next.code);
        hat = true;
      } else if (next.code >= 0x2080 && next.code <= 0x2089) {
        out += static_cast<char>('0' + (next.code - 0x2080));
      } else if ((next.code == '\'' || next.code == 0x2019 || next.code == 0x2032) && !out.empty()) {
        out += '\'';
      } else {
        break;
      }
      end += next.size;
    }
    if (out.find_first_of("abcdefghijklmnopqrstuvwxyz") != out.npos)
      while (out.size() > 1 && out.back() == '\'') out.pop_back();  // "Thales'", but K' is a point
    add(RawKind::word, std::move(out), end);
    tokens_.back().hat = hat;
  }

  // Letters with full stops between them: "v.o.a." is one word.
  bool initials() {
    std::string out;
    std::size_t end = at_;
    while (is_letter(code(end)) && code(end + 1) == '.') {
      out += text_[end];
      end += 2;
      while (code(end) == ' ' && is_letter(code(end + 1)) && code(end + 2) == '.') ++end;
    }
    if (out.size() < 2) return false;
    if (is_letter(code(end)) && !is_letter(code(end + 1))) out += text_[end++];
    add(RawKind::word, std::move(out), end);
    return true;
  }

  void step() {
    const Decoded here = decode(text_, at_);
    const std::uint32_t c = here.code;
    if (is_letter(c)) {
      if (!initials()) word();
      return;
    }
    if (starts("|||") || starts("///")) return add(RawKind::sign, "⦀", at_ + 3);
    if (starts("||") || starts("//")) return parallel(2);
    if (starts("1/2") && !is_digit(code(at_ + 3))) return add(RawKind::sign, "½", at_ + 3);
    if (starts("=>") || starts("->")) return add(RawKind::sign, "⇒", at_ + 2);
    if (c == '<') return less_is_angle() ? plural_sign("∠", 1) : add(RawKind::sign, "<", at_ + 1);
    if (const std::string_view one = sign_of(c); !one.empty()) {
      if (one == "∥") return parallel(here.size);
      if (one == "∠" || one == "Δ" || one == "≅") return plural_sign(one, here.size);
      return add(RawKind::sign, std::string(one), at_ + here.size);
    }
    if (c >= 0x2460 && c <= 0x2473) {  // ① … ⑳: the number of a line
      add(RawKind::sign, "(", at_ + here.size);
      tokens_.push_back({RawKind::number, std::to_string(c - 0x2460 + 1), std::to_string(c - 0x2460 + 1), false, true, false, tokens_.back().span});
      tokens_.push_back({RawKind::sign, ")", ")", false, true, false, tokens_.back().span});
      return;
    }
    if (plain_hat(c) != 0) return word();
    if (is_digit(c)) {
      std::size_t end = at_;
      while (is_digit(code(end))) ++end;
      const bool tenths = code(end) == '.' || (code(end) == ',' && !is_digit(code(end + 2)) && end - at_ > 1);  // "1,2" are two lines
      if (tenths && is_digit(code(end + 1)) && end - at_ < 4) {
        ++end;
        while (is_digit(code(end))) ++end;
      }
      if (starts("3rd") && !is_letter(code(at_ + 3))) return add(RawKind::word, "third", at_ + 3);
      return add(RawKind::number, std::string(text_.substr(at_, end - at_)), end);
    }
    if (c == ',' || c == ':') return separator(1, false);
    if (c == ';' || c == '\n' || c == '|') return separator(1, true);
    if (c == '.' || c == '!' || c == '?') {
      // A full stop behind a short word and before a small letter marks an abbreviation.
      std::size_t next = at_ + 1;
      while (code(next) == ' ') ++next;
      const std::uint32_t after = code(next);
      const bool sentence = next > at_ + 1 && after >= 'A' && after <= 'Z' && !(is_letter(code(next)) && !is_letter(code(next + 1)));
      if (sentence) return separator(1, true);
      at_ += 1;
      return;
    }
    if (c == '-' || c == 0x2013 || c == 0x2014) {
      const bool between_letters = at_ > 0 && is_letter(static_cast<unsigned char>(text_[at_ - 1])) && is_letter(code(at_ + here.size));
      const bool digits = is_digit(code(at_ + here.size)) || (code(at_ + here.size) == ' ' && is_digit(code(at_ + here.size + 1)));
      if (between_letters) {
        at_ += here.size;
        return;
      }
      if (digits) return add(RawKind::sign, "−", at_ + here.size);
      return separator(here.size, false);
    }
    at_ += here.size;
  }

  std::string_view text_;
  std::size_t most_;
  std::size_t at_ = 0;
  std::vector<RawToken> tokens_;
};

}  // namespace

std::vector<RawToken> raw_tokens(std::string_view text, std::size_t most) {
  return Lexer(text, most).read();
}

}  // namespace prover
