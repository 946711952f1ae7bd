// What phrases say as equations.
#include <set>

#include "prover/check/reading.hpp"

namespace prover::replay {
namespace {

class Writer {
 public:
  Writer(Naming& naming, Claims& out) : naming_(naming), out_(out) {}

  void require(const std::optional<Equation>& equation) {
    if (equation)
      out_.groups.push_back({*equation});
    else
      out_.readable = false;
  }

  void fact(FactKind kind, const Points& points) { require(naming_.fact(kind, points)); }

  void difference(std::optional<Equation> a, const std::optional<Equation>& b) {
    if (a && b) a->add(*b, -1);
    require(b ? a : b);
  }

  void equal_lengths(PointId a, PointId b, PointId c, PointId d) {
    difference(naming_.length(a, b), naming_.length(c, d));
  }

  // Each point is on one circle with the first: P is on the circle round O through Q when theirs are the same.
  void one_circle(PointId centre, const Points& on) {
    if (std::set<PointId>(on.begin(), on.end()).size() != on.size()) out_.readable = false;
    for (std::size_t i = 1; i < on.size(); ++i)
      difference(naming_.fact(FactKind::circle, {centre, on[0]}), naming_.fact(FactKind::circle, {centre, on[i]}));
  }

  void concyclic(const Points& p) {
    for (std::size_t i = 0; i < p.size(); ++i)
      for (std::size_t j = i + 1; j < p.size(); ++j)
        for (std::size_t k = j + 1; k < p.size(); ++k)
          for (std::size_t l = k + 1; l < p.size(); ++l) fact(FactKind::concyclic, {p[i], p[j], p[k], p[l]});
  }

  // Lines that meet in a named point make right angles there; others are perpendicular as a fact.
  void perpendicular(PointId a, PointId b, PointId c, PointId d) {
    const PointId corner = naming_.positions().lines().common_point(a, b, c, d);
    if (!corner.valid()) return fact(FactKind::perpendicular, {a, b, c, d});
    std::vector<Equation> right;
    for (const PointId p : naming_.rays_along(corner, a, b))
      for (const PointId q : naming_.rays_along(corner, c, d))
        if (auto angle = naming_.angle(p, corner, q)) right.push_back(angle->add(Equation::number(-90)));
    out_.groups.push_back(std::move(right));
  }

  // The bisected segment is halved where the two lines have a named point in common.
  void halved(PointId a, PointId b, PointId c, PointId d) {
    const PointId foot = naming_.positions().lines().common_point(a, b, c, d);
    if (foot.valid() && foot != c && foot != d)
      equal_lengths(foot, c, foot, d);
    else
      out_.complete = false;
  }

 private:
  Naming& naming_;
  Claims& out_;
};

std::optional<Equation> quantity(const Quantity& quantity, const Points& place, Naming& naming) {
  const auto at = [&](PointId p) {
    return p.valid() && p.index() < place.size() ? place[p.index()] : PointId();
  };
  if (std::holds_alternative<One>(quantity)) return Equation::number(1);
  if (const auto* number = std::get_if<Number>(&quantity)) return naming.number(number->name);
  if (const auto* segment = std::get_if<Segment>(&quantity)) {
    const PointId a = at(segment->a), b = at(segment->b);
    return a.valid() && b.valid() ? naming.length(a, b) : std::nullopt;
  }
  const auto& angle = std::get<Angle>(quantity);
  const PointId a = at(angle.arm1), v = at(angle.vertex), b = at(angle.arm2);
  if (!a.valid() || !v.valid() || !b.valid()) return std::nullopt;
  auto size = naming.angle(a, v, b);
  if (size && angle.reflex) size->scale(-1).add(Equation::number(360));
  if (size && angle.exterior) size->scale(-1).add(Equation::number(180));
  return size;
}

void relation(const Relation& relation, const Points& place, Naming& naming, Claims& out) {
  if (relation.expressions.size() != relation.comparisons.size() + 1) {
    out.readable = false;
    return;
  }
  if (relation.comparisons.empty()) out.complete = false;  // a quantity alone, as after find:
  for (std::size_t i = 0; i < relation.comparisons.size(); ++i) {
    Equation left = equation_of(relation.expressions[i], place, naming, out);
    Equation right = equation_of(relation.expressions[i + 1], place, naming, out);
    switch (relation.comparisons[i]) {
      case Comparison::equal:
        out.groups.push_back({left.add(right, -1)});
        break;
      case Comparison::less:
        out.positive.push_back(right.add(left, -1));
        break;
      case Comparison::greater:
        out.positive.push_back(left.add(right, -1));
        break;
    }
  }
}

}  // namespace

std::vector<Equation> Claims::all() const {
  std::vector<Equation> result;
  for (const auto& group : groups) result.insert(result.end(), group.begin(), group.end());
  return result;
}

Equation equation_of(const Expression& expression, const Points& place, Naming& naming, Claims& claims) {
  Equation sum;
  for (const Term& term : expression.terms) {
    const auto value = quantity(term.quantity, place, naming);
    if (!value) {
      claims.readable = false;
      continue;
    }
    if (std::holds_alternative<Angle>(term.quantity) && value->is_constant()) claims.degenerate = true;
    sum.add(*value, term.coefficient);
  }
  return sum;
}

Claims claims_of(const Phrase& phrase, const Points& place, Naming& naming) {
  Claims result;
  Writer say(naming, result);
  Points p;
  for (const PointId point : phrase.points) {
    if (!point.valid() || point.index() >= place.size()) {
      result.readable = false;
      return result;
    }
    p.push_back(place[point.index()]);
  }
  const auto angle = [&](std::size_t a, std::size_t v, std::size_t b) {
    auto size = naming.angle(p[a], p[v], p[b]);
    if (size && size->is_constant()) result.degenerate = true;
    return size;
  };
  const auto on_line = [&](const Points& points) {  // nothing to show where the line is known
    for (std::size_t i = 2; i < points.size(); ++i)
      say.fact(FactKind::collinear, {points[0], points[1], points[i]});
  };
  switch (phrase.predicate) {
    case Predicate::relation:
      relation(phrase.relation, place, naming, result);
      break;
    case Predicate::acute:
      result.complete = false;
      for (std::size_t corner = 0; corner < 3 && p.size() == 3; ++corner)
        if (const auto corner_angle = naming.angle(p[(corner + 1) % 3], p[corner], p[(corner + 2) % 3]))
          result.positive.push_back(Equation::number(90).add(*corner_angle, -1));
      break;
    case Predicate::triangle:
    case Predicate::convex:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::same_side:
    case Predicate::opposite_sides:
      break;
    case Predicate::line_order:
    case Predicate::collinear:
    case Predicate::on_line:
    case Predicate::on_ray:
    case Predicate::on_segment:
      on_line(p);
      break;
    case Predicate::meet:
    case Predicate::cross:
      on_line({p[0], p[1], p[2]});
      on_line({p[0], p[3], p[4]});
      break;
    case Predicate::parallel:
      say.fact(FactKind::parallel, p);
      break;
    case Predicate::perpendicular:
      say.perpendicular(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::foot:
      on_line({p[0], p[2], p[3]});
      say.perpendicular(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::perpendicular_bisector:
      say.perpendicular(p[0], p[1], p[2], p[3]);
      say.halved(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::midpoint:
      on_line(p);
      say.equal_lengths(p[0], p[1], p[0], p[2]);
      break;
    case Predicate::isosceles_at:
      say.equal_lengths(p[0], p[1], p[0], p[2]);
      break;
    case Predicate::equilateral:
      say.equal_lengths(p[0], p[1], p[1], p[2]);
      say.equal_lengths(p[1], p[2], p[2], p[0]);
      break;
    case Predicate::right_angled:
      say.difference(angle(1, 0, 2), Equation::number(90));
      break;
    case Predicate::bisects:
      say.difference(angle(1, 2, 0), angle(0, 2, 3));
      break;
    case Predicate::diameter:
      on_line(p);
      say.equal_lengths(p[2], p[0], p[2], p[1]);
      say.one_circle(p[2], {p[0], p[1]});
      break;
    case Predicate::circle:
    case Predicate::circle_cyclic:
      say.one_circle(p[0], {p.begin() + 1, p.end()});
      break;
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
      say.concyclic(p);
      break;
    case Predicate::tangent_circumcircle: {
      Points others;
      for (std::size_t i = 2; i < p.size(); ++i)
        if (p[i] != p[1]) others.push_back(p[i]);
      if (others.size() == 3) say.concyclic({p[1], others[0], others[1], others[2]});
      for (std::size_t i = 0; i < others.size(); ++i)
        for (std::size_t j = i + 1; j < others.size(); ++j)
          say.fact(FactKind::tangent_through, {p[0], p[1], p[1], others[i], others[j]});
      break;
    }
    case Predicate::tangent:
      say.fact(FactKind::tangent, {p[0], p[1], p[1], p[2]});
      break;
    case Predicate::regular_polygon:
      if (p.size() == 3) {
        say.equal_lengths(p[0], p[1], p[1], p[2]);
        say.equal_lengths(p[1], p[2], p[2], p[0]);
      } else {
        say.fact(p.size() == 4 ? FactKind::square : FactKind::regular_polygon, p);
      }
      break;
    case Predicate::parallelogram:
      say.fact(FactKind::parallelogram, p);
      break;
    case Predicate::rectangle:
      say.fact(FactKind::rectangle, p);
      break;
    case Predicate::rhombus:
      say.fact(FactKind::rhombus, p);
      break;
    case Predicate::square:
      say.fact(FactKind::square, p);
      break;
    case Predicate::kite:
      say.fact(FactKind::kite, p);
      break;
    case Predicate::trapezium:
      say.fact(FactKind::trapezium, p);
      break;
    case Predicate::congruent:
      say.fact(FactKind::congruent, p);
      break;
    case Predicate::similar:
      say.fact(FactKind::similar, p);
      break;
    case Predicate::isosceles:
      for (std::size_t apex = 0; apex < 3; ++apex) {
        auto sides = naming.length(p[apex], p[(apex + 1) % 3]);
        const auto other = naming.length(p[apex], p[(apex + 2) % 3]);
        if (sides && other) result.choice.push_back(sides->add(*other, -1));
      }
      break;
    case Predicate::simple_polygon:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
      result.readable = false;
      break;
  }
  return result;
}

Claims consequences_of(const Phrase& given, const Points& place, Naming& naming) {
  Claims result = claims_of(given, place, naming);
  if (!result.readable) return result;
  if (given.predicate != Predicate::circle && given.predicate != Predicate::circle_cyclic) return result;
  Points on;
  for (std::size_t i = 1; i < given.points.size(); ++i) on.push_back(place[given.points[i].index()]);
  Writer(naming, result).concyclic(on);
  return result;
}

}  // namespace prover::replay
