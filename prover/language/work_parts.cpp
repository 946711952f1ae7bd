#include "prover/language/work_parts.hpp"

#include <algorithm>

#include "prover/language/work_words.hpp"

namespace prover {

namespace {

using namespace work_words;

constexpr std::string_view so_words =
    "so|hence|therefore|thus|then|consequently|it follows that|this means that|this means|that means that|that means|"
    "which means that|which means|which gives|this gives|and so|gives|giving|yields|implies|means";
constexpr std::string_view so_signs = "∴|⇒|→|⟹|➔|==>|=>|-->|->|⟶";
constexpr std::string_view because_words = "because of|because|since|reason|due to|given that|bc|b/c|cause|cuz|coz|seeing that";
constexpr std::string_view by_words = "as|by|using|from|with";
constexpr std::string_view because_signs = "∵";

// "1.", "(a)", "3)", "Line 3:", "Step 2."; "(52) …" in a sum is none.
std::size_t skip_label(std::string_view text, std::size_t at) {
  std::size_t i = at;
  const bool bracket = i < text.size() && (text[i] == '(' || text[i] == '[');
  if (bracket) ++i;
  if (const std::size_t word = bracket ? 0 : match(text, i, "line|step|statement|part|question"))
    i = skip_blanks(text, word);
  const std::size_t begin = i;
  while (i < text.size() && is_digit(text[i]) && i - begin < 3) ++i;
  if (i == begin) {
    while (i < text.size() && is_small(text[i]) && i - begin < 4) ++i;
    if (i > begin + 1 && text.substr(begin, i - begin).find_first_not_of("ivx") != std::string_view::npos) return at;
  }
  if (i == begin || i >= text.size()) return at;
  if (bracket) {
    if (text[i] != ')' && text[i] != ']') return at;
  } else if (text[i] == '.' || text[i] == ')') {
    // "3.5" is a number, "x)" the end of a bracket, "x." the end of a sentence
  } else if (text[i] == ':' && (begin > at)) {
  } else {
    return at;
  }
  ++i;
  if (i < text.size() && text[i] == ':') ++i;
  const std::size_t next = skip_blanks(text, i);
  if ((next == i && next < text.size() && is_digit(text[next])) || joins_at(text, next)) return at;
  return next;
}

// "triangle KLM and triangle PQR": the end, or `at`.
std::size_t skip_shapes(std::string_view text, std::size_t at) {
  std::size_t i = at;
  for (bool first = true;; first = false) {
    std::size_t next = i;
    if (const std::size_t article = match(text, next, "the")) next = skip_blanks(text, article);
    std::size_t noun = skip_signs(text, next, "△s|∆s|Δs|△'s|Δ's|△|∆|Δ|▲");
    if (noun == next)
      noun = match(text, next,
                   "triangle|triangles|quadrilateral|parallelogram|rectangle|rhombus|square|kite|trapezium|trapezoid|"
                   "pentagon|hexagon|polygon|circle|quad|cyclic quadrilateral|cyclic quad");
    if (noun == 0 && first) return at;
    if (noun != 0) next = skip_blanks(text, noun);
    std::size_t row = next;
    while (row < text.size() && (is_capital(text[row]) || is_digit(text[row]))) ++row;
    if (row - next < (first ? 1U : 3U) || (row < text.size() && is_small(text[row]))) return first ? at : i;
    i = row;
    const std::size_t blank = skip_blanks(text, i);
    std::size_t more = match(text, blank, "and");
    if (more == 0 && blank < text.size() && (text[blank] == '&' || text[blank] == ',')) more = blank + 1;
    if (more == 0) return i;
    const std::size_t after = skip_blanks(text, more);
    const std::size_t sign = skip_signs(text, after, "△|∆|Δ|▲");
    i = after;
    // "In △KLM and KL = KM": the second row must be a figure of its own
    std::size_t end = sign == after ? after : skip_blanks(text, sign);
    if (const std::size_t word = match(text, end, "triangle")) end = skip_blanks(text, word);
    std::size_t letters = end;
    while (letters < text.size() && is_capital(text[letters])) ++letters;
    if (letters - end < 3) return blank;
  }
}

bool is_reason(std::string_view inside) {
  if (is_blank(inside)) return false;
  if (match(inside, 0, "in this order|in that order|in order|in this cyclic order|centre|center") != 0) return false;
  if (has_prose(inside) || inside.find("∥") != std::string_view::npos || inside.find("||") != std::string_view::npos ||
      inside.find("//") != std::string_view::npos || inside.find("∠s") != std::string_view::npos ||
      inside.find("⊥") != std::string_view::npos || inside.find('=') != std::string_view::npos)
    return true;
  // "S∠S", "∠∠∠", "≡ ∆s"
  std::string plain;
  for (std::size_t i = 0; i < inside.size();) {
    const std::size_t sign = skip_signs(inside, i, "∠|△|∆|Δ|≡|≅|<| |,");
    if (sign == i) plain += inside[i];
    i = sign == i ? i + 1 : sign;
  }
  if (plain.size() == 1 && plain == inside && std::string_view("SARHZFXUNC").find(plain) != std::string_view::npos) return true;
  if (plain.find_first_not_of("SARHLCPTs.") == std::string::npos &&
      (plain.size() < 3 || plain.find_first_not_of("SAs.") == std::string::npos || !has_letters(plain)))
    return true;
  // "SAS", "given", "vert opp", "R", "∠ sum": words, but no sum of quantities
  static constexpr std::string_view arithmetic = "0123456789+-*/.,° ";
  if (inside.find_first_not_of(arithmetic) == std::string_view::npos) return false;
  std::size_t capitals = 0, small = 0;
  for (const char c : inside) {
    capitals += is_capital(c) ? 1 : 0;
    small += is_small(c) ? 1 : 0;
  }
  if (inside.find("−") != std::string_view::npos || inside.find("–") != std::string_view::npos ||
      inside.find('+') != std::string_view::npos || inside.find('-') != std::string_view::npos ||
      inside.find("×") != std::string_view::npos || inside.find("÷") != std::string_view::npos ||
      inside.find("∠") != std::string_view::npos || inside.find('/') != std::string_view::npos)
    return !has_letters(inside) && small >= 3;
  if (!has_letters(inside) && capitals >= 1) return true;  // SAS
  return small >= 2 || inside.find("△") != std::string_view::npos || inside.find("Δ") != std::string_view::npos;
}

std::size_t closing(std::string_view text, std::size_t open) {
  std::size_t depth = 0;
  for (std::size_t i = open; i < text.size(); ++i) {
    if (text[i] == '(' || text[i] == '[' || text[i] == '{') ++depth;
    if ((text[i] == ')' || text[i] == ']' || text[i] == '}') && --depth == 0) return i;
  }
  return text.size();
}

}  // namespace

void blank_ending(Rewritten& line) {
  static constexpr std::string_view endings[] = {"✓", "✔", "★", "Q.E.D.", "Q.E.D", "QED", "qed", "∎", "□", "■", "◻", "as required", "as was to be shown", "which was to be proved"};
  for (const std::string_view ending : endings) {
    std::size_t end = line.size();
    while (end > 0 && (line.text()[end - 1] == ' ' || line.text()[end - 1] == '.' || line.text()[end - 1] == '!')) --end;
    const std::string_view text = std::string_view(line.text()).substr(0, end);
    if (!text.ends_with(ending)) continue;
    const std::size_t at = end - ending.size();
    if (at > 0 && (is_capital(text[at - 1]) || is_small(text[at - 1]) || line.text()[at - 1] == '(')) continue;
    line.blank(at, line.size());
    return;
  }
}

Around look_around(const Rewritten& line, std::size_t from) {
  Around around;
  const std::string_view text = line.text();
  std::size_t at = skip_blanks(text, from);
  for (bool moved = true; moved;) {
    moved = false;
    const auto go = [&](std::size_t end) {
      moved = true;
      at = skip_blanks(text, end);
    };
    const auto past_comma = [&] {
      if (at < text.size() && (text[at] == ',' || text[at] == ':' || text[at] == ';' || text[at] == '.')) at = skip_blanks(text, at + 1);
    };
    if (at >= text.size()) break;
    if (const std::size_t end = skip_signs(text, at, "•|▪|◦|★|✓|✔"); end != at) go(end);
    if ((text[at] == '-' || text[at] == '*') && at + 1 < text.size() && text[at + 1] == ' ' && at == from) go(at + 1);
    if (text[at] == ',' || text[at] == ';' || text[at] == '.') go(at + 1);
    if (at >= text.size()) break;
    if (const std::size_t end = skip_label(text, at); end != at) go(end);
    if (at + 2 < text.size() && is_capital(text[at]) && text[at + 1] == ':' && text[at + 2] == ' ') go(at + 2);  // "S: …"
    {
      std::size_t row = at;  // "KLM: KL = KM"
      while (row < text.size() && is_capital(text[row])) ++row;
      if (row >= at + 3 && row + 1 < text.size() && text[row] == ':' && text[row + 1] == ' ') {
        around.places.emplace_back(at, row);
        go(row + 1);
      }
    }
    if (at >= text.size()) break;
    if (const std::size_t end = skip_signs(text, at, so_signs); end != at) {
      around.concludes = true;
      go(end);
    } else if (const std::size_t word = match(text, at, so_words)) {
      around.concludes = true;
      go(word);
      past_comma();
    }
    if (const std::size_t word = match(text, at,
                                       "proof|solution|working|work|conclusion|construction|statement|method|claim|"
                                       "in the figure|in the diagram|from the figure|from the diagram|on the figure|"
                                       "answer|ans|final answer|given|hint");
        word != 0 && word < text.size()) {
      const std::size_t end = skip_blanks(text, word);
      if (end < text.size() && (text[end] == ':' || (text[end] == ',' && text.substr(at, word - at).find(' ') != std::string_view::npos) ||
                                (text[end] == '.' && match(text, at, "proof|solution") != 0))) {
        around.answers = around.answers || match(text, at, "answer|ans|final answer") != 0;
        around.says_given = around.says_given || match(text, at, "given") != 0;
        go(end + 1);
      }
    }
    if (const std::size_t word = match(text, at,
                                       "and|but|now|also|next|first|firstly|secondly|thirdly|finally|lastly|again|we know that|"
                                       "we know|we have|we have that|we see that|we get|we get that|i know that|i know|i get|"
                                       "it is clear that|clearly|obviously|note that|note|moreover|furthermore|here|"
                                       "that|say|we also have|we also know that|this makes|and therefore|and hence|and thus|and so|"
                                       "we can see that|we can say that|you get|which gives|giving|well")) {
      if (match(text, at, "and therefore|and hence|and thus|and so|this makes|which gives") != 0) around.concludes = true;
      go(word);
      past_comma();
    }
    if (const std::size_t word = match(text, at, "given"); word != 0 && match(text, at, "given that") == 0) {
      around.says_given = true;
      go(word);
    }
    if (at >= text.size()) break;
    if (const std::size_t word = match(text, at,
                                       "similarly|likewise|in the same way|in the same manner|by the same argument|"
                                       "by the same reasoning|same way|the same way|analogously")) {
      around.similarly = true;
      go(word);
      past_comma();
    }
    if (const std::size_t word = match(text, at, "in|for|consider|look at|from|within|in both")) {
      const std::size_t shapes = skip_blanks(text, word), end = skip_shapes(text, shapes);
      if (end != shapes) {
        around.places.emplace_back(at, end);
        go(end);
        past_comma();
        if (const std::size_t has = match(text, at, "we have|we get|we know that")) go(has);
      }
    }
  }
  if (const std::size_t end = skip_signs(text, at, because_signs); end != at) {
    around.since = true;
    at = skip_blanks(text, end);
  } else if (const std::size_t word =
                 match(text, at, "since|because of|because|as|if|given that|it is given that|reason|by|using|from|due to")) {
    around.since = true;
    around.says_given = around.says_given || find(text.substr(at, word - at), "given") != std::string_view::npos;
    at = skip_blanks(text, word);
    if (at < text.size() && text[at] == ':') at = skip_blanks(text, at + 1);
  }
  around.lets = match(text, at, "let|call|denote|put|set|say|suppose|assume") != 0;
  around.asks = match(text, at,
                      "to prove|to show|rtp|prove|show|required to prove|we want|we need|want|need|find|to find|we must|"
                      "want to|need to|prove that|show that|is it true|goal|aim|target|i want|i need|calculate|we are asked") != 0;
  around.begin = at;
  return around;
}

bool blank_crossed_out(Rewritten& line) {
  const std::string_view whole = line.text();
  const std::size_t at = skip_blanks(whole, 0);
  if (const std::size_t word = match(whole, at, "crossed out|deleted|scrap|struck out")) {
    const std::size_t end = skip_blanks(whole, word);
    if (end < whole.size() && whole[end] == ':') return true;
  }
  bool any = false;
  for (std::size_t open = whole.find("~~"); open != std::string_view::npos; open = line.text().find("~~", open)) {
    const std::size_t close = line.text().find("~~", open + 2);
    const std::size_t end = close == std::string::npos ? line.size() : close + 2;
    if (end > open + 2) any = true;
    line.blank(open, end);
  }
  return any && is_blank(line.text());
}

std::vector<std::pair<std::size_t, std::size_t>> take_out_reasons(Rewritten& line) {
  std::vector<std::pair<std::size_t, std::size_t>> found;
  const std::string text = line.text();
  // Columns: a bar, a tab, or wide blanks where no sum goes on.
  std::size_t statement_end = text.size(), i = skip_blanks(text, 0), cell = i;
  const auto column = [&](std::size_t begin, std::size_t end) {
    if (is_blank(std::string_view(text).substr(cell, begin - cell))) {
      line.blank(cell, end);
      cell = end;
      return;
    }
    const std::size_t first = skip_blanks(text, cell);
    std::string_view inside = std::string_view(text).substr(first, begin - first);
    while (!inside.empty() && inside.back() == ' ') inside.remove_suffix(1);
    const bool number = inside.size() <= 4 && inside.find_first_not_of("0123456789.()") == std::string_view::npos &&
                        !is_blank(std::string_view(text).substr(end));
    if (number && statement_end == text.size() && first == skip_blanks(text, 0)) {
      line.blank(cell, end);
    } else if (statement_end == text.size()) {
      statement_end = begin;
      line.blank(begin, end);
    } else {
      found.emplace_back(first, begin);
    }
    cell = end;
  };
  const bool bars = [&] {
    for (std::size_t k = 0; k < text.size(); ++k)
      if (text[k] == '|' && (k == 0 || text[k - 1] != '|') && (k + 1 == text.size() || text[k + 1] != '|')) return true;
    return false;
  }();
  for (; i < text.size(); ++i) {
    if (text[i] == '|') {
      std::size_t end = i;
      while (end < text.size() && text[end] == '|') ++end;
      if (end == i + 1) column(i, end);
      i = end - 1;
      continue;
    }
    if (bars || (text[i] != '\t' && !(text[i] == ' ' && i + 1 < text.size() && text[i + 1] == ' '))) continue;
    const std::size_t end = skip_blanks(text, i);
    if (end == text.size()) break;
    if (!joins_at(text, end) && !joins_before(text, i) && i > 0 && text[i - 1] != ',' && text[i - 1] != ';' &&
        text[i - 1] != '.' && text[i - 1] != ':' && match(text, end, so_words) == 0 &&
        skip_signs(text, end, so_signs) == end && text[end] != '(' && text[end] != '[' &&
        (statement_end != text.size() || has_relation(std::string_view(text).substr(0, i)) ||
         has_prose(std::string_view(text).substr(0, i)))) {
      // "∠L = 70°   ∠M = 70°" are two statements.
      const std::size_t equal = text.find('=', end);
      const bool claims = skip_signs(text, end, "∠|<") != end || match(text, end, "angle") != 0;
      if (claims && equal != std::string::npos && !has_prose(std::string_view(text).substr(end, equal - end)) &&
          statement_end == text.size()) {
        line.replace(i, i + 1, ";");
      } else {
        column(i, end);
      }
    }
    i = end - 1;
  }
  if (statement_end != text.size() && cell < text.size()) found.emplace_back(cell, text.size());
  for (auto& [begin, end] : found) line.blank(begin, end);
  // A bracket round the whole line is no reason.
  const std::size_t open = skip_blanks(text, 0);
  if (open < statement_end && (text[open] == '(' || text[open] == '[' || text[open] == '{')) {
    const std::size_t close = closing(text, open);
    const std::string_view inside = std::string_view(text).substr(open + 1, close - open - 1);
    if (close < text.size() && is_blank(std::string_view(text).substr(close + 1)) && has_relation(inside)) {
      line.blank(open, open + 1);
      line.blank(close, close + 1);
      return found;
    }
  }
  // Brackets.
  for (std::size_t k = 0; k < statement_end; ++k) {
    if (text[k] != '(' && text[k] != '[' && text[k] != '{') continue;
    const std::size_t close = closing(text, k), end = std::min(close + 1, text.size());
    if (k > 0 && close > k && skip_blanks(text, 0) != k && !is_reason(std::string_view(text).substr(k + 1, close - k - 1))) {
      continue;
    }
    if (skip_blanks(text, 0) == k && !is_reason(std::string_view(text).substr(k + 1, close - k - 1))) continue;
    found.emplace_back(k + 1, std::max(close, k + 1));
    const bool goes_on = joins_at(text, end) || is_blank(std::string_view(line.text()).substr(end)) ||
                         is_blank(std::string_view(text).substr(0, k));
    line.blank(k, end);
    if (!goes_on) line.replace(k, k + 1, ";");
    k = end - 1;
  }
  std::sort(found.begin(), found.end());
  return found;
}

std::vector<WorkPart> cut_parts(const Rewritten& line, std::size_t begin) {
  const std::string_view text = line.text();
  std::vector<WorkPart> parts;
  WorkPart next{Link::start, begin, begin};
  std::size_t depth = 0;
  const auto cut = [&](std::size_t at, std::size_t end, Link link) {
    next.end = at;
    if (!is_blank(text.substr(next.begin, at - next.begin))) {
      parts.push_back(next);
      next.link = link;
    } else if (next.link == Link::start || next.link == Link::comma || next.link == Link::semicolon ||
               next.link == Link::conjunction || link == Link::so) {
      if (!(parts.empty() && link != Link::so && link != Link::because)) next.link = link;
    }
    next.begin = end;
  };
  for (std::size_t i = begin; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '(' || c == '[' || c == '{') ++depth;
    if ((c == ')' || c == ']' || c == '}') && depth > 0) --depth;
    if (depth > 0) continue;
    const bool digit_before = i > 0 && is_digit(text[i - 1]);
    const bool digit_after = i + 1 < text.size() && is_digit(text[i + 1]);
    if (c == ',' && !(digit_before && digit_after)) {
      cut(i, i + 1, Link::comma);
    } else if (c == ';') {
      cut(i, i + 1, Link::semicolon);
    } else if (c == ':' && i > 0 && text[i - 1] != ' ' && i + 1 < text.size() && text[i + 1] == ' ' && !digit_before) {
      cut(i, i + 1, Link::comma);
    } else if ((c == '.' || c == '!' || c == '?') && !digit_after) {
      const std::size_t after = skip_blanks(text, i + 1);
      const bool dots = (i + 1 < text.size() && text[i + 1] == '.') || (i > 0 && text[i - 1] == '.');
      if (after == text.size() || dots) {
        cut(i, i + 1, Link::stop);
      } else if (after > i + 1) {
        const bool word_before = i > 0 && is_small(text[i - 1]);
        const bool opens = is_capital(text[after]) || skip_signs(text, after, so_signs) != after;
        if (!word_before || opens) cut(i, i + 1, Link::stop);
      }
    } else if (text.substr(i).starts_with("…")) {
      cut(i, i + 3, Link::stop);
      i += 2;
    } else if (const std::size_t sign = skip_signs(text, i, so_signs); sign != i) {
      cut(i, sign, Link::so);
      i = sign - 1;
    } else if (const std::size_t why = skip_signs(text, i, because_signs); why != i) {
      cut(i, why, Link::because);
      i = why - 1;
    } else if (text.substr(i).starts_with(" - ") || text.substr(i).starts_with(" – ") || text.substr(i).starts_with(" — ")) {
      const std::size_t after = i + (c == ' ' && text[i + 1] == '-' ? 3 : 5);
      std::size_t end = after;
      while (end < text.size() && is_small(text[end])) ++end;
      const bool word = end - after >= 3 && match(text, after, "angle|twice|half") == 0;
      const bool dash = text.substr(i).starts_with(" — ");
      if (word || dash) cut(i, after, Link::dash);
    } else if (is_small(c) || is_capital(c)) {
      if (const std::size_t so = match(text, i, so_words)) {
        cut(i, so, Link::so);
        i = so - 1;
      } else if (const std::size_t why_word = match(text, i, because_words)) {
        const std::size_t colon = skip_blanks(text, why_word);
        const bool reason = match(text, i, "reason") != 0;
        if (!reason || (colon < text.size() && text[colon] == ':'))
          cut(i, reason ? colon + 1 : why_word, Link::because);
        i = why_word - 1;
      } else if (const std::size_t by_word = match(text, i, by_words)) {
        cut(i, by_word, Link::by);
        i = by_word - 1;
      } else if (const std::size_t both = match(text, i, "and|but|while|whereas")) {
        cut(i, both, Link::conjunction);
        i = both - 1;
      } else {
        while (i + 1 < text.size() && (is_small(text[i + 1]) || is_capital(text[i + 1]))) ++i;
      }
    } else if (c == '&') {
      cut(i, i + 1, Link::conjunction);
    }
  }
  cut(text.size(), text.size(), Link::stop);
  return parts;
}

}  // namespace prover
