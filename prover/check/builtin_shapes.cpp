// The shapes with any number of parts, each read on its own (places as in rule/instance.hpp). A function
// returns an objection, or nothing.
#include <algorithm>
#include <set>

#include "prover/check/rule_meaning.hpp"

namespace prover::replay {
namespace {

Position beside(PositionKind kind, PointId a, PointId b, PointId c, PointId d) {
  return {kind, a, b, c, d};
}

class Shape {
 public:
  Shape(const Step& step, Naming& naming, const Statement& statement)
      : step_(step), p_(step.places), naming_(naming), statement_(statement) {}

  std::string objection(Builtin shape) {
    if (std::any_of(p_.begin(), p_.end(), [](PointId p) { return !p.valid(); })) return "a place is empty";
    switch (shape) {
      case Builtin::given:
        break;
      case Builtin::join:
        return join();
      case Builtin::angle_addition:
        return angle_addition();
      case Builtin::segment_addition:
        return segment_addition();
      case Builtin::angles_on_a_straight_line:
        return straight_line();
      case Builtin::angles_at_a_point:
        return at_a_point();
      case Builtin::quadrilateral_angle_sum:
        return p_.size() == 4 ? interior_sum() : "a quadrilateral has four corners";
      case Builtin::polygon_interior_sum:
        return interior_sum();
      case Builtin::polygon_exterior_sum:
        return exterior_sum();
      case Builtin::regular_polygon_angles:
        return regular_angles();
      case Builtin::regular_polygon_sides:
        return regular_sides();
      case Builtin::regular_polygon_equal_angles:
        return regular_equal_angles();
      case Builtin::similar_sas:
        return similar_sas();
      case Builtin::similar_sss:
        return similar_sss();
      case Builtin::similar_parts_sides:
        return similar_sides();
    }
    return "this shape is not known to the checker";
  }

 private:
  // Quantities; a missing one spoils the sum, which then never fits.
  void add_angle(Equation& sum, PointId a, PointId v, PointId b, const Rational& factor = 1) {
    const auto size = naming_.angle(a, v, b);
    if (size)
      sum.add(*size, factor);
    else
      spoilt_ = true;
  }
  Equation length(PointId a, PointId b) {
    const auto size = naming_.length(a, b);
    if (!size) spoilt_ = true;
    return size.value_or(Equation{});
  }
  bool follows(const Position& position) { return naming_.positions().follows(position); }
  bool follows(const Placement& placement) { return naming_.positions().follows(placement); }
  bool shown(const std::optional<Equation>& equation) {
    return equation && in_span(*equation, step_.premises);
  }

  std::string concludes(const std::vector<Equation>& allowed) {
    if (spoilt_) return "a place of the shape is degenerate";
    for (const Equation& conclusion : step_.conclusions)
      if (!in_span(conclusion, allowed)) return "the shape does not give this conclusion";
    return {};
  }

  std::string join() {
    if (p_.size() != 2) return "two points are joined";
    const auto joined = naming_.fact(FactKind::joined, p_);
    if (!joined) return "a point is joined to itself";
    return concludes({*joined});
  }

  // Rays first … last, each inner one inside the angle from the first to the next: so the parts add up.
  bool nested(PointId vertex, const Points& rays) {
    for (std::size_t i = 1; i + 1 < rays.size(); ++i)
      if (!follows(inside_angle(rays[i], rays[0], vertex, rays[i + 1]))) return false;
    return true;
  }

  std::string angle_addition() {
    if (p_.size() < 4) return "an angle needs two parts to be a sum";
    const Points rays(p_.begin() + 1, p_.end());
    if (!nested(p_[0], rays)) return "the rays are not known to be in this order";
    Equation sum;
    for (std::size_t i = 1; i < rays.size(); ++i) add_angle(sum, rays[i - 1], p_[0], rays[i]);
    add_angle(sum, rays.front(), p_[0], rays.back(), -1);
    return concludes({sum});
  }

  std::string segment_addition() {
    if (p_.size() < 3) return "a segment needs two parts to be a sum";
    Equation sum = length(p_.front(), p_.back()).scale(-1);
    for (std::size_t i = 1; i < p_.size(); ++i) {
      sum.add(length(p_[i - 1], p_[i]));
      if (i > 1 && !follows({PositionKind::between, p_[i - 2], p_[i - 1], p_[i], {}}))
        return "the points are not known to be in this order";
    }
    return concludes({sum});
  }

  std::string straight_line() {
    if (p_.size() < 4) return "a straight angle needs two parts";
    const Points rays(p_.begin() + 1, p_.end());
    if (naming_.positions().rays(p_[0], rays.front(), rays.back()) != Rays::opposite)
      return "the ends are not known to be opposite rays";
    if (!nested(p_[0], {rays.begin(), rays.end() - 1}))
      return "the rays are not known to be in this order on one side";
    if (!follows({PositionKind::not_collinear, rays[0], p_[0], rays[rays.size() - 2], {}}))
      return "the last ray is not known to be off the line";
    Equation sum = Equation::number(-180);
    for (std::size_t i = 1; i < rays.size(); ++i) add_angle(sum, rays[i - 1], p_[0], rays[i]);
    return concludes({sum});
  }

  // Angles that all turn one way and come back to where they began add up to a multiple of 360°. At most four
  // of them, each at most 180° and not all straight, make less than 720°. More than four are first joined
  // into at most four by nesting.
  std::string at_a_point() {
    if (p_.size() < 4) return "three rays at least go round a point";
    const Points rays(p_.begin() + 1, p_.end());
    const std::size_t n = rays.size();
    for (std::size_t start = 0; start < n; ++start) {
      Points corners;  // the ends of the joined angles
      for (std::size_t from = start; from < start + n;) {
        corners.push_back(rays[from % n]);
        std::size_t to = from + 1;
        while (to < start + n &&
               follows(inside_angle(rays[to % n], rays[from % n], p_[0], rays[(to + 1) % n])))
          ++to;
        from = to;
      }
      if (corners.size() < 3 || corners.size() > 4 || !turns_one_way(p_[0], corners)) continue;
      Equation sum = Equation::number(-360);
      for (std::size_t i = 0; i < n; ++i) add_angle(sum, rays[i], p_[0], rays[(i + 1) % n]);
      return concludes({sum});
    }
    return "the rays are not known to go once round the point in this order";
  }

  bool turns_one_way(PointId vertex, const Points& rays) {
    const std::size_t n = rays.size();
    const auto straight = [&](std::size_t i) {
      return naming_.positions().rays(vertex, rays[i % n], rays[(i + 1) % n]) == Rays::opposite;
    };
    int bends = 0;
    for (std::size_t i = 0; i < n; ++i) {
      if (straight(i)) continue;
      ++bends;
      const PointId a = rays[i], b = rays[(i + 1) % n], c = rays[(i + 2) % n], d = rays[(i + 3) % n];
      if (straight(i + 1)) {  // the turn after the straight angle b, c goes on as the one before
        if (straight(i + 2) || !follows(beside(PositionKind::same_side, a, d, vertex, b))) return false;
      } else if (!follows(beside(PositionKind::opposite_sides, a, c, vertex, b))) {
        return false;
      }
    }
    return bends >= 2;
  }

  // Which corners are reflex, where that is known: in a simple polygon at least three are not, so the corners
  // that turn against three others are.
  std::optional<std::vector<bool>> reflex_corners() {
    const std::size_t n = p_.size();
    std::vector<bool> against(n, false);  // the turn of the first corner
    for (std::size_t i = 1; i < n; ++i) {
      // Turns at the neighbours b, c of side bc, seen along it: the same when a and d are on one side of bc.
      const PointId a = p_[i - 1], b = p_[i], c = p_[(i + 1) % n], d = p_[(i + 2) % n];
      const bool same = follows(beside(PositionKind::same_side, a, d, b, c));
      if (!same && !follows(beside(PositionKind::opposite_sides, a, d, b, c))) return std::nullopt;
      against[(i + 1) % n] = against[i] != !same;
    }
    // The loop began at corner 1 and has come round to corner 0: make corner 1 the reference.
    const auto turned = static_cast<std::size_t>(std::count(against.begin(), against.end(), true));
    if (turned < 3 && n - turned >= 3) return against;
    if (turned >= 3 && n - turned < 3) {
      against.flip();
      return against;
    }
    return std::nullopt;
  }

  bool stated_simple() {
    for (const Given& given : statement_.givens) {
      if (given.phrase.predicate != Predicate::simple_polygon || given.phrase.points.size() != p_.size())
        continue;
      Points corners = given.phrase.points;
      for (int sense = 0; sense < 2; ++sense, std::reverse(corners.begin(), corners.end()))
        for (std::size_t shift = 0; shift < corners.size(); ++shift) {
          if (corners == p_) return true;
          std::rotate(corners.begin(), corners.begin() + 1, corners.end());
        }
    }
    return false;
  }

  std::string interior_sum() {
    const std::size_t n = p_.size();
    if (n < 3 || std::set<PointId>(p_.begin(), p_.end()).size() != n)
      return "a polygon has three different corners";
    std::vector<bool> reflex(n, false);
    if (!follows(convex_polygon(p_))) {
      // A quadrilateral whose sides cross has two turns each way, so one turn against three shows that it is
      // simple.
      const auto found = n == 4 || stated_simple() ? reflex_corners() : std::nullopt;
      if (!found) return "the polygon is not known to be convex, nor which of its corners are reflex";
      reflex = *found;
    }
    Equation sum = Equation::number(Rational(-180) * Rational(static_cast<std::int64_t>(n) - 2));
    for (std::size_t i = 0; i < n; ++i) {
      add_angle(sum, p_[(i + n - 1) % n], p_[i], p_[(i + 1) % n], reflex[i] ? -1 : 1);
      if (reflex[i]) sum.add(Equation::number(360));
    }
    return concludes({sum});
  }

  std::string exterior_sum() {
    const std::size_t n = p_.size() / 2;
    if (p_.size() % 2 != 0 || n < 3) return "each corner has one point on a side produced";
    const Points corners(p_.begin(), p_.begin() + static_cast<std::ptrdiff_t>(n));
    if (!follows(convex_polygon(corners))) return "the polygon is not known to be convex";
    for (const bool forwards : {true, false}) {
      Equation sum = Equation::number(-360);
      bool produced = true;
      for (std::size_t i = 0; i < n; ++i) {
        const PointId before = corners[(i + (forwards ? n - 1 : 1)) % n],
                      after = corners[(i + (forwards ? 1 : n - 1)) % n];
        produced = produced && follows({PositionKind::between, before, corners[i], p_[n + i], {}});
        add_angle(sum, p_[n + i], corners[i], after);
      }
      if (produced) return concludes({sum});
    }
    return "the sides are not known to be produced one way round";
  }

  bool regular() {
    const std::size_t n = p_.size();
    if (n == 4) return shown(naming_.fact(FactKind::square, p_));
    if (n > 4) return shown(naming_.fact(FactKind::regular_polygon, p_));
    return n == 3 && shown(length(p_[0], p_[1]).add(length(p_[1], p_[2]), -1)) &&
           shown(length(p_[1], p_[2]).add(length(p_[2], p_[0]), -1)) && follows(convex_polygon(p_));
  }

  std::string regular_angles() {
    if (!regular()) return "the polygon is not among the premises as a regular one";
    const std::size_t n = p_.size();
    const auto sides = static_cast<std::int64_t>(n);
    std::vector<Equation> angles;
    for (std::size_t i = 0; i < n; ++i) {
      angles.push_back(Equation::number(Rational(-180 * (sides - 2), sides)));
      add_angle(angles.back(), p_[(i + n - 1) % n], p_[i], p_[(i + 1) % n]);
    }
    return concludes(angles);
  }

  std::string regular_sides() {
    if (!regular()) return "the polygon is not among the premises as a regular one";
    const std::size_t n = p_.size();
    std::vector<Equation> equal;
    for (std::size_t i = 1; i < n; ++i)
      equal.push_back(length(p_[0], p_[1]).add(length(p_[i], p_[(i + 1) % n]), -1));
    return concludes(equal);
  }

  std::string regular_equal_angles() {
    if (!regular()) return "the polygon is not among the premises as a regular one";
    const std::size_t n = p_.size();
    std::vector<Equation> equal(n - 1);
    for (std::size_t i = 1; i < n; ++i) {
      add_angle(equal[i - 1], p_[n - 1], p_[0], p_[1]);
      add_angle(equal[i - 1], p_[i - 1], p_[i], p_[(i + 1) % n], -1);
    }
    return concludes(equal);
  }

  // Side i of the first triangle is the one opposite its corner i.
  Equation side(std::size_t triangle, std::size_t i) {
    return length(p_[3 * triangle + (i + 1) % 3], p_[3 * triangle + (i + 2) % 3]);
  }

  // The ratio that the premises state for a pair of corresponding sides: side = r · side'.
  std::optional<Rational> stated_ratio(std::size_t i) {
    const Equation mine = side(0, i), other = side(1, i);
    if (spoilt_) return std::nullopt;
    const int a = mine.terms.begin()->first, b = other.terms.begin()->first;
    if (a == b) return Rational(1);  // the common side
    for (const Equation& premise : step_.premises) {
      if (premise.terms.size() != 2 || !premise.constant.is_zero()) continue;
      if (!premise.terms.contains(a) || !premise.terms.contains(b)) continue;
      const Rational ratio = -(premise.terms.at(b) / premise.terms.at(a));
      if (ratio.sign() > 0) return ratio;
    }
    return std::nullopt;
  }

  bool in_ratio(std::size_t i, const Rational& ratio) { return stated_ratio(i) == ratio; }

  std::string two_triangles() {
    if (p_.size() != 6) return "two triangles have six corners";
    if (!follows(convex_polygon({p_[0], p_[1], p_[2]})) && !follows(convex_polygon({p_[3], p_[4], p_[5]})))
      return "neither triangle is known to be one";
    return {};
  }

  std::string similar_sas() {
    if (auto trouble = two_triangles(); !trouble.empty()) return trouble;
    for (std::size_t corner = 0; corner < 3; ++corner) {
      const std::size_t next = (corner + 1) % 3, last = (corner + 2) % 3;
      const auto ratio = stated_ratio(next);
      auto difference = naming_.angle(p_[next], p_[corner], p_[last]);
      const auto other = naming_.angle(p_[3 + next], p_[3 + corner], p_[3 + last]);
      if (!ratio || !in_ratio(last, *ratio) || !difference || !other) continue;
      difference->add(*other, -1);
      if (shown(difference)) return concludes_similar();
    }
    return "no angle between two pairs of sides in one ratio is shown to be equal";
  }

  std::string similar_sss() {
    if (auto trouble = two_triangles(); !trouble.empty()) return trouble;
    const auto ratio = stated_ratio(0);
    if (!ratio || !in_ratio(1, *ratio) || !in_ratio(2, *ratio))
      return "the sides are not shown to be in one ratio";
    return concludes_similar();
  }

  std::string concludes_similar() {
    const auto fact = naming_.fact(FactKind::similar, p_);
    if (!fact) return "a triangle has three different corners";
    return concludes({*fact});
  }

  std::string similar_sides() {
    if (p_.size() != 6) return "two triangles have six corners";
    if (!shown(naming_.fact(FactKind::similar, p_)))
      return "the triangles are not among the premises as similar";
    for (std::size_t i = 0; i < 3; ++i) {
      const auto ratio = stated_ratio(i);
      if (!ratio) continue;
      std::vector<Equation> sides;
      for (std::size_t k = 0; k < 3; ++k) sides.push_back(side(0, k).add(side(1, k), -*ratio));
      return concludes(sides);
    }
    return "no ratio of corresponding sides is among the premises";
  }

  const Step& step_;
  const Points& p_;
  Naming& naming_;
  const Statement& statement_;
  bool spoilt_ = false;
};

}  // namespace

std::string objection_to_shape(Builtin shape, const Step& step, Naming& naming, const Statement& statement) {
  return Shape(step, naming, statement).objection(shape);
}

}  // namespace prover::replay
