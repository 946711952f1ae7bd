// The lines of a pupil's work, one after the other: each is taken apart (work_parts.hpp), and what can be read as a
// sentence of the problem's language is a claim; the rest is its reason, or words.
#include "prover/language/work.hpp"

#include <algorithm>
#include <set>

#include "prover/language/claim_reader.hpp"
#include "prover/language/lines.hpp"
#include "prover/language/text_limits.hpp"
#include "prover/language/work_parts.hpp"
#include "prover/language/work_spelling.hpp"
#include "prover/language/work_words.hpp"

namespace prover {

namespace {

using namespace work_words;

std::optional<Rewritten> on_diameter(const Rewritten& text);

constexpr std::size_t longest_line = 2'000;
constexpr std::size_t most_lines = 2'000;
constexpr std::size_t most_parts = 40;
constexpr std::size_t longest_run = 8;  // parts that make one claim: "K, L, M, N, P lie on a circle"

constexpr std::string_view drawing_words =
    "draw|construct|join|connect|produce|extend|prolong|drop|bisect|mark|take|choose|erect|build|mirror|reflect|complete|place|"
    "let us draw|let us join|we draw|we join|we extend|we produce|i draw|i drew|drew|joined";

// With which a claim can begin, after the words of a reason.
bool opens(std::string_view text) {
  if (is_capital(text[0])) return text.size() > 1 && !is_small(text[1]);
  return is_digit(text[0]) || text[0] == '<' || text.starts_with("∠") || text.starts_with("△") || text.starts_with("Δ") ||
         text.starts_with("∆") || text.starts_with("½") || text.starts_with("reflex") ||
         match(text, 0, "angle|angles|triangle|triangles|twice|half") != 0 ||
         (is_small(text[0]) && text.size() > 1 && (text[1] == ' ' || text[1] == '='));
}

bool tells_why(std::string_view text) {
  return find(text, "alternate|alt|corresponding|corresponds|corr|co-interior|cointerior|allied|vertically|opposite|opp|adjacent|"
                    "interior|exterior|subtended|subtend|linear pair|radii|base angles|same segment|complementary|supplementary") !=
         std::string_view::npos;
}

bool reason_like(std::string_view text) {
  return has_prose(text) || text.find("∠s") != std::string_view::npos ||
         (std::any_of(text.begin(), text.end(), is_capital) && !has_letters(text)) ||
         text.find_first_not_of("0123456789()[] ") == std::string_view::npos;
}

// What holds in every figure with these letters and is no fact about it: "triangle KLM", "KL".
bool only_names(const std::vector<Phrase>& phrases) {
  return std::all_of(phrases.begin(), phrases.end(), [](const Phrase& phrase) {
    return phrase.predicate == Predicate::triangle || phrase.predicate == Predicate::convex ||
           phrase.predicate == Predicate::simple_polygon ||
           (phrase.predicate == Predicate::line_order && phrase.points.size() < 3) ||
           (phrase.predicate == Predicate::circle && phrase.points.size() <= 2);
  });
}

bool speaks_of_angles(const Phrase& phrase) {
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (!std::holds_alternative<Segment>(term.quantity)) return true;
  return false;
}

// Facts already said, whichever way round.
class Said {
 public:
  void add(const Phrase& phrase, const Names& names) {
    for (const std::string& key : keys(phrase, names)) known_.insert(key);
  }
  bool has(const Phrase& phrase, const Names& names) const {
    const std::vector<std::string> all = keys(phrase, names);
    return std::all_of(all.begin(), all.end(), [&](const std::string& key) { return known_.contains(key); });
  }

 private:
  static std::vector<std::string> keys(Phrase phrase, const Names& names) {
    const auto order = [](PointId& a, PointId& b) {
      if (b < a) std::swap(a, b);
    };
    if (phrase.predicate == Predicate::parallel || phrase.predicate == Predicate::perpendicular) {
      order(phrase.points[0], phrase.points[1]);
      order(phrase.points[2], phrase.points[3]);
      if (phrase.points[2] < phrase.points[0]) {
        std::swap(phrase.points[0], phrase.points[2]);
        std::swap(phrase.points[1], phrase.points[3]);
      }
    }
    if (phrase.predicate != Predicate::relation) return {describe(phrase, names)};
    std::vector<std::string> sides, pairs;
    for (Expression& expression : phrase.relation.expressions) {
      for (Term& term : expression.terms) {
        if (Angle* angle = std::get_if<Angle>(&term.quantity)) order(angle->arm1, angle->arm2);
        if (Segment* segment = std::get_if<Segment>(&term.quantity)) order(segment->a, segment->b);
      }
      sides.push_back(describe(expression, names));
    }
    for (std::size_t i = 0; i + 1 < sides.size(); ++i)
      pairs.push_back(std::min(sides[i], sides[i + 1]) + (phrase.relation.comparisons[i] == Comparison::equal ? "=" : "<") +
                      std::max(sides[i], sides[i + 1]));
    return pairs;
  }
  std::set<std::string> known_;
};

class WorkReader {
 public:
  WorkReader(ProblemText& problem, const Draft& draft) : problem_(problem), claims_(problem, draft) {
    for (const auto* list : {&problem.sentences, &problem.added})
      for (const Sentence& sentence : *list)
        for (const Phrase& phrase : sentence.phrases) said_.add(phrase, problem.names);
  }

  WorkLine read(std::string_view source, Span span, bool of_problem);

 private:
  struct Unread {
    std::string trouble;
    bool unknown_point = false, ambiguous = false;
  };
  void statement(Rewritten& line, std::size_t begin, WorkLine& read);
  std::size_t take_claim(const Rewritten& line, const std::vector<WorkPart>& parts, std::size_t first, WorkLine& read);
  std::size_t take_drawing(const Rewritten& line, const std::vector<WorkPart>& parts, std::size_t first, WorkLine& read);
  bool of_the_last_too(const Rewritten& line, const WorkPart& before, const WorkPart& part, WorkLine& read);
  bool common_part(const Rewritten& line, const WorkPart& part, WorkLine& read);
  bool cut_inside(const Rewritten& line, const WorkPart& part, WorkLine& read);
  bool claim_at_end(const Rewritten& line, const WorkPart& part, std::size_t from, bool leads, WorkLine& read);
  ReadClaim attempt(const Rewritten& text);
  void accept(ReadClaim claim, WorkLine& read);
  bool supports(const ReadClaim& claim, const WorkLine& read) const;
  bool opens_claim(const Rewritten& line, const std::vector<WorkPart>& parts, std::size_t at);
  void reason(const Rewritten& line, std::size_t begin, std::size_t end, WorkLine& read);
  void bare_value(const Rewritten& line, std::size_t begin, WorkLine& read);
  void finish(const Rewritten& line, const Around& around, WorkLine& read);
  void note(const ReadClaim& failed);

  ProblemText& problem_;
  ClaimReader claims_;
  Said said_;
  std::string_view source_;
  std::optional<Unread> unread_;  // the first claim of the line that could not be read
  std::vector<Rewritten> facts_;  // in the line's first bracket: what a drawing brings, or a reason
  bool facts_used_ = false;
  bool denies_ = false;  // "not", "≠"
  bool gives_ = false;   // "it is given that"
  bool of_problem_ = true, drew_ = false, named_ = false;
  std::optional<Phrase> last_chain_;  // of the lines before: "= 64" goes on with it
};

void WorkReader::note(const ReadClaim& failed) {
  if (!unread_ && !failed.unknown_point && denies_) {
    unread_ = Unread{"What is not so cannot be read here. Write what is so.", false, false};
    return;
  }
  if (!unread_) unread_ = Unread{failed.trouble, failed.unknown_point, failed.ambiguous};
}

void WorkReader::reason(const Rewritten& line, std::size_t begin, std::size_t end, WorkLine& read) {
  const std::string_view text = line.text();
  begin = skip_blanks(text, begin);
  while (end > begin && (text[end - 1] == ' ' || text[end - 1] == '\t' || text[end - 1] == '.' || text[end - 1] == ',' ||
                         text[end - 1] == ';' || text[end - 1] == ':'))
    --end;
  if (begin >= end) return;
  const Span span = line.source({begin, end});
  std::string words(source_.substr(span.begin, span.end - span.begin));
  if (match(words, 0, "similarly|likewise|same reason|as before|in the same way|as above|same as above") == words.size()) {
    read.similarly = true;
    return;
  }
  if (words.find_first_not_of("0123456789()[].-… ") == std::string::npos && find(line.text(), "from|by") == std::string::npos) return;
  for (const std::string_view nothing : {"say", "QED", "as required", "qed", "for short", "construction"})
    if (words == nothing) return;
  // Parts with nothing but a comma or "and" between them are one reason.
  if (!read.reasons.empty() && read.reasons.back().span.end <= span.begin) {
    WorkReason& last = read.reasons.back();
    const std::string_view between = source_.substr(last.span.end, span.begin - last.span.end);
    const std::size_t word = skip_blanks(between, 0);
    const std::size_t joint = std::max(match(between, word, "and|by|as|from|using|with"), word);
    if (!between.empty() && (is_blank(between.substr(joint)) || between == ", " || between == "," || between == "; ") &&
        between.find('(') == std::string_view::npos && between.find("  ") == std::string_view::npos &&
        between.find('\t') == std::string_view::npos) {
      last.span.end = span.end;
      last.text = std::string(source_.substr(last.span.begin, last.span.end - last.span.begin));
      return;
    }
  }
  read.reasons.push_back({std::move(words), span});
}

// "P and Q lie on the circle with diameter LM": P, Q, L and M lie on one circle; of P alone it says that ∠LPM is right.
std::optional<Rewritten> on_diameter(const Rewritten& text) {
  constexpr std::string_view words =
      "lie on the circle with diameter|lies on the circle with diameter|lie on a circle with diameter|lies on a circle with "
      "diameter|are on the circle with diameter|is on the circle with diameter|lie on the circle on diameter|lies on the circle "
      "on diameter|lie on the semicircle on|lies on the semicircle on|are on a circle with diameter|is on a circle with diameter";
  const std::size_t at = find(text.text(), words);
  if (at == std::string::npos) return std::nullopt;
  const std::size_t end = match(text.text(), at, words), row = skip_blanks(text.text(), end);
  if (row + 2 > text.size() || !is_capital(text.text()[row]) || !is_capital(text.text()[row + 1])) return std::nullopt;
  const std::string ends = text.text().substr(row, 2), subject = text.text().substr(0, at);
  Rewritten round = text;
  if (find(subject, "and") == std::string::npos && subject.find(',') == std::string::npos) {
    const std::size_t begin = skip_blanks(subject, 0);
    round.replace(0, text.size(), std::string("∠") + ends[0] + subject.substr(begin, subject.find(' ', begin) - begin) + ends[1] + " = 90");
  } else {
    round.replace(at, text.size(), std::string(", ") + ends[0] + ", " + ends[1] + " lie on a circle");
  }
  return round;
}

ReadClaim WorkReader::attempt(const Rewritten& text) {
  ReadClaim read = claims_.claim(text);
  if (!read.read) {
    // "the triangle is isosceles", where there is one
    if (const std::size_t at = find(text.text(), "the triangle is"); at != std::string::npos && !claims_.only_triangle().empty()) {
      Rewritten named = text;
      const std::size_t begin = at + 12;
      named.replace(begin, begin, " " + claims_.only_triangle());
      if (ReadClaim again = claims_.claim(named); again.read) return again;
    }
    if (const auto round = on_diameter(text)) {
      if (ReadClaim again = claims_.claim(*round); again.read) return again;
    }
    // "KL parallel PQ"
    for (const auto& [word, sign] : {std::pair{"parallel", "∥"}, {"perpendicular", "⊥"}, {"ll", "∥"}, {"II", "∥"}}) {
      const std::size_t at = text.text().find(word);
      if (at == std::string::npos || match(text.text(), at, word) == 0) {
        if (at == std::string::npos || std::string_view(word) != "II") continue;
      }
      Rewritten with_sign = text;
      with_sign.replace(at, at + std::string_view(word).size(), sign);
      if (ReadClaim again = claims_.claim(with_sign); again.read) return again;
    }
    // "K, L, M, N concyclic", "△KLM isosceles": without the verb.
    const std::size_t at = find(text.text(), "concyclic|collinear|isosceles|equilateral|cyclic|parallel|perpendicular|congruent|"
                                             "similar|equal|supplementary|complementary");
    if (at != std::string::npos && at > 0 && find(text.text(), "is|are") == std::string::npos) {
      Rewritten with_verb = text;
      with_verb.replace(at, at, "are ");
      if (ReadClaim again = claims_.claim(with_verb); again.read) return again;
    }
  }
  for (int tries = 0; tries < 3 && !read.read && !read.suggestion.empty() && read.suggestion.size() >= 5; ++tries) {
    // "isoceles": read as the nearest word where the sentence can then be read.
    Rewritten mended = text;
    if (read.place.end > mended.size() || read.place.begin >= read.place.end) break;
    mended.replace(read.place.begin, read.place.end, read.suggestion);
    ReadClaim again = claims_.claim(mended);
    if (again.read) return again;
    if (again.suggestion.empty() || again.suggestion == read.suggestion) break;
    read = std::move(again);
  }
  return read;
}

void WorkReader::accept(ReadClaim claim, WorkLine& read) {
  claims_.accept(claim);
  if (claim.names_letter) named_ = true;
  for (Phrase& phrase : claim.phrases) {
    said_.add(phrase, problem_.names);
    read.claims.push_back(std::move(phrase));
  }
}

// What a line says beside its claim and is known already is its reason: "∠KLP = 70°, KL ∥ MN".
bool WorkReader::supports(const ReadClaim& claim, const WorkLine& read) const {
  if (only_names(claim.phrases)) return true;
  // After the words of a reason too: "alternate angles, KL ∥ MN: ∠KLP = 70°".
  const bool fresh = (read.claims.empty() && !read.reasons.empty()) || std::any_of(read.claims.begin(), read.claims.end(), [](const Phrase& phrase) {
    return phrase.predicate != Predicate::relation || speaks_of_angles(phrase);
  });
  return fresh && std::all_of(claim.phrases.begin(), claim.phrases.end(), [&](const Phrase& phrase) {
           return (phrase.predicate != Predicate::relation || !speaks_of_angles(phrase)) && said_.has(phrase, problem_.names);
         });
}

// The parts from `first` on that make a claim, fewest first. Returns the part after them; `first` if there is none.
std::size_t WorkReader::take_claim(const Rewritten& line, const std::vector<WorkPart>& parts, std::size_t first,
                                   WorkLine& read) {
  std::optional<ReadClaim> first_failure;
  std::size_t names_end = 0;
  ReadClaim names;
  for (std::size_t last = first; last < parts.size() && last < first + longest_run; ++last) {
    if (last > first && (parts[last].link == Link::so || parts[last].link == Link::stop ||
                         parts[last].link == Link::because || parts[last].link == Link::dash))
      break;
    ReadClaim claim = attempt(line.part(parts[first].begin, parts[last].end));
    if (claim.read && !claim.asks) {
      if (only_names(claim.phrases) && !claim.names_letter) {
        if (names_end == 0) {
          names_end = last + 1;
          names = std::move(claim);
        }
        continue;
      }
      // "P is the midpoint of KL and MN": names alone belong to what was said of the others.
      // "isosceles with KL = KM"
      while (last + 1 < parts.size() && parts[last + 1].link == Link::by) {
        ReadClaim more = claims_.claim(line.part(parts[first].begin, parts[last + 1].end));
        if (!more.read || more.asks) break;
        claim = std::move(more);
        ++last;
      }
      accept(std::move(claim), read);
      return last + 1;
    }
    if (claim.asks) return first;
    if (!first_failure || (claim.unknown_point && !first_failure->unknown_point)) first_failure = std::move(claim);
  }
  if (names_end != 0) {
    reason(line, parts[first].begin, parts[names_end - 1].end, read);
    return names_end;
  }
  if (first_failure) {
    const std::string_view text = std::string_view(line.text()).substr(parts[first].begin, parts[first].end - parts[first].begin);
    const bool looks = first_failure->unknown_point || first_failure->ambiguous ||
                       ((has_relation(text) || text.find("∠") != std::string_view::npos) &&
                        (has_letters(text) || !has_prose(text)));
    // "∠K and ∠L are alternate angles" says why, not how large.
    if (first + 1 < parts.size() && parts[first + 1].link == Link::conjunction && !has_prose(text) && !has_relation(text) &&
        tells_why(std::string_view(line.text()).substr(parts[first].begin, parts[first + 1].end - parts[first].begin)) &&
        !first_failure->unknown_point) {
      reason(line, parts[first].begin, parts[first + 1].end, read);
      return first + 2;
    }
    if (tells_why(text) && !first_failure->unknown_point) return cut_inside(line, parts[first], read) ? first + 1 : first;
    if (looks && !(has_prose(text) && !read.claims.empty() && !first_failure->unknown_point)) {
      if (first_failure->grammatical || !cut_inside(line, parts[first], read)) note(*first_failure);
      return first + 1;
    }
  }
  return first;
}

// "KP is common": KP = KP.
bool WorkReader::common_part(const Rewritten& line, const WorkPart& part, WorkLine& read) {
  const std::string text = line.text().substr(part.begin, part.end - part.begin);
  const std::size_t at = find(text, "common|shared|in common");
  if (at == std::string::npos || has_relation(text)) return false;
  std::size_t end = at;
  for (bool moved = true; moved;) {
    moved = false;
    while (end > 0 && (text[end - 1] == ' ' || text[end - 1] == ',' || text[end - 1] == ':')) --end;
    for (const std::string_view word : {"is", "are", "a", "the"})
      if (end >= word.size() && match(text, end - word.size(), word) == end) {
        end -= word.size();
        moved = true;
        break;
      }
  }
  Rewritten equation = line.part(part.begin, part.begin + end);
  const std::string name = equation.text();
  if (is_blank(name)) return false;
  equation.replace(end, end, " = " + name);
  ReadClaim claim = claims_.claim(equation);
  if (!claim.read || claim.phrases.empty()) return false;
  accept(std::move(claim), read);
  reason(line, part.begin + at, part.end, read);
  return true;
}

// "P is the midpoint of KM and LN": the row of letters after "and" takes the place of the last one before it.
bool WorkReader::of_the_last_too(const Rewritten& line, const WorkPart& before, const WorkPart& part, WorkLine& read) {
  const std::string text = line.text().substr(part.begin, part.end - part.begin);
  if (read.claims.empty() || has_prose(text) || has_relation(text) || !has_letters(text)) return false;
  std::size_t row = skip_blanks(text, 0);
  if (const std::size_t noun = match(text, row, "angle|triangle|line|segment|side")) row = skip_blanks(text, noun);
  std::size_t row_end = text.size();
  while (row_end > row && text[row_end - 1] == ' ') --row_end;
  if (text.find(' ', row) < row_end) return false;
  Rewritten again = line.part(before.begin, before.end);
  std::size_t end = again.size();
  while (end > 0 && again.text()[end - 1] == ' ') --end;
  std::size_t begin = again.text().find_last_of(" =∥", end == 0 ? 0 : end - 1);
  if (begin == std::string::npos || ++begin >= end || !has_letters(again.text().substr(begin, end - begin))) return false;
  again.replace(begin, end, text.substr(row, row_end - row));
  ReadClaim claim = claims_.claim(again);
  if (!claim.read || claim.asks || claim.phrases.empty()) return false;
  accept(std::move(claim), read);
  return true;
}

// "∠KLP = 70 alternate angles", "by SAS △KLM ≅ △PQR": no sign stands between the claim and its reason.
bool WorkReader::cut_inside(const Rewritten& line, const WorkPart& part, WorkLine& read) {
  static constexpr std::string_view goes_on =
      "more|less|times|of|than|then|to|or|greater|smaller|bigger|larger|half|twice|plus|minus|bisects|not|is|are|meets|degrees|degree|"
      "and|with|at|double|equals|equal|parallel|perpendicular|congruent|similar|respectively|deg|cm|mm|units|in this order";
  const std::string_view text = line.text();
  std::vector<std::size_t> begins;  // of words
  for (std::size_t i = part.begin; i < part.end; ++i)
    if (i > part.begin && text[i - 1] == ' ' && text[i] != ' ') begins.push_back(i);
  if (begins.size() > 24) return false;
  for (auto at = begins.rbegin(); at != begins.rend(); ++at) {
    const std::string_view rest = text.substr(*at, part.end - *at);
    const bool word = is_small(rest[0]) || (is_capital(rest[0]) && rest.size() > 1 && is_small(rest[1])) ||
                      (is_capital(rest[0]) && match(rest, 0, "z angles|f angles|c angles|u angles|x angles|n angles|z shape|f shape") != 0) ||
                      (rest.size() > 1 && is_capital(rest[0]) && rest[1] == '-') || rest.starts_with("∠s") || rest.starts_with("∠ ") || (is_capital(rest[0]) && !has_letters(rest));
    if (!word || match(text, *at, goes_on) != 0) continue;
    const std::string_view head = text.substr(part.begin, *at - part.begin);
    if (!has_relation(head) && !has_prose(head)) continue;
    ReadClaim claim = claims_.claim(line.part(part.begin, *at));
    if (!claim.read || claim.asks || only_names(claim.phrases)) continue;
    accept(std::move(claim), read);
    reason(line, *at, part.end, read);
    return true;
  }
  return claim_at_end(line, part, part.begin, false, read);
}

// A claim that the last words of a part make; what stands before them, from `from` on, is the reason.
bool WorkReader::claim_at_end(const Rewritten& line, const WorkPart& part, std::size_t from, bool leads, WorkLine& read) {
  const std::string_view text = line.text();
  std::size_t tries = 0;
  for (std::size_t at = part.begin + 1; at < part.end && tries < 24; ++at) {
    if (text[at - 1] != ' ' || text[at] == ' ') continue;
    ++tries;
    const std::string_view head = text.substr(part.begin, at - part.begin);
    if (is_blank(head)) continue;
    if (find(head, "not|never|no|suppose|assume|prove|show|want|need|cannot|or|than|more|less|half|twice|times|of|isn|aren") !=
        std::string_view::npos)
      return false;
    if (joins_before(text, at) || joins_at(text, at) || !opens(text.substr(at))) continue;
    if (!reason_like(head) || (has_relation(head) && !leads)) return false;
    ReadClaim claim = claims_.claim(line.part(at, part.end));
    if (claim.unknown_point && has_relation(text.substr(at, part.end - at))) {
      note(claim);
      return true;
    }
    if (!claim.read || claim.asks || only_names(claim.phrases)) continue;
    reason(line, from, at, read);
    accept(std::move(claim), read);
    return true;
  }
  return false;
}

std::size_t WorkReader::take_drawing(const Rewritten& line, const std::vector<WorkPart>& parts, std::size_t first,
                                     WorkLine& read) {
  const std::string_view whole = line.text();
  std::size_t end = first + 1;
  const auto goes_on = [&](const WorkPart& part) {  // "so that it bisects ∠LKN" says what is drawn
    if (part.link == Link::so) return match(whole, skip_blanks(whole, part.begin), "that") != 0;
    return part.link != Link::stop && part.link != Link::because && part.link != Link::semicolon;
  };
  while (end < parts.size() && goes_on(parts[end])) ++end;
  // What is left out of the drawing must stand by itself: another drawing, a claim, or a reason that names no points.
  const auto stands_alone = [&](std::size_t at) {
    if (at == end) return true;
    if (parts[at].link == Link::so) return false;
    const Rewritten rest = line.part(parts[at].begin, parts[at].end);
    return match(whole, skip_blanks(whole, parts[at].begin), drawing_words) != 0 || !has_letters(rest.text()) ||
           (has_relation(rest.text()) && claims_.claim(rest).read) ||
           match(whole, skip_blanks(whole, parts[at].begin), "let|call") != 0;
  };
  // "Draw KM so that it bisects ∠LKN", where K and M are there: KM is drawn, and the rest is claimed.
  const std::string all = line.text().substr(parts[first].begin, parts[end - 1].end - parts[first].begin);
  if (const std::size_t that = find(all, "so that it|such that it|so it"); that != std::string::npos) {
    std::size_t row = that;
    while (row > 0 && all[row - 1] == ' ') --row;
    const std::size_t row_end = row;
    while (row > 0 && is_capital(all[row - 1])) --row;
    const bool old = row_end == row + 2 && claims_.find_point(std::string(1, all[row])) && claims_.find_point(std::string(1, all[row + 1]));
    const Rewritten head = line.part(parts[first].begin, parts[first].begin + that);
    if (old && claims_.drawing(head, of_problem_ ? line.source({parts[first].begin, parts[first].begin + that}) : Span{}).read) {
      read.drawn.push_back(problem_.added.size() - 1);
      drew_ = true;
      Rewritten rest = line.part(0, parts[end - 1].end);
      rest.replace(parts[first].begin, parts[first].begin + match(all, that, "so that it|such that it|so it"), all.substr(row, 2));
      statement(rest, parts[first].begin, read);
      return end;
    }
  }
  std::optional<ReadClaim> failure;
  for (std::size_t last = end; last > first; --last) {
    if (!stands_alone(last)) continue;
    const Rewritten text = line.part(parts[first].begin, parts[last - 1].end);
    const Span span = of_problem_ ? line.source({parts[first].begin, parts[last - 1].end}) : Span{};
    ReadClaim drawn;
    if (last == end && !facts_.empty()) drawn = claims_.drawing(text, span, facts_);
    if (drawn.read) facts_used_ = true;
    if (!drawn.read) drawn = claims_.drawing(text, span);
    if (drawn.read) {
      read.drawn.push_back(problem_.added.size() - 1);
      for (const Phrase& phrase : problem_.added.back().phrases) said_.add(phrase, problem_.names);
      drew_ = true;
      return last;
    }
    if (!failure) failure = std::move(drawn);
  }
  if (failure) note(*failure);
  return end;
}

// A part that begins a claim of its own, rather than going on with the reason before it.
bool WorkReader::opens_claim(const Rewritten& line, const std::vector<WorkPart>& parts, std::size_t at) {
  const ReadClaim claim = claims_.claim(line.part(parts[at].begin, parts[at].end));
  if (!claim.read || claim.asks || only_names(claim.phrases)) return false;
  return std::any_of(claim.phrases.begin(), claim.phrases.end(),
                     [&](const Phrase& phrase) { return !said_.has(phrase, problem_.names); });
}

void WorkReader::statement(Rewritten& line, std::size_t begin, WorkLine& read) {
  const std::vector<WorkPart> parts = cut_parts(line, begin);
  if (parts.size() > most_parts) {
    unread_ = Unread{"This line is too long to be read. Write one step a line.", false, false};
    return;
  }
  const auto reasons_until = [&](std::size_t first, std::size_t end) {
    reason(line, parts[first].begin, parts[end - 1].end, read);
    return end;
  };
  for (std::size_t i = 0; i < parts.size();) {
    const WorkPart& part = parts[i];
    const std::string_view text = std::string_view(line.text()).substr(part.begin, part.end - part.begin);
    const std::size_t word = skip_blanks(line.text(), part.begin);
    if (part.link == Link::because || (part.link == Link::by && (i > 0 || !read.claims.empty()))) {
      // "Since KL ∥ MN and …, ∠KLP = ∠LPM": up to a comma after which something new is claimed.
      std::size_t end = i + 1;
      while (end < parts.size() && parts[end].link != Link::so && parts[end].link != Link::stop) {
        const bool may_open = parts[end].link == Link::comma || parts[end].link == Link::semicolon;
        if (may_open && opens_claim(line, parts, end)) break;
        ++end;
      }
      if (end == parts.size() && i == 0 && read.claims.empty()) {  // what is claimed was known before
        for (std::size_t last = end - 1; last > i && end == parts.size(); --last)
          if (parts[last].link == Link::comma && claims_.claim(line.part(parts[last].begin, parts[last].end)).read) end = last;
      }
      // "By SAS △KLM ≅ △PQR": no sign between the reason and its claim.
      const bool leads = i == 0 && end == parts.size() && read.claims.empty();
      if (!leads || !claim_at_end(line, parts[end - 1], part.begin, true, read)) reasons_until(i, end);
      i = end;
      continue;
    }
    if (match(line.text(), word, drawing_words) != 0 ||
        (match(line.text(), word, "through|from|at") != 0 && find(text, "draw|construct|join") != std::string_view::npos)) {
      i = take_drawing(line, parts, i, read);
      continue;
    }
    const bool goes_on = part.link == Link::comma || part.link == Link::conjunction || part.link == Link::semicolon;
    if (i > 0 && goes_on && (!read.claims.empty() || !read.reasons.empty())) {
      const ReadClaim claim = claims_.claim(line.part(part.begin, part.end));
      // "…, isosceles triangle KLQ": a name, not a statement.
      const bool names = !has_relation(text) && find(text, "is|are|bisects|bisect|lies|lie|touches|meets|meet|cuts|add") == std::string_view::npos;
      if (claim.read && (names ? !read.claims.empty() : supports(claim, read))) {
        i = reasons_until(i, i + 1);
        continue;
      }
    }
    if (match(line.text(), word, "let") != 0 && claims_.claim(line.part(part.begin, parts.back().end)).unknown_point) {
      i = take_drawing(line, parts, i, read);
      continue;
    }
    if (!has_relation(text) && !has_letters(text) && text.find("∠") == std::string_view::npos && !has_prose(text) &&
        std::count_if(text.begin(), text.end(), is_capital) >= 2) {
      reason(line, part.begin, part.end, read);  // "SAS"
      ++i;
      continue;
    }
    if (common_part(line, part, read) || (i > 0 && goes_on && of_the_last_too(line, parts[i - 1], part, read))) {
      ++i;
      continue;
    }
    const std::size_t after = take_claim(line, parts, i, read);
    if (after != i) {
      i = after;
      continue;
    }
    if (!(has_prose(text) && cut_inside(line, part, read))) {
      const std::size_t subject = skip_blanks(text, 0);
      const bool named = subject + 1 < text.size() && is_capital(text[subject]) && !is_small(text[subject + 1]);
      const bool of_the_figure = !tells_why(text) && (named || (match(text, subject, "angle|triangle") != 0 && has_letters(text.substr(subject, 14))) || text.substr(subject).starts_with("∠")) &&
                                 has_letters(text) && has_prose(text);
      if (of_the_figure && read.claims.empty() && part.link != Link::comma) {
        note(attempt(line.part(part.begin, part.end)));
      } else {
        reason(line, part.begin, part.end, read);
      }
    }
    ++i;
  }
  // "If ∠KLM = 60°", "since KL ∥ MN" and nothing else: then this is what the line says.
  if (read.claims.empty() && read.drawn.empty() && !named_ && !unread_ && !parts.empty() && parts[0].link == Link::because) {
    WorkLine again;
    for (std::size_t i = 0; i < parts.size();) {
      const std::size_t after = take_claim(line, parts, i, again);
      if (after == i) reason(line, parts[i].begin, parts[i].end, again);
      i = std::max(after, i + 1);
    }
    if (again.claims.empty()) {
      unread_.reset();
    } else {
      read.claims = std::move(again.claims);
      read.reasons = std::move(again.reasons);
      if (gives_) read.reasons.push_back({"given", {}});
    }
  }
}

// "64", "= 64", "Answer: 64°": what the only question asks for.
void WorkReader::bare_value(const Rewritten& line, std::size_t begin, WorkLine& read) {
  const std::string text = line.text().substr(std::min(begin, line.size()));
  std::size_t at = skip_blanks(text, 0);
  if (at < text.size() && text[at] == '=') at = skip_blanks(text, at + 1);
  std::size_t number = std::string::npos;
  std::size_t numbers = 0;
  for (std::size_t i = at; i < text.size(); ++i) {
    if (!is_digit(text[i])) continue;
    if (number == std::string::npos) number = i;
    ++numbers;
    while (i + 1 < text.size() && (is_digit(text[i + 1]) || ((text[i + 1] == '.' || text[i + 1] == ',') && i + 2 < text.size() &&
                                                             is_digit(text[i + 2]))))
      ++i;
  }
  if (number == std::string::npos) return;
  const bool plain = !has_prose(text) && !has_letters(text) && std::none_of(text.begin() + static_cast<std::ptrdiff_t>(at),
                                                                            text.begin() + static_cast<std::ptrdiff_t>(number), is_small);
  const bool worded = numbers == 1 && !has_letters(text) &&
                      find(text, "measured|measure|protractor|answer|ans|it is|it's|its|that's|that is|this is|angle is|must be|is equal to|i get|"
                          "makes|value is|equals") !=
                          std::string::npos;
  if (!plain && !worded) return;
  std::erase_if(read.reasons, [](const WorkReason& one) {
    return !has_prose(one.text) || std::any_of(one.text.begin(), one.text.end(), is_digit);
  });
  const auto asked = claims_.asked();
  if (!asked) {
    if (plain && !unread_) unread_ = Unread{"It is not said which angle or length this is.", false, false};
    return;
  }
  std::string value = plain ? text.substr(at) : text.substr(number);
  while (!value.empty() && (value.back() == '.' || value.back() == ' ' || value.back() == '!')) value.pop_back();
  Rewritten equation(source_, line.source({0, 0}));
  equation.replace(0, 0, "0 = " + value);
  ReadClaim claim = claims_.claim(equation);
  if (!claim.read || claim.phrases.size() != 1 || claim.phrases[0].predicate != Predicate::relation) return;
  Phrase phrase = claim.phrases[0];
  phrase.relation.expressions[0] = *asked;
  phrase.span = read.span;
  for (Expression& expression : phrase.relation.expressions) {
    expression.span = read.span;
    for (Term& term : expression.terms) term.span = read.span;
  }
  unread_.reset();
  if (!plain && find(text, "measured|measure|protractor") != std::string::npos && read.reasons.empty())
    reason(line, begin + skip_blanks(text, 0), begin + number, read);
  claim.phrases = {phrase};
  accept(std::move(claim), read);
}

void WorkReader::finish(const Rewritten& line, const Around& around, WorkLine& read) {
  if (unread_) {
    read.kind = WorkKind::unread;
    read.trouble = unread_->trouble;
    read.unknown_point = unread_->unknown_point;
    read.ambiguous = unread_->ambiguous;
    read.claims.clear();
    return;
  }
  for (const auto& [begin, end] : around.places) {
    Span span = line.source({begin, end});
    std::string words(source_.substr(span.begin, span.end - span.begin));
    if (!words.empty() && words[0] == 'I') words[0] = 'i';
    if (!words.empty() && words[0] == 'F') words[0] = 'f';
    if (!read.claims.empty()) read.reasons.push_back({std::move(words), span});
  }
  if (drew_) {
    read.kind = WorkKind::construction;
  } else if (!read.claims.empty()) {
    read.kind = WorkKind::claim;
  } else if (named_) {
    read.kind = WorkKind::naming;
  } else {
    read.kind = WorkKind::remark;
  }
  for (const Phrase& phrase : read.claims)
    if (phrase.predicate == Predicate::relation) last_chain_ = phrase;
}

WorkLine WorkReader::read(std::string_view source, Span span, bool of_problem) {
  WorkLine read;
  source_ = source;
  of_problem_ = of_problem;
  read.span = span;
  read.text = std::string(source.substr(span.begin, span.end - span.begin));
  unread_.reset();
  drew_ = named_ = false;
  if (span.end - span.begin > longest_line) {
    read.trouble = "This line is longer than " + std::to_string(longest_line) + " bytes. Write one step a line.";
    return read;
  }
  if (first_bad_byte(read.text)) {
    read.trouble = "There are signs in this line that are no text.";
    while (const auto bad = first_bad_byte(read.text)) read.text[*bad] = '?';
    return read;
  }
  Rewritten line(source, span);
  if (blank_crossed_out(line)) {
    read.kind = WorkKind::crossed_out;
    return read;
  }
  const Rewritten whole = line;
  blank_ending(line);
  const auto reasons = take_out_reasons(line);
  denies_ = line.text().find("≠") != std::string::npos || find(line.text(), "not") != std::string::npos;
  facts_.clear();
  facts_used_ = false;
  if (!reasons.empty()) {
    std::size_t from = reasons[0].first;
    for (std::size_t i = from; i <= reasons[0].second; ++i)
      if (i == reasons[0].second || whole.text()[i] == ';') {
        facts_.push_back(whole.part(from, i));
        from = i + 1;
      }
  }
  std::string letters;
  for (const std::string& name : problem_.names.points) letters += name[0];
  spell_out(line, letters);
  Around around = look_around(line, 0);
  read.concludes = around.concludes;
  read.similarly = around.similarly;
  if (around.asks) {
    read.kind = WorkKind::remark;
    return read;
  }
  gives_ = around.since && around.says_given;
  std::vector<std::vector<PointId>> figures;
  for (const auto& [begin, end] : around.places) {
    const std::string_view text = std::string_view(line.text()).substr(begin, end - begin);
    for (std::size_t i = 0; i < text.size(); ++i) {
      std::vector<PointId> figure;
      std::size_t k = i;
      for (; k < text.size() && is_capital(text[k]); ++k)
        if (const auto point = claims_.find_point(std::string(1, text[k]))) figure.push_back(*point);
      if (k - i >= 3 && figure.size() == k - i) figures.push_back(figure);
      i = std::max(i, k);
    }
  }
  claims_.speak_of(std::move(figures));
  std::size_t begin = around.begin;
  const std::size_t first = skip_blanks(line.text(), begin);
  const bool goes_on = first < line.size() && line.text()[first] == '=';
  if (around.since) {
    line.replace(begin, begin, "because ");
  } else if (goes_on && last_chain_ && !around.answers) {
    line.replace(first, first, "0 ");
  }
  const std::size_t before = read.claims.size();
  statement(line, begin, read);
  if (goes_on && !around.since && last_chain_ && !around.answers && read.claims.size() > before &&
      read.claims[before].predicate == Predicate::relation) {
    // "= 64" below "∠KLQ = (180° − 52°) ÷ 2"
    Relation& own = read.claims[before].relation;
    const Relation& chain = last_chain_->relation;
    std::vector<Expression> sides = {chain.expressions.front()};
    if (chain.expressions.size() > 1) sides.push_back(chain.expressions.back());
    sides.insert(sides.end(), own.expressions.begin() + 1, own.expressions.end());
    own.comparisons.assign(sides.size() - 1, Comparison::equal);
    own.expressions = std::move(sides);
  }
  for (std::size_t i = facts_used_ ? 1 : 0; i < reasons.size(); ++i) reason(whole, reasons[i].first, reasons[i].second, read);
  std::stable_sort(read.reasons.begin(), read.reasons.end(),
                   [](const WorkReason& a, const WorkReason& b) { return a.span.begin < b.span.begin; });
  if (around.says_given && !around.since && !read.claims.empty()) read.reasons.push_back({"given", line.source({0, around.begin})});
  if (read.claims.empty() && read.drawn.empty() && !named_) bare_value(line, begin, read);
  finish(line, around, read);
  return read;
}

}  // namespace

PupilWork read_work(std::string_view problem, std::string_view work) {
  PupilWork result;
  std::vector<Piece> lines;
  for (const Piece& piece : cut_into_pieces(problem))
    if (piece.kind == LineKind::other && piece.keyword.size() == 4 && (piece.keyword[0] == 'w' || piece.keyword[0] == 'W'))
      lines.push_back(piece);
  // Bytes that are no text spoil the pupil's line in which they stand, not the problem.
  std::string clean(problem);
  for (const Piece& piece : lines)
    if (first_bad_byte(problem.substr(piece.span.begin, piece.span.end - piece.span.begin)))
      std::fill(clean.begin() + static_cast<std::ptrdiff_t>(piece.span.begin),
                clean.begin() + static_cast<std::ptrdiff_t>(piece.span.end), '.');
  ProblemParser parser(clean);
  parser.parse();
  for (const std::string& name : capitals_of(work)) parser.draft().written.insert(name);
  WorkReader reader(parser.problem(), parser.draft());
  const auto add = [&](std::string_view text, Span span, bool of_problem) {
    if (result.lines.size() >= most_lines) return;
    result.lines.push_back(reader.read(text, span, of_problem));
    result.lines.back().number = static_cast<int>(result.lines.size());
  };
  for (const Piece& piece : lines) add(problem, piece.span, true);
  for (std::size_t begin = 0; begin < work.size();) {
    const std::size_t end = std::min(work.find('\n', begin), work.size());
    Span span{begin, end};
    while (span.begin < span.end && (work[span.begin] == ' ' || work[span.begin] == '\t' || work[span.begin] == '\r')) ++span.begin;
    while (span.begin < span.end && (work[span.end - 1] == ' ' || work[span.end - 1] == '\t' || work[span.end - 1] == '\r')) --span.end;
    if (span.begin < span.end) add(work, span, false);
    begin = end + 1;
  }
  result.problem = parser.take();
  return result;
}

}  // namespace prover
