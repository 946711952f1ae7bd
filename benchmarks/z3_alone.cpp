#include "benchmarks/z3_alone.hpp"

#include <z3++.h>

namespace prover {

namespace {

z3::expr number(z3::context& context, const prover::Rational& value) {
  return context.real_val(value.to_string().c_str());
}

}  // namespace

Decided z3_alone(const std::vector<prover::Form>& equations, const prover::Form& goal,
                 const prover::UnknownTable& unknowns, unsigned limit_ms) {
  z3::context context;
  z3::solver solver(context, "QF_LRA");
  solver.set("timeout", limit_ms);
  std::vector<z3::expr> variables;
  for (std::size_t i = 0; i < unknowns.size(); ++i) {
    variables.push_back(context.real_const(("u" + std::to_string(i)).c_str()));
    const prover::UnknownKind kind = unknowns[prover::UnknownId(static_cast<std::int64_t>(i))].kind;
    if (kind == prover::UnknownKind::angle) solver.add(variables[i] > 0 && variables[i] < 180);
    if (kind == prover::UnknownKind::length) solver.add(variables[i] > 0);
  }
  const auto value = [&](const prover::Form& form) {
    z3::expr_vector terms(context);
    terms.push_back(number(context, form.constant));
    for (const auto& [unknown, coefficient] : form.terms) {
      terms.push_back(number(context, coefficient) * variables[unknown.index()]);
    }
    return z3::sum(terms);
  };
  for (const prover::Form& equation : equations) solver.add(value(equation) == 0);
  solver.add(value(goal) != 0);
  switch (solver.check()) {
    case z3::unsat: return Decided::follows;
    case z3::sat: return Decided::does_not_follow;
    case z3::unknown: break;
  }
  return Decided::gave_up;
}

}  // namespace prover
