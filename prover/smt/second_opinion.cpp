// One query for all steps, one for the whole. The denials of the steps are joined by "or": the solver finds
// the disjunction impossible exactly when each obligation holds, and pays its start-up once. Only when it
// answers otherwise are the obligations asked one by one, to name the one that fails.
#include "prover/smt/second_opinion.hpp"

#include <z3++.h>

#include <algorithm>
#include <chrono>
#include <optional>

#include "prover/smt/obligations.hpp"

namespace prover {
namespace {

// Context and solver are kept for the life of the thread: making them costs more than a typical question.
struct Z3 {
  z3::context context;
  z3::solver solver{context, z3::solver::simple()};
};

Z3& of_this_thread() {
  thread_local Z3 z3;
  return z3;
}

class Query {
 public:
  Query(Z3& z3, const UnknownTable& unknowns) : z3_(z3), unknowns_(unknowns) { z3_.solver.push(); }
  ~Query() { z3_.solver.pop(); }
  Query(const Query&) = delete;
  Query& operator=(const Query&) = delete;

  // All of `from` and the denial.
  z3::expr denial(const Obligation& obligation) {
    z3::expr_vector all(z3_.context);
    for (const Form* form : obligation.from) all.push_back(value(*form) == 0);
    if (obligation.denies) {
      z3::expr_vector broken(z3_.context);
      for (const Form* claim : obligation.claims) broken.push_back(value(*claim) != 0);
      for (const Form* claim : obligation.positive) broken.push_back(value(*claim) <= 0);
      all.push_back(z3::mk_or(broken));
    }
    return z3::mk_and(all);
  }

  void require(const z3::expr& expression) { z3_.solver.add(expression); }

  void require_sizes(const Obligation& obligation) {
    std::vector<UnknownId> used;
    for (const Form* form : obligation.from)
      for (const auto& term : form->terms) used.push_back(term.first);
    for (const auto* claims : {&obligation.claims, &obligation.positive})
      for (const Form* form : *claims)
        for (const auto& term : form->terms) used.push_back(term.first);
    std::sort(used.begin(), used.end());
    used.erase(std::unique(used.begin(), used.end()), used.end());
    for (const UnknownId unknown : used) {
      switch (unknowns_[unknown].kind) {
        case UnknownKind::angle:
          require(variable(unknown) > 0);
          require(variable(unknown) < 180);
          break;
        case UnknownKind::length:
        case UnknownKind::excess:
          require(variable(unknown) > 0);
          break;
        case UnknownKind::number:
        case UnknownKind::fact:
          break;
      }
    }
  }

  z3::check_result ask(const Budget& budget, int& queries) {
    unsigned milliseconds = 4'000'000'000U;
    if (budget.deadline) {
      const auto left =
          std::chrono::duration_cast<std::chrono::milliseconds>(*budget.deadline - Budget::Clock::now());
      if (left.count() < milliseconds)
        milliseconds = static_cast<unsigned>(std::max<std::int64_t>(left.count(), 1));
    }
    z3_.solver.set("timeout", milliseconds);
    const std::stop_callback interrupt(budget.stop, [this] { z3_.context.interrupt(); });
    ++queries;
    return z3_.solver.check();
  }

 private:
  z3::expr variable(UnknownId unknown) {
    return z3_.context.constant(z3_.context.int_symbol(unknown.value), z3_.context.real_sort());
  }

  z3::expr number(const Rational& value) {
    if (const auto small = value.to_int64()) return z3_.context.real_val(*small);
    return z3_.context.real_val(value.to_string().c_str());
  }

  z3::expr value(const Form& form) {
    z3::expr_vector parts(z3_.context);
    for (const auto& [unknown, coefficient] : form.terms)
      parts.push_back(coefficient.is_one() ? variable(unknown) : number(coefficient) * variable(unknown));
    if (parts.empty()) return number(form.constant);
    if (!form.constant.is_zero()) parts.push_back(number(form.constant));
    return parts.size() == 1 ? parts[0] : z3::sum(parts);
  }

  Z3& z3_;
  const UnknownTable& unknowns_;
};

z3::check_result ask_alone(const Obligation& obligation, Z3& z3, const UnknownTable& unknowns,
                           const Budget& budget, int& queries) {
  Query query(z3, unknowns);
  query.require(query.denial(obligation));
  if (obligation.whole) query.require_sizes(obligation);
  return query.ask(budget, queries);
}

// The first obligation that fails, or that the solver leaves open.
SecondOpinion one_by_one(const std::vector<Obligation>& list, Z3& z3, const UnknownTable& unknowns,
                         const Budget& budget, int queries) {
  SecondOpinion opinion;
  opinion.queries = queries;
  opinion.answer = SecondOpinion::Answer::confirmed;
  for (const Obligation& obligation : list) {
    const auto answer =
        budget.exhausted() ? z3::unknown : ask_alone(obligation, z3, unknowns, budget, opinion.queries);
    if (answer == z3::unsat) continue;
    opinion.objection =
        obligation.name + (answer == z3::sat ? " does not follow" : " was not decided in time");
    opinion.answer = answer == z3::sat ? SecondOpinion::Answer::refuted : SecondOpinion::Answer::unknown;
    if (answer == z3::sat) break;  // a refutation outweighs what was left open before it
  }
  return opinion;
}

}  // namespace

SecondOpinion second_opinion(const Proof& proof, const UnknownTable& unknowns, const Budget& budget) {
  SecondOpinion opinion;
  const Obligations obligations = obligations_of(proof, unknowns);
  if (!obligations.malformed.empty()) {
    opinion.answer = SecondOpinion::Answer::refuted;
    opinion.objection = obligations.malformed;
    return opinion;
  }
  if (budget.exhausted()) {
    opinion.objection = "there was no time left to ask";
    return opinion;
  }
  try {
    Z3& z3 = of_this_thread();
    bool confirmed = false;
    {
      Query steps(z3, unknowns);
      z3::expr_vector denials(z3.context);
      for (const Obligation& obligation : obligations.list)
        if (!obligation.whole) denials.push_back(steps.denial(obligation));
      steps.require(z3::mk_or(denials));
      confirmed = steps.ask(budget, opinion.queries) == z3::unsat;
    }
    if (confirmed)
      confirmed = ask_alone(obligations.list.back(), z3, unknowns, budget, opinion.queries) == z3::unsat;
    if (!confirmed) return one_by_one(obligations.list, z3, unknowns, budget, opinion.queries);
    opinion.answer = SecondOpinion::Answer::confirmed;
  } catch (const z3::exception& trouble) {
    opinion.answer = SecondOpinion::Answer::unknown;
    opinion.objection = std::string("Z3 gave up: ") + trouble.msg();
  }
  return opinion;
}

std::string z3_version() {
  unsigned major = 0, minor = 0, build = 0, revision = 0;
  Z3_get_version(&major, &minor, &build, &revision);
  return std::to_string(major) + "." + std::to_string(minor) + "." + std::to_string(build);
}

}  // namespace prover
