// Phrases for the tests of sketches, made without the parser: a letter is a point, A the first.
#pragma once
#include <array>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "prover/sketch/sketch.hpp"

namespace prover {

static inline PointId point(char letter) { return PointId(letter - 'A'); }

static inline Phrase say(Predicate predicate, std::string_view letters) {
  Phrase phrase;
  phrase.predicate = predicate;
  for (const char letter : letters) phrase.points.push_back(point(letter));
  return phrase;
}

static inline Term angle(std::string_view letters, Rational coefficient = 1) {
  return {coefficient, Angle{point(letters[0]), point(letters[1]), point(letters[2])}, {}};
}
static inline Term reflex(std::string_view letters) {
  return {1, Angle{point(letters[0]), point(letters[1]), point(letters[2]), true}, {}};
}
static inline Term length(std::string_view letters, Rational coefficient = 1) {
  return {coefficient, Segment{point(letters[0]), point(letters[1])}, {}};
}
static inline Term number(std::string name, Rational coefficient = 1) { return {coefficient, Number{std::move(name)}, {}}; }
static inline Term constant(Rational value) { return {value, One{}, {}}; }
static inline Expression sum(std::vector<Term> terms) { return {std::move(terms), {}}; }

static inline Phrase relate(std::vector<Term> left, Comparison comparison, std::vector<Term> right) {
  Phrase phrase;
  phrase.relation.expressions = {sum(std::move(left)), sum(std::move(right))};
  phrase.relation.comparisons = {comparison};
  return phrase;
}
static inline Phrase equal(std::vector<Term> left, std::vector<Term> right) {
  return relate(std::move(left), Comparison::equal, std::move(right));
}

static inline Sketch figure(std::initializer_list<std::array<double, 2>> points) {
  Sketch sketch;
  sketch.points = points;
  sketch.on_circle.resize(points.size());
  return sketch;
}

}  // namespace prover
