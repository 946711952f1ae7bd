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

constexpr std::array<Spelling, 19> signs = {{{"m∠", "∠"},
                                             {"m∡", "∠"},
                                             {"m ∠", "∠"},
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

}  // namespace

void spell_out(Rewritten& line, const std::string& points) {
  calm_down(line, points);
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
}

}  // namespace prover
