// How one equation is written on the board, given what is known before it: as it stands; chained with a value
// ("∠LKQ = ∠PQK = 52°"); or solved for what it settles ("∠KLQ = (180° − 52°) ÷ 2", "= 64°").
#pragma once
#include <map>
#include <set>
#include <string>
#include <vector>

#include "prover/reading/known.hpp"
#include "prover/reading/name_book.hpp"

namespace prover {

struct ClaimRows {
  std::vector<std::string> rows;
  std::vector<UnknownId> values_used;    // known sizes put in
  std::vector<Form> relations_used;      // equations between unknowns put in
  UnknownId settled;                     // what now has a value, if anything
  Rational value;
  std::vector<Form> told;                // what else the rows say: the equation with what is known put in
  bool in_letter = false;                // speaks of the letter
  // The equation was solved by putting several unknowns in terms of this one: worth a letter when they are many.
  UnknownId solved_for;
};

struct RowOptions {
  std::set<UnknownId> wanted;      // unknowns of the goal; the one to solve for where there is a choice
  const LinearSystem* given;       // what the givens say: parts that they make equal are written as one
  const std::map<UnknownId, UnknownId>* preferred;  // of what the givens make equal: the name to use
  bool merged_only = false;        // a whole and its parts: "∠GHF = 2∠GHJ" alone, without the sum
};

ClaimRows claim_rows(const Form& claim, const Known& known, const NameBook& names, const RowOptions& options);

}  // namespace prover
