// How one equation is written on the board, given what is known before it: as it stands; chained with a value
// ("∠LKQ = ∠PQK = 52°"); or solved for what it settles ("∠KLQ = (180° − 52°) ÷ 2", "= 64°").
#pragma once
#include <set>
#include <string>
#include <vector>

#include "prover/algebra/linear_system.hpp"
#include "prover/reading/name_book.hpp"

namespace prover {

struct ClaimRows {
  std::vector<std::string> rows;
  std::vector<UnknownId> values_used;    // known numbers put in
  std::vector<Form> relations_used;      // equations between unknowns put in
  UnknownId settled;                     // what now has a value, if anything
  Rational value;
};

// `wanted`: unknowns of the goal; the one to solve for where there is a choice.
ClaimRows claim_rows(const Form& claim, const LinearSystem& known, const NameBook& names,
                     const std::set<UnknownId>& wanted);

// The closing line: what was asked, with its value, or the claim.
std::vector<std::string> goal_rows(const Goal& goal, const std::vector<Form>& forms, const LinearSystem& known,
                                   const NameBook& names, const Names& points);

}  // namespace prover
