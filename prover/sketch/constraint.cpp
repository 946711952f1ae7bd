// The values of constraints and, where a gradient is asked for, their exact derivatives.
#include "prover/sketch/constraint.hpp"

#include <algorithm>
#include <cmath>

#include "prover/sketch/plane.hpp"

namespace prover::sketching {

int Layout::number(const std::string& name) const {
  const auto found = std::find(numbers.begin(), numbers.end(), name);
  return found == numbers.end() ? -1 : static_cast<int>(found - numbers.begin());
}

void Gradient::clear() {
  for (const int variable : touched_) {
    values_[static_cast<std::size_t>(variable)] = 0;
    seen_[static_cast<std::size_t>(variable)] = false;
  }
  touched_.clear();
}

void Gradient::add(int variable, double value) {
  const auto index = static_cast<std::size_t>(variable);
  if (!seen_[index]) {
    seen_[index] = true;
    touched_.push_back(variable);
  }
  values_[index] += value;
}

void Gradient::scale(double factor) {
  for (const int variable : touched_) values_[static_cast<std::size_t>(variable)] *= factor;
}

namespace {

constexpr double tiny = 1e-24;  // squares of lengths below this count as this, so that nothing divides by zero

Vector at(const double* x, int point) { return {x[2 * point], x[2 * point + 1]}; }

int variable_of(const Layout& layout, int number) { return static_cast<int>(2 * layout.points) + number; }

double value_of(const Layout& layout, const double* x, int number) {
  return layout.units[static_cast<std::size_t>(number)] * x[variable_of(layout, number)];
}

// Adds factor · (the derivative of the direction of a→b).
void add_direction(Gradient& gradient, int a, int b, Vector v, double factor) {
  const double by = factor / std::max(dot(v, v), tiny);
  gradient.add_point(b, -by * v.y, by * v.x);
  gradient.add_point(a, by * v.y, -by * v.x);
}

// Adds factor · (the derivative of |ab|).
void add_length(Gradient& gradient, int a, int b, Vector v, double length, double factor) {
  const double by = factor / std::max(length, 1e-12);
  gradient.add_point(b, by * v.x, by * v.y);
  gradient.add_point(a, -by * v.x, -by * v.y);
}

double turn(const Constraint& constraint, const double* x, Gradient* gradient) {
  Vector z{1, 0};
  for (const Summand& term : constraint.terms) {
    const Vector v = at(x, term.b) - at(x, term.a);
    const Vector u = (1 / std::sqrt(std::max(dot(v, v), tiny))) * v;
    for (int k = 0; k < static_cast<int>(std::fabs(term.coefficient)); ++k)
      z = product(z, term.coefficient > 0 ? u : conjugate(u));
    if (gradient) add_direction(*gradient, term.a, term.b, v, term.coefficient);
  }
  const double sum = direction(z) + constraint.constant;
  return sum - constraint.period * std::round(sum / constraint.period);
}

// The sine (orientation) or cosine (opening) of the turn from a→b to a→c.
double sine_or_cosine(const Summand& term, bool sine, const double* x, Gradient* gradient) {
  const int vertex = sine ? term.a : term.b;
  const int first = sine ? term.b : term.a;
  const Vector u = at(x, first) - at(x, vertex), v = at(x, term.c) - at(x, vertex);
  const double by = 1 / std::sqrt(std::max(dot(u, u), tiny) * std::max(dot(v, v), tiny));
  const double s = cross(u, v) * by, c = dot(u, v) * by;
  if (gradient) {
    const double slope = term.coefficient * (sine ? c : -s);
    add_direction(*gradient, vertex, term.c, v, slope);
    add_direction(*gradient, vertex, first, u, -slope);
  }
  return term.coefficient * (sine ? s : c);
}

double angles(const Constraint& constraint, const Layout& layout, const double* x, Gradient* gradient) {
  double sum = constraint.constant;
  for (const Summand& term : constraint.terms) {
    if (term.kind == Summand::Kind::number) {
      sum += term.coefficient * value_of(layout, x, term.a);
      if (gradient)
        gradient->add(variable_of(layout, term.a), term.coefficient * layout.units[static_cast<std::size_t>(term.a)]);
      continue;
    }
    const Vector u = at(x, term.a) - at(x, term.b), v = at(x, term.c) - at(x, term.b);
    const double area = cross(u, v);
    sum += term.coefficient * direction({dot(u, v), std::fabs(area)});
    if (gradient) {
      const double slope = area < 0 ? -term.coefficient : term.coefficient;
      add_direction(*gradient, term.b, term.c, v, slope);
      add_direction(*gradient, term.b, term.a, u, -slope);
    }
  }
  return sum;
}

double ratio(const Constraint& constraint, const Layout& layout, const double* x, Gradient* gradient) {
  double sum = constraint.constant;
  double size = std::fabs(constraint.constant) + (constraint.form == Form::numbers ? 1.0 : 1e-12);
  const auto value = [&](const Summand& term) {
    return term.kind == Summand::Kind::number ? value_of(layout, x, term.a) : norm(at(x, term.b) - at(x, term.a));
  };
  for (const Summand& term : constraint.terms) {
    const double summand = term.coefficient * value(term);
    sum += summand;
    size += std::fabs(summand);
  }
  if (gradient) {
    for (const Summand& term : constraint.terms) {
      const double summand = term.coefficient * value(term);
      const double sign = summand < 0 ? -1 : 1;
      const double slope = term.coefficient * (1 / size - sign * sum / (size * size));
      if (term.kind == Summand::Kind::number) {
        gradient->add(variable_of(layout, term.a), slope * layout.units[static_cast<std::size_t>(term.a)]);
      } else {
        const Vector v = at(x, term.b) - at(x, term.a);
        add_length(*gradient, term.a, term.b, v, norm(v), slope);
      }
    }
  }
  return sum / size;
}

double linear(const Constraint& constraint, const double* x, Gradient* gradient) {
  double sum = constraint.constant;
  for (const Summand& term : constraint.terms) sum += term.coefficient * x[term.a];
  const Vector v = at(x, constraint.to) - at(x, constraint.from);
  const double size = std::max(norm(v), 1e-12);
  if (gradient) {
    for (const Summand& term : constraint.terms) gradient->add(term.a, term.coefficient / size);
    add_length(*gradient, constraint.from, constraint.to, v, size, -sum / (size * size));
  }
  return sum / size;
}

double winding(const Constraint& constraint, const double* x) {
  const Vector p = at(x, constraint.terms.front().a);
  double sum = 0;
  for (const Summand& term : constraint.terms) {
    const Vector u = at(x, term.b) - p, v = at(x, term.c) - p;
    const double seen = direction({dot(u, v), cross(u, v)});
    if (std::fabs(seen) > pi - 1e-5) return 0;  // on the side
    sum += seen;
  }
  return constraint.terms.front().coefficient * (std::fabs(sum) > pi ? 1 : -1);
}

}  // namespace

double evaluate(const Constraint& constraint, const Layout& layout, const double* x, Gradient* gradient) {
  if (gradient) gradient->clear();
  switch (constraint.form) {
    case Form::turn: return turn(constraint, x, gradient);
    case Form::orientation: return sine_or_cosine(constraint.terms.front(), true, x, gradient);
    case Form::opening: return constraint.constant + sine_or_cosine(constraint.terms.front(), false, x, gradient);
    case Form::angles: return angles(constraint, layout, x, gradient);
    case Form::lengths:
    case Form::numbers: return ratio(constraint, layout, x, gradient);
    case Form::linear: return linear(constraint, x, gradient);
    case Form::winding: return winding(constraint, x);
  }
  return 0;
}

}  // namespace prover::sketching
