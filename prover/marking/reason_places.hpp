// Places in a pupil's reason: "KL ∥ MN", "KL and MN are parallel", "∠KLM = ∠LMN", "triangle KLM". Only points of the problem make
// a place; "AB ∥ CD" copied from a list of reasons names nothing where there is no A.
#pragma once
#include "prover/language/problem_text.hpp"
#include "prover/marking/reason_lexer.hpp"

namespace prover {

// Printed names of points, to split "KLM" into three.
class PointReader {
 public:
  explicit PointReader(const Names& names);
  // All letters used, each point once; empty when something else stands there.
  std::vector<PointId> points(std::string_view text) const;

 private:
  bool split(std::string_view rest, std::vector<PointId>& into) const;
  std::vector<std::pair<std::string_view, PointId>> names_;
};

// What stands at a token: the points it names, taking into account what stands beside it ("HL" and "SAS" are points only
// where a sign says so).
struct PointToken {
  std::vector<PointId> points;
  bool foreign = false;  // capitals that name no point of the figure
};

struct FoundPlace {
  Phrase phrase;
  std::size_t end = 0;  // behind the last token
};

// The place that begins at token `at`; nothing when none does.
std::optional<FoundPlace> place_at(const std::vector<RawToken>& tokens, const std::vector<PointToken>& points, std::size_t at);

}  // namespace prover
