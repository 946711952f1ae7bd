#include "prover/rule/hint_fields.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <tuple>
#include <variant>

namespace prover {
namespace {

constexpr std::size_t most_mistakes = 50;  // of one file; what is no file of hints would be told line by line

constexpr std::array<HintRung, 3> rungs = {HintRung::where, HintRung::kind, HintRung::places};

std::optional<HintRung> rung_from(std::string_view word) {
  for (const HintRung rung : rungs)
    if (name_of(rung) == word) return rung;
  return std::nullopt;
}

// Two arms in either order, the two ends of a segment in either order; nothing for what is neither.
std::vector<PointId> quantity(const Term& term) {
  if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
    const auto [low, high] = std::minmax(angle->arm1, angle->arm2);
    return {angle->vertex, low, high};
  }
  if (const auto* segment = std::get_if<Segment>(&term.quantity)) {
    const auto [low, high] = std::minmax(segment->a, segment->b);
    return {low, high};
  }
  return {};
}

std::vector<PointId> quantity(const WordingPiece& piece) {
  if (!piece.is_place) return {};
  if (piece.kind == PlaceKind::angle) {
    const auto [low, high] = std::minmax(piece.points[0], piece.points[2]);
    return {piece.points[1], low, high};
  }
  if (piece.kind == PlaceKind::points && piece.points.size() == 2) {
    const auto [low, high] = std::minmax(piece.points[0], piece.points[1]);
    return {low, high};
  }
  return {};
}

// Angles, or lengths, of one conclusion that a sentence may not name together.
bool names_both_of_a_conclusion(const Rule& rule, const std::vector<WordingPiece>& pieces) {
  for (const Phrase& phrase : rule.then) {
    std::set<std::vector<PointId>> of_conclusion, named;
    for (const Expression& side : phrase.relation.expressions)
      for (const Term& term : side.terms)
        if (auto q = quantity(term); !q.empty()) of_conclusion.insert(std::move(q));
    for (const WordingPiece& piece : pieces)
      if (auto q = quantity(piece); of_conclusion.contains(q)) named.insert(std::move(q));
    if (named.size() > 1) return true;
  }
  return false;
}

}  // namespace

std::optional<HintField> read_hint(const Field& field, std::vector<Diagnostic>& mistakes) {
  HintField hint;
  std::optional<HintRung> rung;
  const std::string_view value = field.value;
  const std::size_t quote = std::min(value.find('"'), value.size());
  const auto refuse = [&](Span span, std::string message, std::string way_out) {
    mistakes.push_back({Severity::error, span, std::move(message), std::move(way_out)});
    return std::nullopt;
  };
  const std::string shape = "write `hint where \"…\"`, `hint kind \"…\"` or `hint places \"…\"`; in a register's own words `hint us kind \"…\"`";
  bool has_register = false;
  for (std::size_t at = 0; at < quote;) {
    const std::size_t end = std::min(value.find_first_of(" \t\r\n\"", at), quote);
    const std::string word(value.substr(at, end - at));
    const Span here{field.begin + at, field.begin + end};
    at = end + (end < quote ? 1 : 0);
    if (word.empty()) continue;
    if (rung) return refuse(here, "a sentence between quotes was expected here", shape);
    if (const auto wording = register_from(word); wording && !has_register) {
      hint.wording = *wording;
      has_register = true;
    } else if (rung = rung_from(word); !rung) {
      std::vector<std::string> known;
      for (const HintRung one : rungs) known.emplace_back(name_of(one));
      const auto near = nearest_word(word, known);
      return refuse(here, "unknown rung \"" + word + "\"", near ? "did you mean `" + *near + "`?" : shape);
    }
  }
  if (!rung) return refuse(field.name_span, "a hint says at which rung it stands", shape);
  Field sentence = field;
  sentence.value = field.value.substr(quote);
  sentence.begin += quote;
  if (sentence.value.empty()) return refuse(field.name_span, "this hint has no sentence", shape);
  hint.rung = *rung;
  hint.text = quoted_text(sentence, mistakes, &hint.begin);
  if (hint.text.empty()) return std::nullopt;
  return hint;
}

void set_hint(Rule& rule, const HintField& hint) {
  HintSentences& all = rule.hints[hint.wording];
  switch (hint.rung) {
    case HintRung::where: all.where = hint.text; break;
    case HintRung::kind: all.kind = hint.text; break;
    case HintRung::places: all.places = hint.text; break;
  }
}

void lint_hint(const Rule& rule, const HintField& hint, std::vector<Diagnostic>& out) {
  const Span whole{hint.begin, hint.begin + hint.text.size()};
  const auto refuse = [&](Span span, std::string message, std::string way_out) {
    out.push_back({Severity::error, span, std::move(message), std::move(way_out)});
  };
  const std::size_t before = out.size();
  const std::vector<WordingPiece> pieces = wording_pieces(hint.text, rule.variables, &out, hint.begin);
  if (out.size() > before) return;
  for (const WordingPiece& piece : pieces) {
    if (piece.is_place) continue;
    for (const std::string_view sign : {"=", "∥", "//", "⟂", "⊥", "≅", "≡", "+", "°", "∠"})
      if (const std::size_t at = piece.text.find(sign); at != std::string::npos)
        refuse({hint.begin + piece.offset + at, hint.begin + piece.offset + at + sign.size()},
               "a hint asks in words; \"" + std::string(sign) + "\" states something", "ask for it, and write places as {AB} or {angle ABC}");
    if (const std::size_t at = piece.text.find_first_of("0123456789"); at != std::string::npos)
      refuse({hint.begin + piece.offset + at, hint.begin + piece.offset + at + 1}, "a hint holds no number", "ask for it");
  }
  if (names_both_of_a_conclusion(rule, pieces))
    refuse(whole, "this hint names together what the rule makes equal or adds up", "name one of them and ask for the other");
}

bool holds_hints(const RuleFile& file) {
  return file.name.ends_with(".hints");
}

void load_hints(const RuleFile& file, std::vector<Rule>& rules, std::vector<Diagnostic>& mistakes) {
  Rule* rule = nullptr;
  bool under_a_header = false;
  std::set<std::tuple<std::string, Register, HintRung>> seen;
  for (const Field& field : split_fields(file.text)) {
    const auto refuse = [&](Span span, std::string message, std::string way_out) {
      mistakes.push_back({Severity::error, span, std::move(message), std::move(way_out)});
    };
    if (mistakes.size() >= most_mistakes) {
      refuse(field.name_span, "more mistakes follow", "mend these first; rules/README.md says what a file of hints holds");
      return;
    }
    if (field.name == "rule") {
      under_a_header = true;
      const auto at = std::find_if(rules.begin(), rules.end(), [&](const Rule& one) { return one.id == field.value; });
      rule = at == rules.end() ? nullptr : &*at;
      if (rule) continue;
      std::vector<std::string> ids;
      for (const Rule& one : rules) ids.push_back(one.id);
      const auto near = nearest_word(field.value, ids);
      refuse(field.value.empty() ? field.name_span : field.span(), "there is no rule \"" + field.value + "\"",
             near ? "did you mean `" + *near + "`?" : "`anglewright rules` lists all rules");
    } else if (field.name != "hint") {
      refuse(field.name_span, "unknown field `" + std::string(field.name) + "`", "a file of hints holds `rule` and `hint`");
    } else if (!under_a_header) {
      refuse(field.name_span, "this hint belongs to no rule", "write `rule` and the name of a rule above it");
    } else if (const auto hint = read_hint(field, mistakes); hint && rule) {
      const std::size_t before = mistakes.size();
      lint_hint(*rule, *hint, mistakes);
      if (!seen.emplace(rule->id, hint->wording, hint->rung).second)
        refuse(field.name_span, "this sentence is here twice", "keep one of them");
      if (mistakes.size() == before) set_hint(*rule, *hint);
    }
  }
}

}  // namespace prover
