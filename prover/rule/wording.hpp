// The wording of a reason, taken apart at its braces: "alternate angles, {PA} ∥ {QD}" is text, place, text,
// place.
#pragma once
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

enum class PlaceKind { points, angle, triangle };

struct WordingPiece {
  bool is_place = false;
  std::string text;  // of a text; of a place, what stands in the braces
  PlaceKind kind = PlaceKind::points;
  std::vector<PointId> points;  // of a place: the variables
  std::size_t offset = 0;       // in the wording
};

// Mistakes (a brace without its partner, a name that is no variable) go to `mistakes`, with the wording
// beginning at `offset` in its file.
std::vector<WordingPiece> wording_pieces(std::string_view wording, const Names& variables,
                                         std::vector<Diagnostic>* mistakes = nullptr, std::size_t offset = 0);

// The reason with each place printed by `print`, which is given all pieces and the index of the place; otherwise like
// the one in rule.hpp.
using PrintPlace = std::function<std::string(const std::vector<WordingPiece>& pieces, std::size_t i, Register used)>;
std::string fill_wording(const Rule& rule, Register wording, const PrintPlace& print);

// What the sentences for a pupil ask, from less to more: one a rung of the ladder.
enum class HintRung { where, kind, places };
std::string_view name_of(HintRung rung);  // "where"
const std::string& sentence_of(const HintSentences& hints, HintRung rung);

// The sentence of a rung with its places filled in like those of a reason. A register without a sentence of its own takes
// the plain one, without brackets: a question is nobody's accepted phrase. Empty where the rule has none.
std::string fill_hint(const Rule& rule, Register wording, HintRung rung, const PrintPlace& print);
std::string fill_hint(const Rule& rule, Register wording, HintRung rung, const std::vector<std::string>& place);

// The wording as far as it stands without places: "alt ∠s; {PA} ∥ {QD}" is "alt ∠s".
std::string wording_without_places(std::string_view wording);

}  // namespace prover
