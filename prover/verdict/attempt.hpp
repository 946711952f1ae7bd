// One attempt at a statement: with the positions of the text alone, or with a set of figures that agree on what is
// read from them; with the drawn lines only, or with every two named points joined. Saturation, a light proof
// for each goal, and the two checks.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/chain/saturate.hpp"
#include "prover/check/check.hpp"
#include "prover/search/lightest_set.hpp"
#include "prover/proof/weights.hpp"
#include "prover/reading/reading.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/smt/second_opinion.hpp"
#include "prover/verdict/goal_forms.hpp"

namespace prover {

struct AttemptOptions {
  const Catalogue& catalogue;
  std::vector<bool> allowed;
  Measure measure = Measure::classroom;
  Register wording = Register::plain;
  bool join_points = false;
};

struct CheckedProof {
  Proof proof;
  Reading reading;
  LightSet light;
  CheckReport replay;
  SecondOpinion z3;
  std::string value;
  std::optional<Rational> number;
};

struct StageTimes {
  double chain = 0, search = 0, check = 0, z3 = 0, layout = 0;  // milliseconds
};

struct Attempt {
  std::vector<std::optional<CheckedProof>> goals;  // one for each goal of the statement
  std::optional<CheckedProof> contradiction;       // the givens exclude each other
  bool all_reached = false;
  bool unsupported_goal = false;
  StopReason stop = StopReason::none;
  std::size_t instances = 0, matches = 0;
  int rounds = 0;
  // Not reached, but forced by the directions of the lines alone: its value, or "true" (DESIGN's direction layer).
  std::vector<std::string> forced_by_directions;   // one for each goal; empty when not forced or not asked
  std::string impossible;                          // "∠KLM = 190°", when a forced value cannot be
};

Attempt attempt(const Statement& statement, const std::vector<Sketch>& views, const AttemptOptions& options,
                const Budget& budget, StageTimes& times);

}  // namespace prover
