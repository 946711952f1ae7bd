// How this problem calls its angles, lengths and facts: as its sentences do where they name them, otherwise by the
// points that stand for the rays.
#pragma once
#include <string>
#include <unordered_map>

#include "prover/figure/arrangement.hpp"
#include "prover/fact/unknown.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

class NameBook {
 public:
  NameBook(const Statement& statement, const Arrangement& arrangement, UnknownTable& unknowns);
  std::string of(UnknownId unknown) const;
  // A line as a sentence about parallels or perpendiculars calls it; empty when none does.
  std::string line(LineId line) const;
  // The corners as a sentence orders them ("triangle KLM"), otherwise by their names.
  std::string triangle(std::vector<PointId> corners) const;
  bool is_angle(UnknownId unknown) const { return unknowns_[unknown].kind == UnknownKind::angle; }
  bool is_number(UnknownId unknown) const { return unknowns_[unknown].kind == UnknownKind::number; }
  const std::vector<UnknownId>& numbers() const { return numbers_; }  // x, y, … as far as the problem uses them
  // "∠KLM + ∠LMK = 180°": positive terms left, in the order of the form.
  std::string equation(const Form& form) const;
  // "∠KLM > ∠KML": of a form with an excess.
  std::string inequality(const Form& form) const;
  bool compares(const Form& form) const { return prover::compares(form, unknowns_); }
  bool is_excess(UnknownId unknown) const { return unknowns_[unknown].kind == UnknownKind::excess; }
  // One side of an equation: 3∠KLM + 20°.
  std::string sum(const Form& form) const;
  bool has_angle(const Form& form) const;

 private:
  void note(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns);

  const Names& names_;
  const UnknownTable& unknowns_;
  std::unordered_map<UnknownId, std::string> called_;
  std::unordered_map<LineId, std::string> lines_;
  std::vector<std::vector<PointId>> triangles_;
  std::vector<UnknownId> numbers_;
};

}  // namespace prover
