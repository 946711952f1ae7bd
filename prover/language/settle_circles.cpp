// Which circle "the circle" is: the only one of the text. When no centre is named anywhere, a tangent needs
// three points of the circle, and whatever needs the centre itself gets a point without a name.
#include <algorithm>
#include <set>

#include "prover/language/draft.hpp"

namespace prover {

namespace {

bool mentions_the_circle(const Phrase& phrase) {
  return std::find(phrase.points.begin(), phrase.points.end(), stand_in::the_circle) != phrase.points.end();
}

std::vector<PointId> without_repeats(const std::vector<PointId>& points) {
  std::vector<PointId> row;
  for (const PointId p : points) {
    if (std::find(row.begin(), row.end(), p) == row.end()) row.push_back(p);
  }
  return row;
}

}  // namespace

void settle_circles(Draft& draft, const Units& units) {
  std::set<PointId> centres;
  std::vector<PointId> loose;  // points on circles without a centre
  for (const NamedCircle& circle : draft.circles) {
    if (circle.centre.valid()) centres.insert(circle.centre);
    if (!circle.centre.valid()) loose.insert(loose.end(), circle.points.begin(), circle.points.end());
  }
  loose = without_repeats(loose);
  PointId made;
  for (const Unit& unit : units) {
    for (std::size_t i = 0; i < unit.phrases->size(); ++i) {
      if (!mentions_the_circle((*unit.phrases)[i])) continue;
      Phrase& phrase = (*unit.phrases)[i];
      PointId centre;
      if (centres.size() == 1) {
        centre = *centres.begin();
      } else if (centres.size() > 1) {
        draft.error(phrase.span, "there is more than one circle here; which one is meant?",
                    "write \"the circle with centre " + draft.names.of(*centres.begin()) + "\"");
        unit.phrases->erase(unit.phrases->begin() + static_cast<std::ptrdiff_t>(i--));
        continue;
      } else if (phrase.predicate == Predicate::tangent && loose.size() >= 3) {
        phrase.predicate = Predicate::tangent_circumcircle;
        phrase.points = {phrase.points[0], phrase.points[1], loose[0], loose[1], loose[2]};
        phrase.point_spans.resize(5, phrase.span);
        continue;
      } else {
        if (!made.valid()) {
          made = draft.hidden_point("o");
          if (!loose.empty()) {
            Phrase membership;
            membership.predicate = Predicate::circle;
            membership.span = phrase.span;
            membership.points = {made};
            membership.points.insert(membership.points.end(), loose.begin(), loose.end());
            membership.point_spans.assign(membership.points.size(), phrase.span);
            unit.phrases->insert(unit.phrases->begin() + static_cast<std::ptrdiff_t>(i++),
                                 std::move(membership));
          }
        }
        centre = made;
      }
      Phrase& kept = (*unit.phrases)[i];
      std::replace(kept.points.begin(), kept.points.end(), stand_in::the_circle, centre);
    }
  }
}

}  // namespace prover
