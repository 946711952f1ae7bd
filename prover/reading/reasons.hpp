// Why a line holds, in the words of a school, with the places named as the problem names them: "alternate angles,
// PQ ∥ LM, cut by KL" though the rule only met the ray KP.
#pragma once
#include <map>
#include <optional>
#include <string>

#include "prover/figure/arrangement.hpp"
#include "prover/reading/name_book.hpp"
#include "prover/rule/instance.hpp"

namespace prover {

struct WordingPiece;

class Reasons {
 public:
  Reasons(const Statement& statement, const Catalogue& catalogue, UnknownTable& unknowns, const Arrangement& arrangement,
          const NameBook& names, Register wording);

  std::string reason(const Instance& instance) const;
  HintSentences hints(const Instance& instance) const;  // with the places named likewise
  // Whether the reason says where in the figure it stands ("angle sum of triangle KLM", not "SAS"). Asked of our own words:
  // a school that cites by name alone wants no more than the name.
  bool names_places(const Rule& rule) const;
  // A fact in the words of the rule, with its places. Two triangles keep the order of letters in which they are first
  // said; later reasons name them so.
  std::string fact_text(const Instance& instance, const Form& claim);

 private:
  std::string shape_part(const Rule& rule, std::size_t variable, const std::vector<PointId>& places) const;
  std::string place_text(const Rule& rule, const std::vector<PointId>& places, const std::vector<WordingPiece>& pieces,
                         std::size_t i, Register used) const;
  std::optional<Form> angle_form(const std::vector<PointId>& corners) const;
  std::string angle_text(const std::vector<PointId>& corners) const;  // by the rule's own points
  std::string whole_text(const std::vector<PointId>& corners) const;  // as the lines call it
  std::vector<PointId> places_as_said(const Rule& rule, std::vector<PointId> places) const;
  void note_triangles(const Phrase& phrase, const std::vector<PointId>& corners);

  const Statement& statement_;
  const Catalogue& catalogue_;
  UnknownTable& unknowns_;
  const Arrangement& arrangement_;
  const NameBook& names_;
  Register wording_;
  std::map<UnknownId, std::vector<PointId>> triangles_;  // congruent or similar: six corners as they were said
};

}  // namespace prover
