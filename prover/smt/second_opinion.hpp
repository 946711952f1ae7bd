// The second opinion: Z3 confirms every algebra step of a proof (premises and not-conclusion together are
// unsatisfiable) and the whole (all cited equations, 0° < angle < 180°, not the goal: unsatisfiable). The
// only room that knows Z3. One Z3 context a thread, kept between problems, since making one costs
// milliseconds. The same obligations can be written as SMT-LIB 2 for any other solver.
#pragma once
#include <string>

#include "prover/base/budget.hpp"
#include "prover/proof/proof.hpp"

namespace prover {

struct SecondOpinion {
  enum class Answer { confirmed, refuted, unknown } answer = Answer::unknown;
  int queries = 0;
  std::string objection;  // which obligation failed
};

SecondOpinion second_opinion(const Proof& proof, const UnknownTable& unknowns, const Budget& budget);
// SMT-LIB 2, every (check-sat) unsat; with the printed names of points where they are given.
std::string smt_lib(const Proof& proof, const UnknownTable& unknowns);
std::string smt_lib(const Proof& proof, const UnknownTable& unknowns, const Names& names);
std::string z3_version();

}  // namespace prover
