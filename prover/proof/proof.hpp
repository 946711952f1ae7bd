// A proof as an object that can be checked: rule instances in an order in which each one's premises follow, by
// stated multipliers, from conclusions of earlier ones; and the goal from all of them. The search makes it, the
// checker replays it, Z3 confirms its algebra; what a reader sees (`reading.hpp`) is laid out from it.
#pragma once
#include <string>
#include <vector>

#include "prover/fact/unknown.hpp"
#include "prover/rule/instance.hpp"

namespace prover {

// A form as a combination of conclusions of earlier steps: form = Σ multiplier · conclusion, exactly, constants
// included.
struct Combination {
  struct Part {
    int step = 0;        // index into Proof::steps
    int conclusion = 0;  // index into that step's instance.conclusions
    Rational multiplier;
  };
  std::vector<Part> parts;
};

struct ProofStep {
  Instance instance;
  std::vector<Combination> premises;  // one for each of instance.premises
};

struct SeenPosition {
  Position position;
  PositionSource source = PositionSource::text;
};

struct Proof {
  std::vector<ProofStep> steps;
  std::vector<Form> goal;               // each read as "= 0"
  std::vector<Combination> conclusion;  // one for each of `goal`
  std::vector<Form> positive;           // what the goal says to be more than 0, which its equations show
  std::vector<SeenPosition> positions;  // every position that a step or the naming of a ray rests on
  Rational cost;
  bool contradiction = false;           // the goal is 1 = 0: the givens cannot all hold
};

}  // namespace prover
