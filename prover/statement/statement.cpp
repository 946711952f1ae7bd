#include "prover/statement/statement.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <string_view>

#include "prover/language/phrase_points.hpp"

namespace prover {

namespace {

Phrase isosceles_at(const Phrase& phrase, std::size_t apex) {
  Phrase one = phrase;
  one.predicate = Predicate::isosceles_at;
  std::swap(one.points[0], one.points[apex]);
  if (apex < one.point_spans.size()) std::swap(one.point_spans[0], one.point_spans[apex]);
  return one;
}

constexpr std::string_view draw = "Draw: ";

// A sentence that tells what to do stands as it is written; facts are introduced by "Draw".
std::string in_words(const Sentence& sentence, const Names& names) {
  static constexpr std::array<std::string_view, 22> verbs{"draw", "join", "drop", "produce", "extend", "construct",
                                                          "mark", "build", "through", "from", "complete", "let",
                                                          "erect", "connect", "prolong", "bisect", "take", "place",
                                                          "choose", "mirror", "reflect", "at"};
  std::string facts;
  for (const Phrase& phrase : sentence.phrases) facts += (facts.empty() ? "" : "; ") + describe(phrase, names);
  std::string first;
  for (const char c : sentence.text) {
    if (!std::isalpha(static_cast<unsigned char>(c))) break;
    first += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  if (std::find(verbs.begin(), verbs.end(), first) != verbs.end()) {
    std::string text = sentence.text;
    text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
    while (!text.empty() && (text.back() == '.' || text.back() == ' ')) text.pop_back();
    // A reader must know the letters of points that the sentence does not name.
    if (!sentence.fresh.empty()) text += " (" + facts + ")";
    return text;
  }
  return std::string(draw) + facts;
}

bool names_circle_by_centre(const Phrase& phrase) {
  return phrase.predicate == Predicate::circle || phrase.predicate == Predicate::circle_cyclic;
}

// "PT touches circle O at T" also says that T is on that circle: with two such points, or one and a known point of
// the circle, their radii are equal, though no sentence lists the points.
void say_what_tangents_say(Statement& statement) {
  std::map<PointId, std::vector<PointId>> known, touching;
  for (const Given& given : statement.givens) {
    const std::vector<PointId>& p = given.phrase.points;
    if (names_circle_by_centre(given.phrase)) known[p[0]].insert(known[p[0]].end(), p.begin() + 1, p.end());
    if (given.phrase.predicate == Predicate::diameter && p.size() > 2) known[p[2]].insert(known[p[2]].end(), p.begin(), p.begin() + 2);
    if (given.phrase.predicate == Predicate::tangent) touching[p[2]].push_back(p[1]);
  }
  for (const auto& [centre, points] : touching) {
    const std::vector<PointId>& on_it = known[centre];
    Phrase circle;
    circle.predicate = Predicate::circle;
    circle.points = {centre};
    if (!on_it.empty()) circle.points.push_back(on_it.front());
    const std::size_t told = circle.points.size();
    for (const PointId p : points)
      if (std::find(on_it.begin(), on_it.end(), p) == on_it.end() &&
          std::find(circle.points.begin() + 1, circle.points.end(), p) == circle.points.end())
        circle.points.push_back(p);
    if (circle.points.size() == told || circle.points.size() < 3) continue;
    circle.point_spans.resize(circle.points.size());
    statement.givens.push_back({circle, describe(circle, statement.names), false});
  }
}

}  // namespace

std::vector<bool> points_of_problem(const Statement& statement) {
  std::vector<bool> known(statement.names.points.size(), false);
  for (const Given& given : statement.givens)
    if (!given.added)
      for (const PointId p : points_named(given.phrase)) known[p.index()] = true;
  return known;
}

std::vector<Statement> statements_of(const ProblemText& text) {
  Statement base;
  base.names = text.names;
  base.hidden = text.hidden;
  base.goals = text.goals;
  base.drawn = text.drawn;
  base.positions_count = text.positions_count;
  for (const Sentence& sentence : text.sentences)
    for (const Phrase& phrase : sentence.phrases) base.givens.push_back({phrase, describe(phrase, text.names), false});
  say_what_tangents_say(base);
  for (const Sentence& sentence : text.added) {
    AddedSentence added{in_words(sentence, text.names), sentence.span, {}};
    for (const Phrase& phrase : sentence.phrases) {
      added.givens.push_back(base.givens.size());
      base.givens.push_back({phrase, describe(phrase, text.names), true});
    }
    // Facts that stand side by side are drawn together.
    const bool goes_on = !base.added.empty() && added.text.starts_with(draw) && base.added.back().text.starts_with(draw);
    if (!goes_on) {
      base.added.push_back(std::move(added));
      continue;
    }
    AddedSentence& last = base.added.back();
    last.text += "; " + added.text.substr(draw.size());
    last.span.end = added.span.end;
    last.givens.insert(last.givens.end(), added.givens.begin(), added.givens.end());
  }
  // "Isosceles" alone leaves open which sides are equal: three cases for each triangle said so, at most nine.
  std::vector<Statement> cases{base};
  for (std::size_t i = 0; i < base.givens.size() && cases.size() < 9; ++i) {
    if (base.givens[i].phrase.predicate != Predicate::isosceles) continue;
    std::vector<Statement> split;
    for (const Statement& so_far : cases)
      for (std::size_t apex = 0; apex < 3; ++apex) {
        Statement one = so_far;
        Given& given = one.givens[i];
        given.phrase = isosceles_at(given.phrase, apex);
        given.text = describe(given.phrase, one.names);
        const auto& p = given.phrase.points;
        if (!one.case_name.empty()) one.case_name += ", ";
        one.case_name += fmt::format("{0}{1} = {0}{2}", one.names.of(p[0]), one.names.of(p[1]), one.names.of(p[2]));
        split.push_back(std::move(one));
      }
    cases = std::move(split);
  }
  return cases;
}

std::vector<Phrase> phrases_of(const Statement& statement) {
  std::vector<Phrase> phrases;
  phrases.reserve(statement.givens.size());
  for (const Given& given : statement.givens) phrases.push_back(given.phrase);
  return phrases;
}

}  // namespace prover
