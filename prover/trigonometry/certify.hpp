// A value certified exactly: what the rules leave open of a problem's angles is settled by the law of sines (settle.hpp),
// in every arrangement that the drawn figures show. What the conditions use of angles and lengths is proved from the
// rules and put to both checks like any proof; positions that it reads from figures are challenged as in a proof.
//
// It is a theorem about all figures of these givens, and no school proof: it is never shown as one.
#pragma once
#include <memory>
#include <string>
#include <vector>

#include "prover/trigonometry/settle.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

struct CertifiedCase {
  std::string name;                     // the position that tells it from others; empty when there is one
  Settling settling;
  std::optional<CheckedProof> relations;  // what the rules show of angles and lengths; nothing when nothing is needed
  std::shared_ptr<Workings> workings;
  std::vector<std::string> seen;        // positions read from figures
};

struct Certified {
  bool exact = false;                   // in every arrangement found
  bool by_rules_alone = false;          // the whole catalogue reaches the goal: no trigonometry needed
  std::optional<Rational> value;        // find
  std::vector<CertifiedCase> cases;
  std::string obstacle;                 // why not, a sentence
  bool worth_saying = false;            // it tells a reader something of the problem, not only of this search
};

Certified certify(const Statement& statement, std::size_t goal, const Solved& solved, const AttemptOptions& options,
                  const Budget& budget);

}  // namespace prover
