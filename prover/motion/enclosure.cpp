#include "prover/motion/enclosure.hpp"

#include <cmath>

#include "prover/sketch/plane.hpp"

namespace prover::motion {

using namespace sketching;

namespace {

// `direction` (plane.hpp) does some forty operations on numbers up to 4, each off by 2^-53 of its result at most, after a
// subtraction that is off by as much: less than this.
constexpr double direction_error = 1e-13;
// Constants and coefficients reach us as doubles, after a few operations on the text's rationals.
constexpr double constant_error = 1e-15;

Interval around(double value, double error) {
  return {Outward::down(value - error * (1 + std::fabs(value))), Outward::up(value + error * (1 + std::fabs(value)))};
}
Interval number(double value) { return value == std::nearbyint(value) ? Interval(value) : around(value, constant_error); }

struct Vectors {
  Interval x, y;
};
Interval square_of(const Vectors& v) { return boost::numeric::square(v.x) + boost::numeric::square(v.y); }
Interval cross_of(const Vectors& u, const Vectors& v) { return u.x * v.y - u.y * v.x; }
Interval dot_of(const Vectors& u, const Vectors& v) { return u.x * v.x + u.y * v.y; }

class Encloser {
 public:
  Encloser(const Layout& layout, const Box& box) : layout_(layout), box_(box) {}

  Enclosure result{Interval(0.0), {}};
  bool failed = false;

  Vectors over(int a, int b) const {
    const auto range = [&](int p, int axis) { return box_.ranges[static_cast<std::size_t>(2 * p + axis)]; };
    return {range(b, 0) - range(a, 0), range(b, 1) - range(a, 1)};
  }
  Vectors thin(int a, int b) const {
    const auto at = [&](int p, int axis) { return Interval(box_.middle[static_cast<std::size_t>(2 * p + axis)]); };
    return {at(b, 0) - at(a, 0), at(b, 1) - at(a, 1)};
  }
  Vector middle(int a, int b) const {
    const auto at = [&](int p, int axis) { return box_.middle[static_cast<std::size_t>(2 * p + axis)]; };
    return {at(b, 0) - at(a, 0), at(b, 1) - at(a, 1)};
  }

  void slope(int variable, const Interval& by) {
    const auto [place, fresh] = result.slopes.try_emplace(variable, by);
    if (!fresh) place->second += by;
  }
  void slope(int a, int b, const Vectors& by) {  // of a function of the vector from a to b
    slope(2 * b, by.x);
    slope(2 * b + 1, by.y);
    slope(2 * a, -by.x);
    slope(2 * a + 1, -by.y);
  }
  // The derivatives of factor · direction(a→b).
  void direction_slopes(int a, int b, const Interval& factor) {
    const Vectors v = over(a, b);
    const Interval square = square_of(v);
    if (boost::numeric::zero_in(square)) {
      failed = true;
      return;
    }
    slope(a, b, {-factor * v.y / square, factor * v.x / square});
  }
  void add_direction(int a, int b, double times) {
    result.at_middle += number(times) * around(direction(middle(a, b)), direction_error);
    direction_slopes(a, b, number(times));
  }
  void add_length(int a, int b, const Interval& factor) {
    const Vectors v = over(a, b);
    const Interval length = boost::numeric::sqrt(square_of(v));
    if (boost::numeric::zero_in(length)) {
      failed = true;
      return;
    }
    result.at_middle += factor * boost::numeric::sqrt(square_of(thin(a, b)));
    slope(a, b, {factor * v.x / length, factor * v.y / length});
  }
  // factor · angle a b c, between 0 and pi.
  void add_angle(int a, int b, int c, const Interval& factor) {
    const Interval turn = cross_of(over(b, a), over(b, c));
    if (boost::numeric::zero_in(turn)) {
      failed = true;
      return;
    }
    const Vector u = middle(b, a), v = middle(b, c);
    result.at_middle += factor * around(direction({dot(u, v), std::fabs(cross(u, v))}), direction_error);
    const Interval sign(turn.lower() > 0 ? 1.0 : -1.0);
    direction_slopes(b, c, sign * factor);
    direction_slopes(b, a, -sign * factor);
  }
  void add_number(int k, const Interval& factor) {
    const auto variable = static_cast<int>(2 * layout_.points) + k;
    const Interval unit = number(layout_.units[static_cast<std::size_t>(k)]);
    result.at_middle += factor * unit * Interval(box_.middle[static_cast<std::size_t>(variable)]);
    slope(variable, factor * unit);
  }

  void turn(const Constraint& constraint) {
    for (const Summand& term : constraint.terms) add_direction(term.a, term.b, term.coefficient);
    result.at_middle += number(constraint.constant);
    const double whole = std::round(boost::numeric::median(result.at_middle) / constraint.period);
    result.at_middle -= Interval(whole) * around(constraint.period, constant_error);
  }
  void orientation(const Summand& term) {  // twice the area: the same sign as the sine
    const Vectors u = over(term.a, term.b), v = over(term.a, term.c);
    const Interval sign = number(term.coefficient);
    result.at_middle += sign * cross_of(thin(term.a, term.b), thin(term.a, term.c));
    slope(term.a, term.b, {sign * v.y, -sign * v.x});
    slope(term.a, term.c, {-sign * u.y, sign * u.x});
  }
  void opening(const Constraint& constraint) {
    // cos(angle) + constant > 0, enclosed over the whole box at once.
    const Summand& term = constraint.terms.front();
    const Vectors u = over(term.b, term.a), v = over(term.b, term.c);
    const Interval size = boost::numeric::sqrt(square_of(u) * square_of(v));
    if (boost::numeric::zero_in(size)) {
      failed = true;
      return;
    }
    result.at_middle += number(term.coefficient) * (dot_of(u, v) / size) + number(constraint.constant);
  }
  void sum(const Constraint& constraint) {
    result.at_middle += number(constraint.constant);
    for (const Summand& term : constraint.terms) {
      const Interval factor = number(term.coefficient);
      if (term.kind == Summand::Kind::number) add_number(term.a, factor);
      else if (constraint.form == Form::angles) add_angle(term.a, term.b, term.c, factor);
      else add_length(term.a, term.b, factor);
    }
  }
  void linear(const Constraint& constraint) {
    result.at_middle += number(constraint.constant);
    for (const Summand& term : constraint.terms) {
      // Cosines of whole parts of a turn are off by more than other constants.
      const Interval factor = term.coefficient == std::nearbyint(term.coefficient) ? Interval(term.coefficient)
                                                                                    : around(term.coefficient, 1e-13);
      result.at_middle += factor * Interval(box_.middle[static_cast<std::size_t>(term.a)]);
      slope(term.a, factor);
    }
  }

 private:
  const Layout& layout_;
  const Box& box_;
};

}  // namespace

Interval Enclosure::over(const Box& box) const {
  Interval sum = at_middle;
  for (const auto& [variable, by] : slopes) {
    const auto i = static_cast<std::size_t>(variable);
    sum += by * (box.ranges[i] - Interval(box.middle[i]));
  }
  return sum;
}

std::optional<Enclosure> enclose(const Constraint& constraint, const Layout& layout, const Box& box) {
  Encloser encloser(layout, box);
  switch (constraint.form) {
    case Form::turn: encloser.turn(constraint); break;
    case Form::orientation: encloser.orientation(constraint.terms.front()); break;
    case Form::opening: encloser.opening(constraint); break;
    case Form::angles:
    case Form::lengths:
    case Form::numbers: encloser.sum(constraint); break;
    case Form::linear: encloser.linear(constraint); break;
    case Form::winding: return std::nullopt;
  }
  if (encloser.failed) return std::nullopt;
  return std::move(encloser.result);
}

std::optional<Enclosure> enclose(const Expression& quantity, const Layout& layout, const Box& box) {
  Encloser encloser(layout, box);
  const Interval degrees = Interval(1.0) / around(degree, constant_error);
  for (const Term& term : quantity.terms) {
    Interval factor = number(term.coefficient.to_double());
    if (std::holds_alternative<One>(term.quantity)) {
      encloser.result.at_middle += factor;
    } else if (const auto* segment = std::get_if<Segment>(&term.quantity)) {
      encloser.add_length(segment->a.value, segment->b.value, factor * number(layout.length_unit));
    } else if (const auto* unknown = std::get_if<prover::Number>(&term.quantity)) {
      const int k = layout.number(unknown->name);
      if (k < 0) return std::nullopt;
      encloser.add_number(k, factor);
    } else if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
      if (angle->exterior) {
        encloser.result.at_middle += factor * Interval(180.0);
        factor = -factor;
      }
      if (angle->reflex) {
        encloser.result.at_middle += factor * Interval(360.0);
        factor = -factor;
      }
      encloser.add_angle(angle->arm1.value, angle->vertex.value, angle->arm2.value, factor * degrees);
    }
  }
  if (encloser.failed) return std::nullopt;
  return std::move(encloser.result);
}

bool winds_alike(const Constraint& constraint, const Box& box) {
  const Encloser encloser(Layout{}, box);
  for (const Summand& term : constraint.terms) {
    const Vectors u = encloser.over(term.a, term.b), v = encloser.over(term.a, term.c);
    if (boost::numeric::zero_in(cross_of(u, v)) && !(dot_of(u, v).lower() > 0)) return false;
  }
  return true;
}

}  // namespace prover::motion
