#include "prover/chain/offer_instance.hpp"
#include "prover/chain/shapes.hpp"

namespace prover {

namespace {

// Position facts that say: ray r lies inside the angle at v from a to b.
std::array<Position, 2> inside(PointId v, PointId r, PointId a, PointId b) {
  return {Position{PositionKind::same_side, r, b, v, a}, Position{PositionKind::same_side, r, a, v, b}};
}

bool known_inside(const Arrangement& figure, PointId v, PointId r, PointId a, PointId b) {
  const auto p = inside(v, r, a, b);
  return figure.known(p[0]) && figure.known(p[1]);
}

bool one_line(const Arrangement& figure, PointId v, PointId a, PointId b) {
  return figure.line(v, a) == figure.line(v, b);
}

template <class Act>
void for_each_vertex(const Knowledge& knowledge, Act&& act) {
  for (std::size_t i = 0; i < knowledge.arrangement.point_count(); ++i) {
    if (knowledge.full() || knowledge.budget.exhausted()) return;
    const PointId v(static_cast<std::int64_t>(i));
    act(v, knowledge.arrangement.rays_at(v));
  }
}

}  // namespace

void offer_angle_addition(RuleId rule, const Rational& cost, Knowledge& knowledge) {
  const Arrangement& figure = knowledge.arrangement;
  for_each_vertex(knowledge, [&](PointId v, const std::vector<PointId>& rays) {
    for (PointId a : rays)
      for (PointId b : rays) {
        if (!(a < b) || one_line(figure, v, a, b)) continue;
        for (PointId r : rays) {
          if (one_line(figure, v, r, a) || one_line(figure, v, r, b) || !known_inside(figure, v, r, a, b)) continue;
          ShapeInstance shape(rule, cost, {v, a, r, b}, knowledge);
          for (const Position& p : inside(v, r, a, b)) shape.need(p);
          shape.conclude(shape.angle(a, v, r).add(shape.angle(r, v, b)).add(shape.angle(a, v, b), -1));
          shape.offer();
        }
      }
  });
}

void offer_straight_lines(RuleId rule, const Rational& cost, Knowledge& knowledge) {
  const Arrangement& figure = knowledge.arrangement;
  for_each_vertex(knowledge, [&](PointId v, const std::vector<PointId>& rays) {
    for (PointId a : rays)
      for (PointId b : rays) {
        if (!(a < b) || !figure.opposite_rays(v, a, b)) continue;
        const Position straight{PositionKind::between, a, v, b, {}};
        if (!figure.known(straight)) continue;
        std::vector<PointId> others;
        for (PointId r : rays)
          if (!one_line(figure, v, r, a)) others.push_back(r);
        for (PointId r : others) {
          if (!figure.known({PositionKind::not_collinear, v, a, r, {}})) continue;
          ShapeInstance shape(rule, cost, {v, a, r, b}, knowledge);
          shape.need(straight);
          shape.conclude(shape.angle(a, v, r).add(shape.angle(r, v, b)).add(Form::number(-180)));
          shape.offer();
        }
        // Rays in order from a to b: each next one is farther from a on the same side.
        auto follows = [&](PointId r, PointId s) {
          return !one_line(figure, v, r, s) && figure.known({PositionKind::same_side, r, s, v, a}) &&
                 known_inside(figure, v, r, a, s);
        };
        auto offer = [&](const std::vector<PointId>& order) {
          std::vector<PointId> places{v, a};
          places.insert(places.end(), order.begin(), order.end());
          places.push_back(b);
          ShapeInstance shape(rule, cost, places, knowledge);
          shape.need(straight);
          Form sum = Form::number(-180);
          for (std::size_t i = 1; i + 1 < places.size(); ++i) sum.add(shape.angle(places[i], v, places[i + 1]));
          for (std::size_t i = 0; i + 1 < order.size(); ++i)
            for (const Position& p : inside(v, order[i], a, order[i + 1])) shape.need(p);
          shape.conclude(std::move(sum));
          shape.offer();
        };
        for (PointId r : others)
          for (PointId s : others)
            if (r != s && follows(r, s)) offer({r, s});
        // All rays on one side at once, where there are three or more.
        for (PointId first : others) {
          std::vector<PointId> side{first};
          for (PointId r : others)
            if (r != first && figure.known({PositionKind::same_side, r, first, v, a})) side.push_back(r);
          if (side.size() < 3) continue;
          std::sort(side.begin(), side.end(), [&](PointId r, PointId s) { return r != s && follows(r, s); });
          bool ordered = side.front() == first;  // each side once
          for (std::size_t i = 0; i + 1 < side.size() && ordered; ++i) ordered = follows(side[i], side[i + 1]);
          if (ordered) offer(side);
        }
      }
  });
}

void offer_round_points(RuleId rule, const Rational& cost, Knowledge& knowledge) {
  const Arrangement& figure = knowledge.arrangement;
  auto apart = [&](PointId v, PointId a, PointId b, PointId c) {  // a and c on either side of the line of ray b
    return Position{PositionKind::opposite_sides, a, c, v, b};
  };
  for_each_vertex(knowledge, [&](PointId v, const std::vector<PointId>& rays) {
    auto offer = [&](const std::vector<PointId>& order) {
      const std::size_t n = order.size();
      for (std::size_t i = 0; i < n; ++i) {
        if (one_line(figure, v, order[i], order[(i + 1) % n])) return;
        if (!figure.known(apart(v, order[i], order[(i + 1) % n], order[(i + 2) % n]))) return;
      }
      std::vector<PointId> places{v};
      places.insert(places.end(), order.begin(), order.end());
      ShapeInstance shape(rule, cost, places, knowledge);
      Form sum = Form::number(-360);
      for (std::size_t i = 0; i < n; ++i) {
        sum.add(shape.angle(order[i], v, order[(i + 1) % n]));
        shape.need(apart(v, order[i], order[(i + 1) % n], order[(i + 2) % n]));
      }
      shape.conclude(std::move(sum));
      shape.offer();
    };
    const std::size_t n = rays.size();
    if (n > 12) return;
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = i + 1; j < n; ++j)
        for (std::size_t k = j + 1; k < n; ++k) {
          offer({rays[i], rays[j], rays[k]});
          for (std::size_t l = k + 1; l < n; ++l) {
            offer({rays[i], rays[j], rays[k], rays[l]});
            offer({rays[i], rays[j], rays[l], rays[k]});
            offer({rays[i], rays[k], rays[j], rays[l]});
          }
        }
  });
}

}  // namespace prover
