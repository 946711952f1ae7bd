#include "prover/language/work_spelling.hpp"

#include <algorithm>
#include <array>

#include "prover/language/work_words.hpp"

namespace prover {

namespace {

using namespace work_words;

struct Spelling {
  std::string_view written, meant;
};

constexpr std::array<Spelling, 20> signs = {{{"m∠", "∠"},
                                             {"m∡", "∠"},
                                             {"m ∠", "∠"},
                                             {"m angle", "angle"},
                                             {"∢", "∠"},
                                             {"⦀", "|||"},
                                             {"///", "|||"},
                                             {"≃", "≅"},
                                             {"≌", "≅"},
                                             {"=~", "≅"},
                                             {"_|_", "⊥"},
                                             {"⊿", "△"},
                                             {"＝", "="},
                                             {"‐", "-"},
                                             {"‑", "-"},
                                             {"‒", "-"},
                                             {"∥gram", "parallelogram"},
                                             {"||gram", "parallelogram"},
                                             {"∥gm", "parallelogram"},
                                             {"||gm", "parallelogram"}}};

constexpr std::array<Spelling, 17> words = {{{"isos", "isosceles"},
                                             {"isosc", "isosceles"},
                                             {"equilat", "equilateral"},
                                             {"quad", "quadrilateral"},
                                             {"cyc", "cyclic"},
                                             {"midpt", "midpoint"},
                                             {"mid pt", "midpoint"},
                                             {"mid point", "midpoint"},
                                             {"parm", "parallelogram"},
                                             {"perp", "perpendicular"},
                                             {"rt-angled", "right-angled"},
                                             {"rt angled", "right-angled"},
                                             {"right angled", "right-angled"},
                                             {"tgt", "tangent"},
                                             {"cong", "congruent"},
                                             {"diam", "diameter"},
                                             {"supp", "supplementary"}}};

void replace_all(Rewritten& line, Spelling spelling) {
  for (std::size_t at = line.text().find(spelling.written); at != std::string::npos;
       at = line.text().find(spelling.written, at + spelling.meant.size()))
    line.replace(at, at + spelling.written.size(), spelling.meant);
}

// A line without small letters: its words are written small, its points stay.
void calm_down(Rewritten& line, const std::string& points) {
  static constexpr std::string_view short_words = " OF AN A ARE IS IN TO UP ADD SO AS BY AND THE SUM ON AT IT ";
  const std::string text = line.text();
  if (std::any_of(text.begin(), text.end(), is_small)) return;
  std::size_t longest = 0;
  const auto row_end = [&](std::size_t i) {
    while (i < text.size() && is_capital(text[i])) ++i;
    return i;
  };
  for (std::size_t i = 0; i < text.size(); ++i)
    if (is_capital(text[i])) {
      longest = std::max(longest, row_end(i) - i);
      i = row_end(i);
    }
  if (longest < 5) return;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t end = row_end(i);
    if (end == i) {
      ++i;
      continue;
    }
    const std::string row = text.substr(i, end - i);
    if (row.size() >= 5 || row.find_first_not_of(points) != std::string::npos || short_words.find(" " + row + " ") != std::string_view::npos) {
      std::string small = row;
      for (char& c : small) c = static_cast<char>(c - 'A' + 'a');
      line.replace(i, end, small);
    }
    i = end;
  }
}

// "klm = 70" where no letter is a capital: short words made of the figure's letters are its names.
void raise_letters(Rewritten& line, const std::string& points) {
  static constexpr std::string_view small_words =
      " as is so or on in at it to are and alt int ext opp sum str par the of an be by if we no up us do go he me my ans deg "
      "rad eq equ bis sas sss asa aas rhs sa aa hl qed let ll max min ";
  const std::string text = line.text();
  for (std::size_t i = 0; i + 1 < text.size(); ++i)
    if (is_capital(text[i]) && (is_capital(text[i + 1]) || i > 0)) return;
  for (std::size_t i = 0; i < text.size();) {
    std::size_t end = i;
    while (end < text.size() && (is_small(text[end]) || is_capital(text[end]))) ++end;
    std::string row = text.substr(i, end - i);
    for (char& c : row)
      if (is_small(c)) c = static_cast<char>(c - 'a' + 'A');
    const std::string small = text.substr(i, end - i);
    const bool unit = i > 0 && (is_digit(text[i - 1]) || (i > 1 && text[i - 1] == ' ' && is_digit(text[i - 2]))) &&
                      (small == "cm" || small == "mm" || small == "km");
    if (!unit && row.size() >= 2 && row.size() <= 3 && row.find_first_not_of(points) == std::string::npos &&
        small_words.find(" " + small + " ") == std::string_view::npos)
      line.replace(i, end, row);
    i = std::max(end, i + 1);
  }
}

// "∠L = 70° ∠M = 70°", "2x = 140 x = 70", "180 − 70 = 110 110/2 = 55": two equations with nothing but a blank between
// them, which would read as a product or as a mixed number.
void part_equations(Rewritten& line) {
  bool equation = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const std::string& text = line.text();
    if (text[i] == '=') equation = true;
    if (text[i] == ';' || text[i] == ',') equation = false;
    if (!is_digit(text[i]) || (i > 0 && (is_digit(text[i - 1]) || text[i - 1] == '.'))) continue;
    std::size_t end = i;
    while (end < text.size() && (is_digit(text[end]) || text[end] == '.')) ++end;
    const std::size_t sign = skip_signs(text, skip_blanks(text, end), "°|º|degrees|deg");
    const bool degrees = sign != skip_blanks(text, end);
    const bool large = end - i >= 2;
    if (degrees) end = sign;
    const std::size_t next = skip_blanks(text, end);
    if (!equation || next == end || next >= text.size() || !(degrees || large)) continue;
    std::size_t after = skip_signs(text, next, "∠|<|△|½");
    if (const std::size_t word = match(text, next, "angle")) after = skip_blanks(text, word);
    const std::size_t name = after;
    while (after < text.size() && (is_capital(text[after]) || is_digit(text[after]))) ++after;
    if (after == name && after < text.size() && is_small(text[after]) && (after + 1 == text.size() || !is_small(text[after + 1]))) ++after;
    if (after == next) continue;
    // up to the sign of equality: only sums and quotients of names and numbers
    std::size_t equal = after;
    while (equal < text.size() && text[equal] != '=' && text[equal] != ';' && text[equal] != ',') ++equal;
    const std::string between = text.substr(after, equal < text.size() ? equal - after : 0);
    if (equal >= text.size() || text[equal] != '=' || has_prose(between)) continue;
    line.replace(end, end, ";");
    equation = false;
  }
}

}  // namespace

void spell_out(Rewritten& line, const std::string& points) {
  calm_down(line, points);
  raise_letters(line, points);
  for (const Spelling& sign : signs) replace_all(line, sign);
  for (const Spelling& word : words)
    for (std::size_t at = find(line.text(), word.written); at != std::string::npos; at = find(line.text(), word.written)) {
      std::size_t end = match(line.text(), at, word.written);
      if (end < line.size() && line.text()[end] == '.' && end + 1 < line.size()) ++end;
      line.replace(at, end, word.meant);
    }
  // "2 x 40" multiplies; "70o" and "70^o" are degrees; "III" between triangles is a sign.
  for (std::size_t i = 0; i < line.size(); ++i) {
    const std::string& text = line.text();
    if (is_digit(text[i])) {
      std::size_t next = i + 1;
      if (next < text.size() && text[next] == '^') ++next;
      if (next < text.size() && (text[next] == 'o' || (text[next] == '0' && next > i + 1)) &&
          (next + 1 == text.size() || (!is_small(text[next + 1]) && !is_capital(text[next + 1]) && !is_digit(text[next + 1])))) {
        line.replace(i + 1, next + 1, "°");
        continue;
      }
      const std::size_t sign = skip_blanks(text, i + 1);
      if (sign < text.size() && (text[sign] == 'x' || text[sign] == 'X')) {
        const std::size_t after = skip_blanks(text, sign + 1);
        if (after < text.size() && is_digit(text[after])) line.replace(sign, sign + 1, "*");
      }
    } else if (text.compare(i, 5, " III ") == 0) {
      line.replace(i + 1, i + 4, "|||");
    }
  }
  part_equations(line);
}

}  // namespace prover
