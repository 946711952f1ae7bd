// Numbers that stand beside lengths are measured in the text's units, the others in degrees.
#include "prover/sketch/units.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "prover/sketch/plane.hpp"

namespace prover::sketching {

Units units_of(const std::vector<Phrase>& givens, std::size_t points) {
  Units units;
  Layout& layout = units.layout;
  layout.points = points;
  layout.on_circle.assign(points, PointId());
  std::set<std::string> of_angles, of_lengths;
  double largest = 0;
  const auto circle_point = [&](PointId centre, PointId point) {
    if (centre.valid() && centre.index() < points && !layout.on_circle[centre.index()].valid())
      layout.on_circle[centre.index()] = point;
  };
  for (const Phrase& phrase : givens) {
    const std::vector<PointId>& p = phrase.points;
    if ((phrase.predicate == Predicate::circle || phrase.predicate == Predicate::circle_cyclic) && p.size() > 1)
      circle_point(p[0], p[1]);
    if (phrase.predicate == Predicate::diameter && p.size() > 2) circle_point(p[2], p[0]);
    bool angles = false, lengths = false;
    double constant = 0;
    std::set<std::string> names;
    for (const Expression& expression : phrase.relation.expressions)
      for (const Term& term : expression.terms) {
        if (std::holds_alternative<Angle>(term.quantity)) angles = true;
        if (std::holds_alternative<Segment>(term.quantity)) lengths = true;
        if (std::holds_alternative<One>(term.quantity))
          constant = std::max(constant, std::fabs(term.coefficient.to_double()));
        if (const auto* number = std::get_if<Number>(&term.quantity)) names.insert(number->name);
      }
    (lengths ? of_lengths : of_angles).insert(names.begin(), names.end());
    if (lengths && !angles && (constant > 0 || !names.empty())) {
      units.measured = true;
      largest = std::max(largest, constant);
    }
  }
  // A circle with tangents and no other point goes through the first point of contact.
  for (const Phrase& phrase : givens)
    if (phrase.predicate == Predicate::tangent && phrase.points.size() > 2)
      circle_point(phrase.points[2], phrase.points[1]);
  if (largest > 0) layout.length_unit = largest;
  std::set<std::string> all = of_angles;
  all.insert(of_lengths.begin(), of_lengths.end());
  for (const std::string& name : all) {
    layout.numbers.push_back(name);
    layout.units.push_back(of_lengths.contains(name) ? layout.length_unit : 1 / degree);
  }
  return units;
}

}  // namespace prover::sketching
