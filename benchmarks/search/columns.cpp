#include "benchmarks/search/columns.hpp"

#include <algorithm>
#include <numeric>

#include "prover/algebra/linear_system.hpp"

namespace prover {

namespace {

std::int64_t denominator(const Rational& value) {
  const std::string text = value.to_string();
  const std::size_t stroke = text.find('/');
  return stroke == std::string::npos ? 1 : std::stoll(text.substr(stroke + 1));
}

// The same equation with whole coefficients.
Form scaled(const Form& form) {
  std::int64_t common = 1;
  for (const auto& [unknown, c] : form.terms) common = std::lcm(common, denominator(c));
  Form whole = form;
  return whole.scale(common);
}

}  // namespace

std::optional<Columns> columns_of(const SearchInstance& instance) {
  const SearchProblem& problem = instance.problem;
  if (problem.goal.size() != 1) return std::nullopt;
  Columns result;
  result.rows.resize(instance.unknowns);
  result.goal.resize(instance.unknowns, 0);
  const Form goal = scaled(problem.goal[0]);
  for (const auto& [unknown, c] : goal.terms) {
    const auto number = c.to_int64();
    if (!number) return std::nullopt;
    result.goal[unknown.index()] = *number;
  }
  for (std::size_t i = 0; i < problem.candidates.size(); ++i) {
    const Candidate& candidate = problem.candidates[i];
    if (!candidate.premises.empty()) return std::nullopt;
    result.weights.push_back(candidate.weight);
    for (const Form& conclusion : candidate.conclusions) {
      const Form equation = scaled(conclusion);
      for (const auto& [unknown, c] : equation.terms) {
        const auto number = c.to_int64();
        if (!number) return std::nullopt;
        result.rows[unknown.index()].push_back({result.columns(), *number});
      }
      result.candidate_of.push_back(i);
    }
  }
  return result;
}

Multipliers multipliers_of(const SearchInstance& instance, const std::vector<int>& members) {
  LinearSystem system(true);
  int tag = 0;
  for (const int i : members)
    for (const Form& conclusion : instance.problem.candidates[static_cast<std::size_t>(i)].conclusions)
      system.add(scaled(conclusion), tag++);
  Multipliers result;
  const auto certificate = system.certificate(scaled(instance.problem.goal[0]));
  if (!certificate) return result;
  for (const auto& [which, multiplier] : certificate->parts) {
    const Rational size = multiplier.sign() < 0 ? -multiplier : multiplier;
    result.largest = std::max(result.largest, static_cast<std::int64_t>(size.to_double() + 0.999));
    result.only_ones_and_twos &= size == Rational(1) || size == Rational(2);
  }
  return result;
}

}  // namespace prover
