#include "benchmarks/search/equation_book.hpp"

#include <cmath>
#include <stdexcept>

#include "prover/sketch/random.hpp"

namespace prover {

namespace {

// What a reader pays for a reason. Small whole numbers, so that no solver rounds.
std::int64_t weight_by_reason(Reason reason) {
  switch (reason) {
    case Reason::given:
    case Reason::addition: return 1;
    case Reason::vertical:
    case Reason::linear_pair:
    case Reason::straight_angle: return 2;
    case Reason::corresponding:
    case Reason::alternate:
    case Reason::isosceles: return 3;
    case Reason::cointerior:
    case Reason::triangle_sum: return 4;
    case Reason::exterior_angle: return 5;
    case Reason::lemma: return 6;
  }
  return 1;
}

std::int64_t weight(Reason reason, Weighting weighting) {
  if (weighting == Weighting::by_reason) return weight_by_reason(reason);
  return reason == Reason::lemma ? 2 : 1;
}

bool is_given(Reason reason) { return reason == Reason::given || reason == Reason::isosceles; }

bool nearly_zero(double value) { return std::abs(value) < 1e-6; }

}  // namespace

UnknownId EquationBook::line(double degrees) {
  lines_.push_back(degrees);
  return UnknownId(static_cast<std::int64_t>(lines_.size()) - 1);
}

void EquationBook::parallel(UnknownId line, UnknownId other) {
  if (!nearly_zero(lines_[line.index()] - lines_[other.index()])) throw std::logic_error("these lines are not parallel");
  instance_.directions.given.push_back(Form::of(line).add(Form::of(other), -1));
}

UnknownId EquationBook::angle(double degrees, Form directions) {
  double size = directions.constant.to_double();
  for (const auto& [line, c] : directions.terms) size += c.to_double() * lines_[line.index()];
  if (!nearly_zero(size - degrees)) throw std::logic_error("an angle is not what its lines say");
  angles_.push_back({degrees, std::move(directions)});
  return UnknownId(static_cast<std::int64_t>(angles_.size()) - 1);
}

Form EquationBook::checked(const Terms& terms, int constant) const {
  Form form = Form::number(-constant);
  double sum = -constant;
  for (const auto& [c, angle] : terms) {
    form.add(Form::of(angle, c));
    sum += c * size_of(angle);
  }
  if (!nearly_zero(sum)) throw std::logic_error("an equation does not hold in the figure");
  return form;
}

Form EquationBook::in_directions(const Form& form) const {
  Form sum = Form::number(form.constant);
  for (const auto& [angle, c] : form.terms) sum.add(angles_[angle.index()].directions, c);
  return sum;
}

bool EquationBook::equation(Reason reason, const Terms& terms, int constant) {
  Form form = checked(terms, constant);
  if (!said_.insert(form.normalised()).second) return false;
  Form directions = in_directions(form);
  if (is_given(reason)) instance_.directions.given.push_back(directions);
  instance_.directions.equations.push_back(std::move(directions));
  instance_.problem.candidates.push_back({{}, {std::move(form)}, weight(reason, weighting_)});
  return true;
}

void EquationBook::goal(const Terms& terms, int constant) {
  instance_.problem.goal = {checked(terms, constant)};
  instance_.directions.goal = in_directions(instance_.problem.goal[0]);
}

void EquationBook::shuffle(std::uint64_t seed) {
  sketching::Random random(seed);
  auto& candidates = instance_.problem.candidates;
  auto& directions = instance_.directions.equations;
  for (std::size_t i = candidates.size(); i > 1; --i) {
    const std::size_t j = random.below(i);
    std::swap(candidates[i - 1], candidates[j]);
    std::swap(directions[i - 1], directions[j]);
  }
}

SearchInstance EquationBook::finish(std::string name) {
  instance_.name = std::move(name);
  instance_.unknowns = angles_.size();
  instance_.directions.lines = lines_.size();
  return std::move(instance_);
}

}  // namespace prover
