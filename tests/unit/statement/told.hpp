// A figure told in sentences joined by ';', and questions about it in the same language.
#pragma once
#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "prover/language/problem_text.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace told {

using namespace prover;

struct Told {
  // `asked`: sentences whose segments are drawn although nothing is said of them. `numbered`: letters that
  // get the first numbers, in this order.
  explicit Told(std::string_view sentences, std::string_view asked = "", std::vector<Coordinates> views = {},
                std::string_view numbered = "")
      : statement(read(sentences, asked, numbered)), figure(figure_text(statement), std::move(views)) {
    figure.freeze();
  }

  static std::vector<Phrase> phrases(std::string_view text, Names& names) {
    std::vector<Diagnostic> mistakes;
    std::vector<Phrase> read = parse_phrases(text, names, mistakes);
    for (const Diagnostic& mistake : mistakes) FAIL_CHECK(render(mistake, "sentence", text));
    return read;
  }
  Phrase phrase(std::string_view text) const {
    Names names = statement.names;
    const std::vector<Phrase> all = phrases(text, names);
    REQUIRE(all.size() == 1);
    REQUIRE(names.points.size() == statement.names.points.size());  // no new point in a question
    return all[0];
  }

  PointId point(std::string_view name) const {
    const auto& all = statement.names.points;
    const auto found = std::find(all.begin(), all.end(), name);
    REQUIRE(found != all.end());
    return PointId(found - all.begin());
  }
  std::vector<PointId> points(std::string_view letters) const {
    std::vector<PointId> all;
    for (const char letter : letters) all.push_back(point({&letter, 1}));
    return all;
  }
  LineId line(std::string_view two) const {
    return figure.line(point(two.substr(0, 1)), point(two.substr(1, 1)));
  }

  // Where a position sentence is known from: the weakest source among the positions that it means.
  PositionSource source(std::string_view sentence) const {
    PositionSource weakest = PositionSource::text;
    const std::vector<Position> positions = positions_of(phrase(sentence), all_points());
    REQUIRE_FALSE(positions.empty());
    for (const Position& position : positions) weakest = std::max(weakest, figure.source(position));
    return weakest;
  }
  bool says(std::string_view sentence) const { return source(sentence) == PositionSource::text; }

  Meaning meaning(std::string_view sentence) { return meaning_of(phrase(sentence), figure, unknowns); }
  // The equations or facts of a sentence, each normalised and in words.
  std::vector<std::string> means(std::string_view sentence) {
    std::vector<std::string> all;
    for (const Form& form : meaning(sentence).forms)
      all.push_back(describe_equation(form.normalised(), unknowns, statement.names));
    return all;
  }
  Form form(std::string_view sentence) {
    const Meaning found = meaning(sentence);
    INFO(sentence);
    REQUIRE_FALSE(found.forms.empty());
    return found.forms[0];
  }

  Statement statement;
  Arrangement figure;
  UnknownTable unknowns;

 private:
  static Statement read(std::string_view sentences, std::string_view asked, std::string_view numbered) {
    Statement all;
    for (const char letter : numbered) all.names.points.emplace_back(1, letter);
    for (Phrase& phrase : phrases(sentences, all.names)) all.givens.push_back({std::move(phrase), "", false});
    if (!asked.empty()) {
      Goal goal;
      goal.kind = GoalKind::prove;
      goal.claims = phrases(asked, all.names);
      all.goals.push_back(std::move(goal));
    }
    for (Given& given : all.givens) given.text = describe(given.phrase, all.names);
    all.hidden.assign(all.names.points.size(), false);
    return all;
  }
  std::vector<PointId> all_points() const {
    std::vector<PointId> all;
    for (std::size_t i = 0; i < statement.names.points.size(); ++i)
      all.emplace_back(static_cast<std::int64_t>(i));
    return all;
  }
};

}  // namespace told
