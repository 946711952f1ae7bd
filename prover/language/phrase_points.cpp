#include "prover/language/phrase_points.hpp"

namespace prover {

std::vector<PointId> points_named(const Phrase& phrase) {
  std::vector<PointId> points = phrase.points;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms) {
      if (const auto* angle = std::get_if<Angle>(&term.quantity))
        points.insert(points.end(), {angle->arm1, angle->vertex, angle->arm2});
      else if (const auto* segment = std::get_if<Segment>(&term.quantity))
        points.insert(points.end(), {segment->a, segment->b});
    }
  std::erase_if(points, [](PointId p) { return !p.valid(); });
  return points;
}

Phrase phrase_of(Predicate predicate, std::vector<PointId> points) {
  Phrase phrase;
  phrase.predicate = predicate;
  phrase.point_spans.resize(points.size());
  phrase.points = std::move(points);
  return phrase;
}

}  // namespace prover
