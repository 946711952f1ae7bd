#include "prover/algebra/direction_layer.hpp"

#include <cmath>
#include <numbers>

namespace prover {

DirectionLayer::DirectionLayer(const Arrangement& arrangement, const Coordinates& view, const UnknownTable& unknowns)
    : arrangement_(arrangement), view_(view), unknowns_(unknowns) {}

double DirectionLayer::seen_direction(PointId vertex, PointId toward) const {
  const auto &p = view_[vertex.index()], &q = view_[toward.index()];
  return std::atan2(q[1] - p[1], q[0] - p[0]) * 180 / std::numbers::pi;
}

// The unknown of a line is the direction from its first point to its second, between −180° and 180° as drawn; a
// ray that runs the other way has 180° more or less, whichever stays in that range.
Form DirectionLayer::ray(PointId vertex, PointId toward) const {
  const LineId line = arrangement_.line(vertex, toward);
  const auto& on = arrangement_.points_on(line);
  const double own = seen_direction(on[0], on[1]), wanted = seen_direction(vertex, toward);
  const auto half_turns = std::llround((wanted - own) / 180);
  return Form::of(UnknownId(line.value)).add(Form::number(Rational(180) * Rational(static_cast<std::int64_t>(half_turns))));
}

std::optional<Form> DirectionLayer::unknown_as_directions(UnknownId unknown) const {
  const Unknown& u = unknowns_[unknown];
  switch (u.kind) {
    case UnknownKind::angle: {
      const PointId v = u.points[0], a = u.points[1], b = u.points[2];
      Form turn = ray(v, b).add(ray(v, a), -1);
      double seen = seen_direction(v, b) - seen_direction(v, a);
      if (seen > 180) {
        seen -= 360;
        turn.constant -= 360;
      } else if (seen < -180) {
        seen += 360;
        turn.constant += 360;
      }
      return seen < 0 ? -turn : turn;
    }
    case UnknownKind::number:  // after the lines
      return Form::of(UnknownId(static_cast<std::int64_t>(arrangement_.line_count()) + unknown.value));
    case UnknownKind::fact:
      if (u.fact == FactKind::parallel || u.fact == FactKind::perpendicular) {
        const auto& p = u.points;
        const double difference = seen_direction(p[0], p[1]) - seen_direction(p[2], p[3]);
        const int unit = u.fact == FactKind::parallel ? 180 : 90;
        Form form = ray(p[0], p[1]).add(ray(p[2], p[3]), -1);
        return form.add(Form::number(Rational(-unit) * Rational(static_cast<std::int64_t>(std::llround(difference / unit)))));
      }
      return std::nullopt;
    case UnknownKind::length:
    case UnknownKind::excess:
      return std::nullopt;
  }
  return std::nullopt;
}

std::optional<Form> DirectionLayer::translated(const Form& form) const {
  Form sum = Form::number(form.constant);
  for (const auto& [unknown, c] : form.terms) {
    const auto part = unknown_as_directions(unknown);
    if (!part) return std::nullopt;
    sum.add(*part, c);
  }
  return sum;
}

bool DirectionLayer::add(const Form& form) {
  const auto directions = translated(form);
  if (!directions) return false;
  system_.add(*directions);
  return true;
}

std::optional<Rational> DirectionLayer::value(const Form& quantity) const {
  const auto directions = translated(quantity);
  if (!directions) return std::nullopt;
  const Form rest = system_.reduce(*directions);
  if (!rest.terms.empty()) return std::nullopt;
  return rest.constant;
}

bool DirectionLayer::entails(const Form& form) const {
  const auto directions = translated(form);
  return directions && system_.entails(*directions);
}

}  // namespace prover
