#include "prover/hints/sentence_maths.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace prover {

namespace {

struct Token {
  enum class Kind { number, points, angle, triangle, letter, sign, relation } kind = Kind::sign;
  std::string text;
  bool spaced = false;  // stands after a space
};

constexpr std::array<std::string_view, 8> relation_signs = {"=", "<", ">", "∥", "⟂", "⊥", "≅", "∼"};
constexpr std::array<std::string_view, 10> other_signs = {"+", "−", "-", "÷", "×", "(", ")", "°", "·", "/"};
struct Vulgar {
  std::string_view sign;
  int over, under;
};
constexpr std::array<Vulgar, 5> vulgar_fractions = {{{"½", 1, 2}, {"⅓", 1, 3}, {"⅔", 2, 3}, {"¼", 1, 4}, {"¾", 3, 4}}};

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }
bool is_small(char c) { return c >= 'a' && c <= 'z'; }

// The points that a word of capitals names: "KLM" is K, L, M; "P1Q" is P1, Q. Nothing when one of them is no point.
std::vector<std::string> points_in(std::string_view word, const Names& names) {
  std::vector<std::string> points;
  for (const char c : word) {
    if (is_capital(c))
      points.emplace_back(1, c);
    else if (!points.empty())
      points.back() += c;
  }
  const bool known = std::all_of(points.begin(), points.end(), [&](const std::string& p) {
    return std::find(names.points.begin(), names.points.end(), p) != names.points.end();
  });
  return known ? points : std::vector<std::string>{};
}

class Scanner {
 public:
  Scanner(std::string_view text, const Names& names) : text_(text), names_(names) {}

  // Stretches of mathematics; words between them end one.
  std::vector<std::vector<Token>> runs() {
    std::vector<std::vector<Token>> runs(1);
    while (at_ < text_.size()) {
      if (text_[at_] == ' ') {
        ++at_;
        spaced_ = true;
        continue;
      }
      if (auto token = next()) {
        token->spaced = spaced_;
        runs.back().push_back(std::move(*token));
      } else if (!runs.back().empty()) {
        runs.emplace_back();
      }
      spaced_ = false;
    }
    return runs;
  }

 private:
  bool eat(std::string_view sign) {
    if (!text_.substr(at_).starts_with(sign)) return false;
    at_ += sign.size();
    return true;
  }
  std::string word() {  // capitals, with digits behind them
    const std::size_t begin = at_;
    while (at_ < text_.size() && (is_capital(text_[at_]) || (at_ > begin && is_digit(text_[at_])))) ++at_;
    return std::string(text_.substr(begin, at_ - begin));
  }
  std::optional<Token> next() {
    if (eat("∠")) return Token{Token::Kind::angle, "∠" + word()};
    if (eat("△")) return Token{Token::Kind::triangle, word()};
    for (const std::string_view sign : relation_signs)
      if (eat(sign)) return Token{Token::Kind::relation, std::string(sign)};
    for (const std::string_view sign : other_signs)
      if (eat(sign)) return Token{Token::Kind::sign, std::string(sign)};
    for (const Vulgar& one : vulgar_fractions)
      if (eat(one.sign)) return Token{Token::Kind::number, std::string(one.sign)};
    if (is_digit(text_[at_])) return number();
    if (is_capital(text_[at_])) {
      const std::size_t begin = at_;
      const std::string name = word();
      const bool goes_on = at_ < text_.size() && is_small(text_[at_]);  // "Take", "RHSs"
      const std::vector<std::string> points = goes_on ? std::vector<std::string>{} : points_in(name, names_);
      if (!points.empty()) return Token{Token::Kind::points, name};
      at_ = begin;
    } else if (is_small(text_[at_]) && (at_ == 0 || !is_small(text_[at_ - 1])) &&
               (at_ + 1 >= text_.size() || !is_small(text_[at_ + 1]))) {
      return Token{Token::Kind::letter, std::string(1, text_[at_++])};  // x, or the article "a": told apart by its neighbours
    }
    skip_word();
    return std::nullopt;
  }
  Token number() {
    const std::size_t begin = at_;
    while (at_ < text_.size() && (is_digit(text_[at_]) || (text_[at_] == '.' && at_ + 1 < text_.size() && is_digit(text_[at_ + 1])))) ++at_;
    std::string digits(text_.substr(begin, at_ - begin));
    for (const Vulgar& one : vulgar_fractions)
      if (eat(one.sign)) digits += one.sign;
    if (const std::string part = fraction(at_ < text_.size() && text_[at_] == ' ' ? at_ + 1 : at_); !part.empty()) digits += " " + part;
    else if (at_ < text_.size() && text_[at_] == '/') digits += denominator();
    return {Token::Kind::number, digits};
  }
  // "5/7" behind "25 ": the rest of a mixed number; at_ goes behind it.
  std::string fraction(std::size_t from) {
    std::size_t end = from;
    while (end < text_.size() && is_digit(text_[end])) ++end;
    if (end == from || from == at_ || end >= text_.size() || text_[end] != '/') return {};
    at_ = end;
    const std::string below = denominator();
    return below.empty() ? std::string() : std::string(text_.substr(from, end - from)) + below;
  }
  std::string denominator() {  // "/7"
    std::size_t end = at_ + 1;
    while (end < text_.size() && is_digit(text_[end])) ++end;
    if (end == at_ + 1) return {};
    const std::string below(text_.substr(at_, end - at_));
    at_ = end;
    return below;
  }
  void skip_word() {
    const auto is_letter = [&](char c) { return is_small(c) || is_capital(c) || is_digit(c) || static_cast<unsigned char>(c) >= 0x80; };
    if (!is_letter(text_[at_])) {
      ++at_;
      return;
    }
    while (at_ < text_.size() && is_letter(text_[at_])) ++at_;
  }

  std::string_view text_;
  const Names& names_;
  std::size_t at_ = 0;
  bool spaced_ = false;
};

Rational value_of(std::string digits) {
  Rational extra = 0;
  for (const Vulgar& one : vulgar_fractions)
    if (digits.ends_with(one.sign)) {
      extra = Rational(one.over) / Rational(one.under);
      digits.resize(digits.size() - one.sign.size());
    }
  if (const std::size_t space = digits.find(' '); space != digits.npos) {
    extra += Rational::parse(digits.substr(space + 1)).value_or(Rational(0));
    digits.resize(space);
  }
  return (digits.empty() ? Rational(0) : Rational::parse(digits).value_or(Rational(0))) + extra;
}

bool is_quantity(const Token& t) {
  return t.kind == Token::Kind::angle || t.kind == Token::Kind::points || t.kind == Token::Kind::triangle || t.kind == Token::Kind::letter;
}

std::string text_of(const std::vector<Token>& tokens, std::size_t begin, std::size_t end) {
  std::string text;
  for (std::size_t i = begin; i < end; ++i) {
    if (i > begin && tokens[i].spaced) text += ' ';
    text += (tokens[i].kind == Token::Kind::triangle ? "△" : "") + tokens[i].text;
  }
  return text;
}

// Brackets that open outside of the stretch: "(alternate angles, RS ∥ TU)" leaves one behind.
void drop_lone_brackets(std::vector<Token>& run) {
  std::vector<std::size_t> open, lone;
  for (std::size_t i = 0; i < run.size(); ++i) {
    if (run[i].text == "(") open.push_back(i);
    if (run[i].text != ")") continue;
    if (open.empty()) lone.push_back(i);
    else open.pop_back();
  }
  lone.insert(lone.end(), open.begin(), open.end());
  std::sort(lone.rbegin(), lone.rend());
  for (const std::size_t i : lone) run.erase(run.begin() + static_cast<std::ptrdiff_t>(i));
}

void add_relations(const std::vector<Token>& run, SentenceMaths& out) {
  struct Side {
    std::size_t begin, end;
  };
  std::vector<Side> sides;
  std::vector<std::string> signs;
  std::size_t begin = 0;
  for (std::size_t i = 0; i <= run.size(); ++i) {
    if (i < run.size() && run[i].kind != Token::Kind::relation) continue;
    sides.push_back({begin, i});
    if (i < run.size()) signs.push_back(run[i].text);
    begin = i + 1;
  }
  for (std::size_t i = 0; i < signs.size(); ++i)
    for (std::size_t k = i + 1; k < sides.size(); ++k) {
      if (k > i + 1 && signs[k - 1] != "=") break;
      if (sides[i].begin == sides[i].end || sides[k].begin == sides[k].end) continue;
      out.relations.push_back(text_of(run, sides[i].begin, sides[i].end) + " " + signs[i] + " " +
                              text_of(run, sides[k].begin, sides[k].end));
    }
}

}  // namespace

SentenceMaths maths_of(std::string_view sentence, const Names& names) {
  SentenceMaths out;
  for (std::vector<Token>& run : Scanner(sentence, names).runs()) {
    drop_lone_brackets(run);
    for (std::size_t i = 0; i < run.size(); ++i) {
      const Token& t = run[i];
      if (t.kind == Token::Kind::number) {
        const bool before = i + 1 < run.size() && !run[i + 1].spaced && (is_quantity(run[i + 1]) || run[i + 1].text == "(");
        const bool divides = i > 0 && (run[i - 1].text == "÷" || run[i - 1].text == "×");
        const bool multiplies = i + 1 < run.size() && run[i + 1].text == "×";
        out.numbers.push_back({value_of(t.text), before || divides || multiplies});
      }
      if (t.kind == Token::Kind::angle || (t.kind == Token::Kind::points && points_in(t.text, names).size() == 2))
        out.quantities.push_back(t.text);
      if (t.kind == Token::Kind::angle || t.kind == Token::Kind::points || t.kind == Token::Kind::triangle)
        for (const std::string& p : points_in(t.kind == Token::Kind::angle ? t.text.substr(std::string_view("∠").size()) : t.text, names))
          if (std::find(out.points.begin(), out.points.end(), p) == out.points.end()) out.points.push_back(p);
    }
    add_relations(run, out);
  }
  return out;
}

}  // namespace prover
