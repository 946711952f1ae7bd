#include "prover/rule/wording.hpp"

#include <algorithm>

namespace prover {
namespace {

bool is_capital(char c) {
  return c >= 'A' && c <= 'Z';
}
bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

// "PA" or "P1A" as point names; nothing when something else stands there.
std::vector<std::string> point_names(std::string_view letters) {
  std::vector<std::string> names;
  for (const char c : letters) {
    if (is_capital(c))
      names.emplace_back(1, c);
    else if (is_digit(c) && !names.empty())
      names.back() += c;
    else
      return {};
  }
  return names;
}

bool read_place(std::string_view inside, const Names& variables, WordingPiece& piece) {
  const auto& known = variables.points;
  if (const auto whole = std::find(known.begin(), known.end(), inside); whole != known.end()) {
    piece.points = {PointId(whole - known.begin())};
    return true;
  }
  constexpr std::string_view angle = "angle ", triangle = "triangle ";
  if (inside.substr(0, angle.size()) == angle) {
    piece.kind = PlaceKind::angle;
    inside.remove_prefix(angle.size());
  } else if (inside.substr(0, triangle.size()) == triangle) {
    piece.kind = PlaceKind::triangle;
    inside.remove_prefix(triangle.size());
  }
  const std::vector<std::string> names = point_names(inside);
  if (names.empty() || (piece.kind != PlaceKind::points && names.size() != 3)) return false;
  for (const std::string& name : names) {
    const auto at = std::find(known.begin(), known.end(), name);
    if (at == known.end()) return false;
    piece.points.emplace_back(at - known.begin());
  }
  return true;
}

}  // namespace

std::vector<WordingPiece> wording_pieces(std::string_view wording, const Names& variables,
                                         std::vector<Diagnostic>* mistakes, std::size_t offset) {
  std::vector<WordingPiece> pieces;
  const auto mistake = [&](std::size_t begin, std::size_t end, std::string message, std::string way_out) {
    if (mistakes)
      mistakes->push_back(
          {Severity::error, {offset + begin, offset + end}, std::move(message), std::move(way_out)});
  };
  const auto add_text = [&](std::string_view text, std::size_t at) {
    if (!text.empty()) pieces.push_back({false, std::string(text), PlaceKind::points, {}, at});
  };
  std::size_t at = 0;
  while (at < wording.size()) {
    const std::size_t brace = wording.find_first_of("{}", at);
    add_text(wording.substr(at, brace == wording.npos ? brace : brace - at), at);
    if (brace == wording.npos) break;
    const std::size_t close = wording.find_first_of("{}", brace + 1);
    if (wording[brace] == '}' || close == wording.npos || wording[close] == '{') {
      mistake(brace, brace + 1, "a brace without its partner", "write places as {AB} or {angle ABC}");
      at = brace + 1;
      continue;
    }
    WordingPiece piece{
        true, std::string(wording.substr(brace + 1, close - brace - 1)), PlaceKind::points, {}, brace};
    if (!read_place(piece.text, variables, piece)) {
      std::string known;
      for (const std::string& name : variables.points) known += (known.empty() ? "" : ", ") + name;
      mistake(brace + 1, close, "\"" + piece.text + "\" names no place of this rule",
              known.empty() ? "leave the braces out" : "its places are " + known);
    }
    pieces.push_back(std::move(piece));
    at = close + 1;
  }
  return pieces;
}

std::string wording_without_places(std::string_view wording) {
  std::string_view head = wording.substr(0, wording.find('{'));
  if (head.size() < wording.size()) {  // back to the comma or semicolon before the place
    const std::size_t mark = head.find_last_of(",;");
    if (mark != head.npos) head = head.substr(0, mark);
  }
  while (!head.empty() && head.back() == ' ') head.remove_suffix(1);
  return std::string(head);
}

// Read from the rule's `source`, which begins with "US name: US3; UK phrase: UK4; NSC short reason: ZA2" as far as the
// published table has a cell.
std::string wording_source(const Rule& rule, Register wording) {
  if (!rule.wording.contains(wording)) return {};
  const std::string_view lead = wording == Register::us   ? "US name: "
                                : wording == Register::uk ? "UK phrase: "
                                : wording == Register::sa ? "NSC short reason: "
                                                          : std::string_view();
  for (const std::string& source : rule.sources) {
    const std::size_t at = lead.empty() ? source.npos : source.find(lead);
    if (at == source.npos) continue;
    const std::size_t begin = at + lead.size();
    return source.substr(begin, source.find(';', begin) - begin);
  }
  const auto recalled = rule.recalled.find(wording);
  return recalled != rule.recalled.end() && recalled->second ? "from memory" : "";
}

namespace {

std::string filled(const Rule& rule, std::string_view text, Register used, const PrintPlace& print) {
  const std::vector<WordingPiece> pieces = wording_pieces(text, rule.variables);
  std::string out;
  for (std::size_t i = 0; i < pieces.size(); ++i)
    out += pieces[i].is_place ? print(pieces, i, used) : pieces[i].text;
  return out;
}

PrintPlace by_names(const std::vector<std::string>& place) {
  return [&place](const std::vector<WordingPiece>& pieces, std::size_t i, Register used) {
    std::string text;
    if (pieces[i].kind == PlaceKind::angle) text = "∠";
    if (pieces[i].kind == PlaceKind::triangle) text = used == Register::sa ? "△" : "triangle ";
    for (const PointId point : pieces[i].points)
      if (point.index() < place.size()) text += place[point.index()];
    return text;
  };
}

}  // namespace

std::string fill_wording(const Rule& rule, Register wording, const PrintPlace& print) {
  auto found = rule.wording.find(wording);
  if (found == rule.wording.end()) found = rule.wording.find(Register::plain);
  if (found == rule.wording.end()) return rule.title;
  const std::string out = filled(rule, found->second, found->first, print);
  // Our words in a school that has none of its own are told apart from the accepted ones.
  return found->first == wording ? out : "[" + out + "]";
}

std::string fill_wording(const Rule& rule, Register wording, const std::vector<std::string>& place) {
  return fill_wording(rule, wording, by_names(place));
}

std::string_view name_of(HintRung rung) {
  static constexpr std::string_view names[] = {"where", "kind", "places"};
  return names[static_cast<std::size_t>(rung)];
}

const std::string& sentence_of(const HintSentences& hints, HintRung rung) {
  switch (rung) {
    case HintRung::where: return hints.where;
    case HintRung::kind: return hints.kind;
    case HintRung::places: break;
  }
  return hints.places;
}

std::string fill_hint(const Rule& rule, Register wording, HintRung rung, const PrintPlace& print) {
  for (const Register used : {wording, Register::plain})
    if (const auto found = rule.hints.find(used); found != rule.hints.end())
      if (const std::string& text = sentence_of(found->second, rung); !text.empty()) return filled(rule, text, used, print);
  return {};
}

std::string fill_hint(const Rule& rule, Register wording, HintRung rung, const std::vector<std::string>& place) {
  return fill_hint(rule, wording, rung, by_names(place));
}

}  // namespace prover
