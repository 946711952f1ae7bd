#include "prover/chain/offer_instance.hpp"
#include "prover/chain/shapes.hpp"

namespace prover {

void offer_segment_addition(RuleId rule, const Rational& cost, Knowledge& knowledge) {
  const Arrangement& figure = knowledge.arrangement;
  for (std::size_t l = 0; l < figure.line_count(); ++l) {
    const auto& on = figure.points_on(LineId(static_cast<std::int64_t>(l)));
    if (on.size() > 12) continue;  // long lines of large figures: lengths play no part there
    for (PointId a : on)
      for (PointId b : on)
        for (PointId c : on) {
          if (!(a < c) || b == a || b == c) continue;
          const Position order{PositionKind::between, a, b, c, {}};
          if (!figure.known(order)) continue;
          ShapeInstance shape(rule, cost, {a, b, c}, knowledge);
          shape.need(order);
          shape.conclude(shape.length(a, b).add(shape.length(b, c)).add(shape.length(a, c), -1));
          shape.offer();
        }
  }
}

}  // namespace prover
