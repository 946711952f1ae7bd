// What a reason consists of, in order: words with a meaning, places of the figure, numbers of earlier lines, and the
// commas and "and"s between them.
#pragma once
#include "prover/language/problem_text.hpp"
#include "prover/marking/reason_vocabulary.hpp"

namespace prover {

// What a place says, as a meaning beside those of words; the same for places that a pupil names and for the givens of rules.
enum class Shape { parallel, perpendicular, equal_lengths, equal_angles, angle_sum, angle_size, greater, other };
constexpr std::size_t shape_count = 8;
std::optional<Shape> shape_of(const Phrase& phrase);
Meaning meaning_of(Shape shape, ReasonVocabulary& vocabulary);  // its name begins with "@"

enum class UnitKind {
  word,         // `bits`; several of them for a word that means several things
  place,        // says something of the figure: `place`, and `bits` with its shape
  figure,       // points alone: triangle KLM, chord KL; `figure`
  line_number,  // of an earlier line: `line`
  separator,    // a comma, "and", a bracket; `sentence` where more than a part ends
  noise,        // a word that is unknown
};

struct ReasonUnit {
  UnitKind kind = UnitKind::word;
  Meanings bits;
  bool misspelt = false, sentence = false;
  bool supposed = false; // stands before "so", or behind "because"
  bool bracket = false;  // a separator: a bracket opens or closes
  Phrase place;
  std::vector<PointId> figure;
  int line = 0;
};

struct ReasonUnits {
  std::vector<ReasonUnit> units;
  bool letters_parallel = false;  // lines called by small letters are said to be parallel: l ∥ m
  bool arithmetic = false;        // numbers and their signs stand in it
};

ReasonUnits reason_units(std::string_view text, const Names& names, const ReasonVocabulary& vocabulary);

}  // namespace prover
