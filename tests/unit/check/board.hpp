// A small problem and a proof of it, written by hand: points are letters, "KLM" is an angle, "KL" a length,
// "x" a number, "" the constant 1. Independent of the parser, so that a proof can be as wrong as a test needs
// it.
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "prover/check/check.hpp"

namespace board {

using namespace prover;
using Sum = std::vector<std::pair<Rational, std::string>>;

struct Board {
  explicit Board(const std::string& letters) {
    for (const char letter : letters) statement.names.points.emplace_back(1, letter);
    statement.hidden.assign(letters.size(), false);
    Rule given;
    given.id = "given";
    given.builtin = Builtin::given;
    catalogue.rules.push_back(given);
  }

  PointId point(char letter) const {
    for (std::size_t i = 0; i < statement.names.points.size(); ++i)
      if (statement.names.points[i][0] == letter) return PointId(static_cast<std::int64_t>(i));
    return {};
  }
  std::vector<PointId> points(const std::string& letters) const {
    std::vector<PointId> result;
    for (const char letter : letters) result.push_back(point(letter));
    return result;
  }

  Phrase phrase(Predicate predicate, const std::string& letters) const {
    Phrase result;
    result.predicate = predicate;
    result.points = points(letters);
    return result;
  }
  Expression expression(const Sum& sum) const {
    Expression result;
    for (const auto& [coefficient, name] : sum) {
      Term term;
      term.coefficient = coefficient;
      if (name.size() == 3) term.quantity = Angle{point(name[0]), point(name[1]), point(name[2])};
      if (name.size() == 2) term.quantity = Segment{point(name[0]), point(name[1])};
      if (name.size() == 1) term.quantity = Number{name};
      result.terms.push_back(term);
    }
    return result;
  }
  Phrase relation(const Sum& left, const Sum& right, Comparison comparison = Comparison::equal) const {
    Phrase result;
    result.relation.expressions = {expression(left), expression(right)};
    result.relation.comparisons = {comparison};
    return result;
  }

  int given(const Phrase& phrase) {
    statement.givens.push_back({phrase, "", false});
    return static_cast<int>(statement.givens.size()) - 1;
  }

  Form form(const Sum& sum) {
    Form result;
    for (const auto& [coefficient, name] : sum) {
      Unknown unknown;
      if (name.size() == 3) {
        unknown.points = {point(name[1]), std::min(point(name[0]), point(name[2])),
                          std::max(point(name[0]), point(name[2]))};
      } else if (name.size() == 2) {
        unknown.kind = UnknownKind::length;
        unknown.points = {std::min(point(name[0]), point(name[1])), std::max(point(name[0]), point(name[1]))};
      } else if (name.size() == 1) {
        unknown.kind = UnknownKind::number;
        unknown.name = name;
      } else {
        result.add(Form::number(coefficient));
        continue;
      }
      result.add(Form::of(unknowns.intern(unknown)), coefficient);
    }
    return result;
  }
  Form fact(FactKind kind, const std::string& letters) {
    return Form::of(unknowns.intern({UnknownKind::fact, kind, points(letters), ""}));
  }

  // A rule over the variables A, B, C …; its phrases are made by a Board of those letters.
  RuleId rule(const std::string& id, const std::string& variables, std::vector<Phrase> givens,
              std::vector<Phrase> where, std::vector<Phrase> then) {
    Rule result;
    result.id = id;
    for (const char letter : variables) result.variables.points.emplace_back(1, letter);
    result.given = std::move(givens);
    result.where = std::move(where);
    result.then = std::move(then);
    catalogue.rules.push_back(std::move(result));
    return RuleId(static_cast<std::int64_t>(catalogue.rules.size()) - 1);
  }
  RuleId builtin(Builtin shape) {
    Rule result;
    result.id = "shape";
    result.builtin = shape;
    catalogue.rules.push_back(std::move(result));
    return RuleId(static_cast<std::int64_t>(catalogue.rules.size()) - 1);
  }

  int say_given(int hypothesis, std::vector<Form> conclusions) {
    ProofStep step;
    step.instance.rule = RuleId(0);
    step.instance.hypothesis = hypothesis;
    step.instance.conclusions = std::move(conclusions);
    proof.steps.push_back(std::move(step));
    return static_cast<int>(proof.steps.size()) - 1;
  }
  // Each premise is a conclusion of an earlier step as it stands, unless the test replaces the combination.
  int say(RuleId rule, const std::string& places, std::vector<std::pair<int, int>> cited,
          std::vector<Form> conclusions) {
    ProofStep step;
    step.instance.rule = rule;
    step.instance.places = points(places);
    for (const auto& [s, c] : cited) {
      step.instance.premises.push_back(
          proof.steps[static_cast<std::size_t>(s)].instance.conclusions[static_cast<std::size_t>(c)]);
      step.premises.push_back({{{s, c, 1}}});
    }
    step.instance.conclusions = std::move(conclusions);
    proof.steps.push_back(std::move(step));
    return static_cast<int>(proof.steps.size()) - 1;
  }

  Position position(PositionKind kind, const std::string& letters) const {
    return {kind, point(letters[0]), point(letters[1]), point(letters[2]),
            letters.size() > 3 ? point(letters[3]) : PointId()};
  }
  void find(const Sum& sum) {
    Phrase asked;
    asked.relation.expressions = {expression(sum)};
    goal = {};
    goal.claims = {asked};
  }
  void prove(const Phrase& claim) {
    goal = {};
    goal.kind = GoalKind::prove;
    goal.claims = {claim};
  }
  void draw(std::vector<std::array<double, 2>> coordinates) {
    Sketch sketch;
    sketch.points = std::move(coordinates);
    sketches.push_back(std::move(sketch));
  }

  CheckReport report() const { return check(proof, statement, goal, catalogue, unknowns, sketches); }
  bool accepted() const { return report().accepted; }

  Statement statement;
  Goal goal;
  Catalogue catalogue;
  UnknownTable unknowns;
  Proof proof;
  std::vector<Sketch> sketches;
};

}  // namespace board
