// Reads claims in sentences as forms over one table of unknowns, so that ∠RVW and ∠SVX's other names for the same rays are
// the same angle. The figure has every two points joined: a proof may join them, and a sentence then speaks of angles there.
#pragma once
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"
#include "prover/statement/statement.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

class ClaimReader {
 public:
  // `figures`: how the points lie where the words leave it open; only which names mean the same angle depends on it.
  ClaimReader(const Statement& statement, const std::vector<AnswerFigure>& figures);

  std::vector<Form> forms_of(const std::string& relation);     // "∠KLM = 64°", "KL ∥ MN"; none for what cannot be read
  std::vector<Form> forms_in(std::string_view sentence);       // of all its relations
  std::set<UnknownId> spoken_of(std::string_view claim);       // the sizes and facts that its relations tie together

  const Statement& statement() const { return statement_; }
  const Arrangement& arrangement() const { return arrangement_; }
  UnknownTable& unknowns() { return unknowns_; }
  const UnknownTable& unknowns() const { return unknowns_; }

 private:
  const Statement& statement_;
  Arrangement arrangement_;
  UnknownTable unknowns_;
};

}  // namespace prover
